/**
 * Expected trouble as data. A pure room or a workflow returns problems; `lib/wording` turns a code into a sentence.
 * An exception is kept for bugs and broken machines.
 */
export type Problem = {
  /** Stable code, kebab-case. Every code has a sentence in `lib/wording/problems.ts` (a test checks it). */
  code: string;
  /** Where it happened: file, row (1-based line of the file), column name, or the form field. */
  where?: { file?: string; row?: number; column?: string; field?: string };
  /** What came, as the person would recognise it. */
  found?: string;
  /** What would have been accepted. */
  allowed?: string;
};

export type Outcome<T> = { ok: true; value: T } | { ok: false; problems: Problem[] };

/**
 * An outcome that went well.
 * @example done(3) // { ok: true, value: 3 }
 */
export const done = <T>(value: T): Outcome<T> => ({ ok: true, value });

/**
 * An outcome that did not, with every problem found.
 * @example refused({ code: "number-empty" }).problems.length // 1
 */
export const refused = (...problems: Problem[]): { ok: false; problems: Problem[] } => ({ ok: false, problems });

/**
 * Whether a value is an outcome that did not go well.
 * @example isRefusal({ ok: false, problems: [{ code: "number-empty" }] }) // true
 * @example isRefusal({ ok: true, value: 3 }) // false
 */
export function isRefusal(value: unknown): value is { ok: false; problems: Problem[] } {
  if (typeof value !== "object" || value === null) return false;
  const { ok, problems } = value as { ok?: unknown; problems?: unknown };
  return ok === false && Array.isArray(problems);
}
