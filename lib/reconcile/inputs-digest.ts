import { compareNames, inOrder } from "./canonical-order.ts";
import type { Policy, ReconcileInput } from "./types.ts";

/**
 * Canonical JSON of plain data (RFC 8785): keys in code-unit order, numbers and strings as ECMAScript writes them, which is what
 * the RFC asks for. What JSON cannot hold is treated as `JSON.stringify` treats it. Every result is digested, so this is
 * written for speed; a test holds it to the `canonicalize` package.
 */
export function canonicalText(value: unknown): string {
  if (typeof value === "string") return quoted(value);
  if (typeof value === "number") return Number.isFinite(value) ? String(value) : "null";
  if (value === null || typeof value !== "object") return value === true ? "true" : value === false ? "false" : "null";
  let text = "";
  if (Array.isArray(value)) {
    for (let i = 0; i < value.length; i++) text += i === 0 ? canonicalText(value[i]) : `,${canonicalText(value[i])}`;
    return `[${text}]`;
  }
  const source = value as Record<string, unknown>;
  for (const field of fieldsOf(Object.keys(source))) {
    const entry = source[field.key];
    if (entry !== undefined) text += (text === "" ? "" : ",") + fieldText(field, entry);
  }
  return `{${text}}`;
}

function fieldText(field: Field, entry: unknown): string {
  if (typeof entry === "object" && entry !== null) return field.quotedKey + canonicalText(entry);
  if (entry !== field.last) {
    field.last = entry;
    field.text = field.quotedKey + canonicalText(entry);
  }
  return field.text;
}

/** A key, and the last value it had with its text: most fields of a part's shots repeat. */
type Field = { key: string; quotedKey: string; last: unknown; text: string };

/** The last key list of each length and its fields in order: shots and written numbers come by the dozen with the same keys. */
const lastOfLength: { keys: string[]; fields: Field[] }[] = [];

function fieldsOf(keys: string[]): Field[] {
  const last = lastOfLength[keys.length];
  if (last !== undefined && sameTexts(last.keys, keys)) return last.fields;
  const fields = keys.toSorted().map((key) => ({ key, quotedKey: `${quoted(key)}:`, last: undefined, text: "" }));
  lastOfLength[keys.length] = { keys, fields };
  return fields;
}

function sameTexts(a: string[], b: string[]): boolean {
  for (let i = 0; i < a.length; i++) if (a[i] !== b[i]) return false;
  return true;
}

/** Printable ASCII needs no escape but for the quote and the backslash; anything else is left to the built-in writer. */
const plain = /^[ !#-[\]-~]*$/;
const quoted = (text: string): string => (plain.test(text) ? `"${text}"` : JSON.stringify(text));

const sortedBy = <T>(list: readonly T[], name: (entry: T) => string): readonly T[] =>
  inOrder(list, (a, b) => compareNames(name(a), name(b)) || compareNames(canonicalText(a), canonicalText(b)));

/**
 * The hash of everything a result was made from: the method's version, the policy in force, and the input as given (units
 * and written numbers as they came), in the canonical JSON of RFC 8785. Shots are sorted by id and contributions by code
 * first, so the order in which they were handed over does not matter.
 */
export function inputsDigest(
  input: ReconcileInput,
  policy: Policy,
  version: string,
  hash: (text: string) => string,
): string {
  const canonical = {
    ...input,
    policy,
    version,
    shots: sortedBy(input.shots, (shot) => shot.id),
    contributions: sortedBy(input.contributions, (contribution) => contribution.code),
  };
  return hash(canonicalText(canonical));
}
