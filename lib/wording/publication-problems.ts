import { allowedText, foundText, type ProblemWords, placeOf, quoted } from "./problem-sentence.ts";

/** What stands in the way of publishing, and what is wrong with a published text. */
export const publicationProblems: ProblemWords = {
  "nothing-to-publish": () =>
    "There is nothing to publish yet: this item has no part with readings. Assign readings to a part first.",
  "no-readings": (p) =>
    `${p.found ? `${quoted(p.found)} has` : "There are"} no readings left to go by. Assign readings, or take back a setting aside.`,
  "part-without-result": (p) =>
    `The part ${quoted(p.found ?? p.where?.field)} has no result yet. Assign readings to it, or take the part away.`,
  "unknown-revision": (p) =>
    `There is no revision ${quoted(p.found)} of this item.${p.allowed ? ` There are revisions ${p.allowed}.` : ""}`,
  "revision-kind": (p) =>
    `Revision 1 is the first publication, and later ones are a correction, an update or a withdrawal.${foundText(p)}`,
  "slug-form": (p) => `An address is made of small letters, digits and single hyphens.${foundText(p)}`,
  "reading-unknown": (p) =>
    `${placeOf(p)}a spot names the reading ${quoted(p.found)}, which is not among the part's readings. Work the result out again.`,
  "reading-of-another-kind": (p) =>
    `${placeOf(p)}a reading of another element or kind stands among these.${foundText(p)}${allowedText(p)}`,
  "file-not-listed": (p) => `${placeOf(p)}a reading comes from a file that the item does not list.${foundText(p)}`,
  "snapshot-not-json": (p) => `This is not a published text: it cannot be read as JSON.${foundText(p)}`,
  "snapshot-format-unknown": (p) =>
    `This published text is of a format that this version cannot read.${foundText(p)}${allowedText(p)}`,
  "snapshot-shape": (p) => `${placeOf(p)}the published text would not be whole.${foundText(p)}`,
  "unknown-log-entry": (p) =>
    `The log has no entry ${quoted(p.found)}.${p.allowed ? ` It has entries ${p.allowed}.` : " It is empty."}`,
  "read-failed": () => "The server could not answer just now. Please try again in a minute.",
  "bad-cursor": () => "That page mark does not belong to this question. Start again from the first page.",
};
