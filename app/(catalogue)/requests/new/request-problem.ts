import { z } from "zod";
import type { Problem } from "@/lib/quantity/problem.ts";
import { largestRequestPhoto } from "@/lib/workflows/request-test.ts";

const schema = z.object({
  problem: z.enum([
    "request-too-vague",
    "invalid-form",
    "rate-limited",
    "too-large",
    "photo-heic",
    "photo-other-kind",
    "photo-too-many-pixels",
    "photo-unreadable",
  ]),
  minutes: z.coerce.number().int().min(1).max(60).optional().catch(undefined),
});

/** What was wrong with a request, as the form's address carries it: a code and a number, never words of somebody's own. */
export function problemParams([problem]: Problem[]): string {
  const minutes = problem?.code === "rate-limited" ? Number.parseInt(problem.allowed ?? "", 10) : Number.NaN;
  return `problem=${problem?.code ?? "invalid-form"}${Number.isNaN(minutes) ? "" : `&minutes=${minutes}`}`;
}

/** The problem that an address names, with the field it is about; null where it names none. */
export function problemOf(params: Record<string, string | string[] | undefined>, asked: string): Problem | null {
  const read = schema.safeParse(params);
  if (!read.success) return null;
  const { problem: code, minutes } = read.data;
  const megabytes = `${largestRequestPhoto / 1e6} MB`;
  switch (code) {
    case "rate-limited":
      return { code, ...(minutes === undefined ? {} : { allowed: `${minutes} minutes` }) };
    case "request-too-vague":
      return { code, where: { field: "description" }, found: asked.slice(0, 60) };
    case "too-large":
      return { code, where: { field: "photo" }, found: `over ${megabytes}`, allowed: `up to ${megabytes}` };
    case "invalid-form":
      return { code, where: { field: "description" } };
    default:
      return { code, where: { field: "photo" } };
  }
}
