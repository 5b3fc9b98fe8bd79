import type { z } from "zod";
import { type Outcome, type Problem, refused } from "../quantity/problem.ts";
import { parseUnit, type Unit } from "../quantity/units.ts";
import { parseTypedNumber, parseWrittenQuantity } from "../quantity/written-quantity.ts";

/** Reads form data the way forms write it: empty text is null for optional things, ticks are booleans, lists are lists. */
export const formText = (data: FormData, name: string): string => {
  const value = data.get(name);
  return typeof value === "string" ? value.trim() : "";
};
export const formTextOrNull = (data: FormData, name: string): string | null => formText(data, name) || null;
export const formTicked = (data: FormData, name: string): boolean => data.get(name) !== null;
export const formList = (data: FormData, name: string): string[] =>
  data.getAll(name).filter((v): v is string => typeof v === "string");

/** A number as a person writes it, with a comma or a point for decimals; null where empty, NaN where it is none or could be two. */
export function formNumber(data: FormData, name: string): number | null {
  const text = formText(data, name);
  if (text === "") return null;
  const read = parseTypedNumber(text);
  return read.ok ? read.value.value : Number.NaN;
}

/** What a quantity field sends (its text and the unit chosen beside it), in the unit wanted; null where empty, NaN where it is none. */
export function formQuantity(data: FormData, name: string, wanted: Unit): number | null {
  const text = formText(data, name);
  if (text === "") return null;
  const chosen = parseUnit(formText(data, `${name}-unit`)) ?? wanted;
  const read = parseWrittenQuantity(text, { wanted, chosen });
  return read.ok ? read.value.inWanted : Number.NaN;
}

/** zod's issues as problems that name their field. */
export function parseForm<T extends z.ZodType>(schema: T, value: unknown): Outcome<z.output<T>> {
  const parsed = schema.safeParse(value);
  if (parsed.success) return { ok: true, value: parsed.data };
  const problems: Problem[] = parsed.error.issues.map((issue) => ({
    code: "invalid-form",
    where: { field: issue.path.map(String).join(".") },
    found: describe(value, issue.path),
    allowed: allowedBy(issue),
  }));
  return refused(...problems);
}

function describe(value: unknown, path: PropertyKey[]): string {
  const found = path.reduce<unknown>(
    (at, key) => (at && typeof at === "object" ? (at as Record<PropertyKey, unknown>)[key] : undefined),
    value,
  );
  if (found === undefined || found === null || found === "") return "nothing";
  return typeof found === "number" && Number.isNaN(found) ? "text that is not a number" : String(found).slice(0, 60);
}

function allowedBy(issue: z.core.$ZodIssue): string {
  switch (issue.code) {
    case "too_small":
      return issue.origin === "string"
        ? issue.minimum === 1
          ? "some text"
          : `at least ${issue.minimum} characters`
        : `a number from ${issue.minimum} up`;
    case "too_big":
      return issue.origin === "string" ? `at most ${issue.maximum} characters` : `a number up to ${issue.maximum}`;
    case "invalid_value":
      return issue.values.length > 12 ? "one from the list" : `one of ${issue.values.join(", ")}`;
    case "invalid_format":
      return issue.format === "email"
        ? "an e-mail address like name@example.org"
        : issue.format === "date"
          ? "a date like 2026-05-04"
          : `the form ${issue.format}`;
    case "invalid_type":
      return issue.expected === "number" ? "a number" : "an answer";
    default:
      return "another answer";
  }
}
