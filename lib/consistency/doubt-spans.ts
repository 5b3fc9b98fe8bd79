import { instantOf } from "./instant.ts";

/** From just after a good check (null: from the beginning) to just before the next good one (null: to the end). */
export type DoubtSpan = { after: string | null; before: string | null };

/**
 * When readings are in doubt: for every failed check, all between the last good check before it and the next good one after it.
 * Failed checks with no good one between them share a span. A check that says nothing (`within` null) ends no span.
 *
 * checks: in the order of time.
 *
 * Source: method step 5 (policy; common practice, no source).
 *
 * @example doubtSpans([{ takenAt: "2026-03-14T09:00:00Z", within: true }, { takenAt: "2026-03-14T11:00:00Z", within: false }])
 * // [{ after: "2026-03-14T09:00:00Z", before: null }]
 */
export function doubtSpans(checks: readonly { takenAt: string; within: boolean | null }[]): DoubtSpan[] {
  const spans: DoubtSpan[] = [];
  let lastGood: string | null = null;
  let open: DoubtSpan | null = null;
  for (const { takenAt, within } of checks) {
    if (within === false && open === null) {
      open = { after: lastGood, before: null };
      spans.push(open);
    }
    if (within === true) {
      if (open) open.before = takenAt;
      open = null;
      lastGood = takenAt;
    }
  }
  return spans;
}

/**
 * Whether a reading falls into a span of doubt. One taken at the moment of a good check does not; one whose time is not known does, as soon as
 * there is any span, since nothing shows that it does not.
 *
 * @example isInDoubt("2026-03-14T10:00:00Z", [{ after: "2026-03-14T09:00:00Z", before: null }]) // true
 */
export function isInDoubt(takenAt: string | null, spans: readonly DoubtSpan[]): boolean {
  if (takenAt === null) return spans.length > 0;
  const at = instantOf(takenAt);
  return spans.some(
    ({ after, before }) => (after === null || at > instantOf(after)) && (before === null || at < instantOf(before)),
  );
}
