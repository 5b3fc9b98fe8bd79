import { done, type Outcome, refused } from "../quantity/problem.ts";
import { type Snapshot, snapshotSchema } from "./snapshot.ts";

/**
 * One reader for every format that was ever published, kept for ever: a stored text of format 1 must be read by every
 * later version. A format 2 would add a reader here that turns 1 into 2; the stored text itself is never rewritten.
 */
const readers: Record<number, (value: unknown) => Outcome<Snapshot>> = {
  1: (value) => {
    const parsed = snapshotSchema.safeParse(value);
    if (parsed.success) return done(parsed.data);
    return refused(
      ...parsed.error.issues.map((issue) => ({
        code: "snapshot-shape",
        where: { field: issue.path.map(String).join(".") },
        found: issue.message,
      })),
    );
  },
};

/** The formats that can be read, lowest first. */
export const readableFormats = Object.keys(readers).map(Number);

/**
 * A stored or downloaded snapshot text, read through its format's schema.
 *
 * Refused: `snapshot-not-json`, `snapshot-format-unknown` (no `format`, or one made by a newer version) and
 * `snapshot-shape` (one problem for each member that is missing or of the wrong kind).
 */
export function readSnapshot(text: string): Outcome<Snapshot> {
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    return refused({ code: "snapshot-not-json", found: text.slice(0, 60) });
  }
  const format = typeof value === "object" && value !== null && "format" in value ? value.format : undefined;
  const read = typeof format === "number" ? readers[format] : undefined;
  if (!read)
    return refused({
      code: "snapshot-format-unknown",
      found: format === undefined ? "none" : String(format).slice(0, 60),
      allowed: readableFormats.join(", "),
    });
  return read(value);
}
