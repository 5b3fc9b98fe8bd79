import type { SnapshotResult } from "../publication/snapshot.ts";
import { amountText, counted, intervalText, resultText, significant } from "./formats.ts";

/** The bench's own words: the state of an item, and what comes next. */
export type BenchState = "draft" | "submitted" | "approved" | "published" | "withdrawn";

export const itemStateWords: Record<BenchState, string> = {
  draft: "being worked on",
  submitted: "waiting for review",
  approved: "reviewed, ready to publish",
  published: "published",
  withdrawn: "withdrawn",
};

/** The bench's lists of items and files. */
export const benchList = {
  find: "Only items with these letters",
  state: "State",
  anyState: "Any state",
  show: "Show",
  none: "No item like this",
  all: "Show all items",
  some: (first: number, last: number, total: number): string =>
    `${first} to ${last} of ${total}, those last worked on first.`,
  moreItems: "More items",
  nextItems: "Next items",
  firstItems: "Back to the first items",
  moreFiles: "More files",
  nextFiles: "Older files",
  firstFiles: "Back to the newest files",
};

export type NextStep =
  | "add-object"
  | "add-part"
  | "assign-readings"
  | "submit-or-publish"
  | "wait-for-review"
  | "publish"
  | "review-again"
  | "nothing-new"
  | "publish-again"
  | "withdrawn";

/** `parts`: how many parts wait for readings. */
export const nextStepWords: Record<NextStep, (parts: number) => { title: string; text: string }> = {
  "add-object": () => ({
    title: "Say which object was tested",
    text: "An item is what a reader looks for; an object is the very one that lay under the analyser. Add it, then its parts.",
  }),
  "add-part": () => ({
    title: "Name its parts",
    text: "A glaze, a rivet, a printed band: every material gets its own number. Add at least one part.",
  }),
  "assign-readings": (parts) => ({
    title: "Put readings on its parts",
    text: `${counted(parts, "part has", "parts have")} no reading yet. Readings wait under “Unassigned”. A page cannot be published while a part has no result.`,
  }),
  "submit-or-publish": () => ({
    title: "Ask for a review",
    text: "A reviewer who took none of these readings looks whether repeats agree, asks what is unclear, and approves exactly what you see here or sends it back.",
  }),
  "wait-for-review": () => ({
    title: "Waiting for a reviewer",
    text: "You can go on working and answer remarks, but what changes now has to be looked at anew: an approval holds for one state only.",
  }),
  publish: () => ({
    title: "Reviewed: publish it",
    text: "The approval holds for exactly what you see here. The page will name the reviewer.",
  }),
  "review-again": () => ({
    title: "Changed since it was approved",
    text: "The approval was for other readings, photos or words, so it no longer counts. Ask for a review again.",
  }),
  "nothing-new": () => ({
    title: "Published",
    text: "The public page says what the bench says. When readings or words change, or when it has to be corrected or withdrawn, start a new revision below.",
  }),
  "publish-again": () => ({
    title: "The bench has moved on from the public page",
    text: "What is listed here is not public yet. Say below what kind of change it is and why, and ask for a review; the older revision stays where it is.",
  }),
  withdrawn: () => ({
    title: "Withdrawn",
    text: "The result was taken back. A new revision with new readings can stand in its place.",
  }),
};

/** Above the publish button, whatever else is said. */
export const publishPromise =
  "A published page cannot be changed or taken away. A mistake is mended by a new revision, with its reason on the page.";

/** The value without and with what a person set aside; null where nothing was, or where the two say the same thing. */
export function setAsideSentence(result: SnapshotResult): string | null {
  const { withSetAside, unit } = result;
  if (withSetAside === null) return null;
  const { value, interval } = withSetAside;
  const range = interval ? ` (${intervalText([significant(interval[0]), significant(interval[1])], unit)})` : "";
  const withThem = value === null ? "no single value" : `${amountText(value, unit)}${range}`;
  return `Without the readings set aside: ${resultText(result)}. With them: ${withThem}.`;
}

/** What a reading says of one element, as its file wrote it: "412 ± 36", "< 12", "not detected". */
export function asWritten(result: {
  belowDetection: boolean;
  value: { text: string } | null;
  error: { text: string } | null;
  detectionLimit: { text: string } | null;
}): string {
  if (result.belowDetection) {
    const limit = result.detectionLimit?.text.replace(/^<\s*/, "");
    return limit ? `< ${limit}` : "not detected";
  }
  const value = result.value?.text ?? "";
  return result.error ? `${value} ± ${result.error.text}` : value;
}

/** The name of a file of readings written by hand, by the wall clock of their zone: "by hand 2026-11-24 14-05.tsv". */
export function handFileName(now: Date, timeZone: string): string {
  const parts = new Intl.DateTimeFormat("en-GB", {
    timeZone,
    year: "numeric",
    month: "2-digit",
    day: "2-digit",
    hour: "2-digit",
    minute: "2-digit",
    hourCycle: "h23",
  }).formatToParts(now);
  const part = (type: Intl.DateTimeFormatPartTypes) => parts.find((p) => p.type === type)!.value;
  return `by hand ${part("year")}-${part("month")}-${part("day")} ${part("hour")}-${part("minute")}.tsv`;
}
