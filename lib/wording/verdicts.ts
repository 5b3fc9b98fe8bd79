import type { SnapshotDecision, SnapshotResult } from "../publication/snapshot.ts";
import { chancesText, plainDate, resultText, withUnit } from "./formats.ts";

export type Verdict = SnapshotDecision["verdict"];

/** The verdicts, word for word. No other words are used for them anywhere. */
export const verdictWords: Record<Verdict, string> = {
  above: "above the limit",
  below: "below the limit",
  "too-close": "too close to call",
  "not-detected": "not detected",
  "cannot-say": "cannot be compared",
};

/**
 * A limit's name and number: "US children's products, 100 mg/kg". The place comes first where the title does not say it, and a
 * title that ends in its own number ("…, 100") does not say it twice.
 */
export function limitName(limit: Pick<SnapshotDecision, "title" | "jurisdiction" | "value" | "unit">): string {
  const number = limit.value === null ? null : String(limit.value);
  const ending = number === null ? "" : `, ${number}`;
  const title = ending !== "" && limit.title.endsWith(ending) ? limit.title.slice(0, -ending.length) : limit.title;
  const named = title.includes(limit.jurisdiction) ? title : `${limit.jurisdiction}, ${title}`;
  return number === null ? named : `${named}, ${withUnit(number, limit.unit)}`;
}

/** What stands in brackets after the verdict: how sure it is. Null where no probability was worked out. */
export function sureness(decision: Pick<SnapshotDecision, "verdict" | "probabilityAbove">): string | null {
  const p = decision.probabilityAbove;
  if (p === null) return null;
  switch (decision.verdict) {
    case "above":
      return chancesText(p);
    case "below":
      return chancesText(1 - p);
    case "too-close":
    case "not-detected":
      return `${chancesText(p)} that it is above`;
    case "cannot-say":
      return null;
  }
}

/**
 * The verdict with its probability and its limit's name, in one line.
 *
 * @example
 * "above the limit (at least 99 chances in 100): US children's products, 100 mg/kg"
 * "too close to call (about 72 chances in 100 that it is above): US paint on children's goods, 90 mg/kg"
 * "not detected (below 5 mg/kg; at most 1 chance in 100 that it is above): EU cadmium in plastics, 100 mg/kg"
 */
export function verdictText(decision: SnapshotDecision, result: SnapshotResult): string {
  const sure = sureness(decision);
  const bound = decision.verdict === "not-detected" ? /\((below .*)\)/.exec(resultText(result))?.[1] : undefined;
  const inside = [bound, sure].filter((text) => text).join("; ");
  const words = inside === "" ? verdictWords[decision.verdict] : `${verdictWords[decision.verdict]} (${inside})`;
  return `${words}: ${limitName(decision)}${referenceNote(decision)}${dayNote(decision)}`;
}

/**
 * Said after a verdict by a limit that did not stand alike on the day of the test and on the day of judging; empty where it did.
 *
 * @example "; by the rules of the day of the test, 1 June 2018"
 * @example "; by the rules of 24 November 2026, after the test"
 */
export const dayNote = ({ which, day }: Pick<SnapshotDecision, "which" | "day">): string =>
  which === "both"
    ? ""
    : which === "test-day"
      ? `; by the rules of the day of the test, ${plainDate(day)}`
      : `; by the rules of ${plainDate(day)}, after the test`;

/** Said after a limit that is only held beside the value. */
const referenceNote = (decision: SnapshotDecision): string =>
  decision.applies === "for-reference" ? " (only to compare; this limit does not apply here)" : "";

/** A limit's name where its verdict stands beside it: "US children's products, 100 mg/kg (only to compare)". */
export const limitBeside = (decision: SnapshotDecision): string =>
  `${limitName(decision)}${decision.applies === "for-reference" ? " (only to compare)" : ""}`;

/** How far the limit itself was checked against the rule's own text. */
export const checkedText: Record<SnapshotDecision["checked"], string> = {
  verified: "read in the rule's own text",
  "second-hand": "read in a text about the rule, not in the rule itself",
  "from memory": "from memory, not checked against the rule",
};

/** Which day's rules the verdict goes by. A published page stays as it is, so "today" would soon be wrong. */
export const whichDayText: Record<SnapshotDecision["which"], string> = {
  "test-day": "the day of the test",
  today: "the day this page was made",
  both: "the day of the test; the same on the day this page was made",
};
