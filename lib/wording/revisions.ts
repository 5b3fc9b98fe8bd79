import type { FieldChange } from "../publication/revision-difference.ts";
import { leafText, placeText } from "./changes.ts";
import { revisionSentences as spanish } from "./es/revisions.ts";
import { counted } from "./formats.ts";
import type { ByLanguage, Language, Sentences } from "./language.ts";

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
  wasThere: "was there",
  isAdded: "added",
  revision: (n: number): string => `revision ${n}`,
  reason: (reason: string): string => `Reason: ${reason}`,
  fields: (n: number): string => counted(n, "field"),
  columns: { place: "Field", before: "Before", now: "Now" },
} as const;

/** One difference as the cells of a table: where, before, now. */
export function changeCells(
  change: FieldChange,
  language: Language = "en",
): { place: string; before: string; now: string } {
  const say = revisionsIn[language].difference;
  const place = placeText(change.place, language);
  if (change.kind === "changed")
    return {
      place,
      before: leafText(change.before, language),
      now: leafText(change.after, language),
    };
  return change.kind === "added"
    ? { place, before: say.added, now: say.isAdded }
    : { place, before: say.wasThere, now: say.removed };
}

/** On a revision's page that does not exist. */
export const noSuchRevision = {
  title: "There is no such revision",
  text: "This item has no revision of that number. Its newest page lists all there are.",
  search: "Search for the item",
} as const;

/** Above a maker's answer, so that nobody takes it for part of the measurement. */
export const makerAnswerWords = {
  title: "The maker’s answer",
  lead: "In the maker’s own words and in full. It is not part of the measurement, and nobody here has checked it.",
  receivedOn: (fromWhom: string, day: string): string => `${fromWhom}, received on ${day}`,
} as const;

const english = { difference: differencePage, none: noSuchRevision, maker: makerAnswerWords };
export type RevisionSentences = Sentences<typeof english>;
export const revisionsIn: ByLanguage<RevisionSentences> = { en: english, es: spanish };
