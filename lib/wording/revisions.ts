import type { FieldChange } from "../publication/revision-difference.ts";
import { leafText, placeText } from "./changes.ts";

/** When each kind of revision is the right one. */
export const revisionHints: Record<"correction" | "update" | "withdrawal", string> = {
  correction: "Something published was wrong: a reading of another object, a wrong word, a wrong part.",
  update: "What was published stands; new readings or a better description have come.",
  withdrawal:
    "The result should not be relied on at all. Title, reason and hash stay; every figure goes from the newest page.",
};

export const differencePage = {
  title: (name: string, revision: number): string => `${name}: what revision ${revision} changed`,
  lead: (before: number, after: number): string =>
    `Every field in which revision ${after} differs from revision ${before}, both as they were published.`,
  same: "The two revisions say the same.",
  derived: "What followed from these",
  added: "not there",
  removed: "taken away",
} as const;

/** One difference as the cells of a table: where, before, now. */
export function changeCells(change: FieldChange): { place: string; before: string; now: string } {
  const place = placeText(change.place);
  if (change.kind === "changed") return { place, before: leafText(change.before), now: leafText(change.after) };
  return change.kind === "added"
    ? { place, before: differencePage.added, now: "added" }
    : { place, before: "was there", now: differencePage.removed };
}

/** On a revision's page that does not exist. */
export const noSuchRevision = {
  title: "There is no such revision",
  text: "This item has no revision of that number. Its newest page lists all there are.",
} as const;

/** Above a maker's answer, so that nobody takes it for part of the measurement. */
export const makerAnswerWords = {
  title: "The maker’s answer",
  lead: "In the maker’s own words and in full. It is not part of the measurement, and nobody here has checked it.",
} as const;
