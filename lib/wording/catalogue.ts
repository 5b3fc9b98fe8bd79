import { madeInWords } from "../limits/iso-day.ts";
import type { Verdict } from "../publication/leading-decision.ts";
import type { LogEntry, Snapshot } from "../publication/snapshot.ts";
import { catalogue as spanish } from "./es/catalogue.ts";
import { counted, plainDate, plainMonth } from "./formats.ts";
import { labelsIn } from "./labels.ts";
import type { ByLanguage, Language, Sentences } from "./language.ts";
import { siteWords } from "./site-words.ts";

/** The sentences of the readers' pages that are not about one result: front page, search, what to do, history, log. */
export const frontPage = {
  title: "Was mine tested?",
  searchLabel: "What is it, or what is written on it?",
  searchHint: "A name, a picture or words on its foot, a product code.",
  whatTitle: "What this is",
  what: [
    "We test everyday things from kitchens and toy boxes for lead and other metals, with an X‑ray tool that does no harm to them.",
    "For each part of a thing we say one number, how sure it is, and how it compares with the limits we know. Every reading behind it is on the same page.",
  ],
  newest: "Newest results",
  noItems: "No result is published yet",
  noItemsText: "The first item appears here as soon as a tester publishes it.",
  howToRead: "How to read an answer",
  readers: {
    above: "We are at least 95 in 100 sure that the amount is on the failing side of the limit.",
    below: "We are at least 95 in 100 sure that it is not.",
    "too-close": "The number is so near the limit that we cannot tell.",
    "not-detected": "The tool saw nothing. There may still be a little, up to the bound we state.",
  } satisfies Partial<Record<Verdict, string>>,
  allItems: "All tested items",
  methods: "How results are made",
  limits: "The limits we compare with",
} as const;

/** The verdicts that the front page explains, in its order. */
export const explainedVerdicts = ["above", "below", "too-close", "not-detected"] as const;

export const searchPage = {
  title: (query: string): string => (query === "" ? "All tested items" : `Results for “${query}”`),
  count: (total: number, query: string): string =>
    query === "" ? counted(total, "tested item") : `${counted(total, "item")} found, best match first`,
  sameCaution:
    "We tested the very objects shown here. One that looks the same can come from another batch or year and have another glaze or paint.",
  readAs: (read: readonly { typed: string; as: string }[]): string =>
    read.map(({ typed, as }) => `No item holds “${typed}”; “${as}” was looked for instead.`).join(" "),
  more: "Material, age, year and order",
  sorts: { best: "Best match first", newest: "Newest first", name: "Name, A to Z" },
  form: "Search and narrow down",
  words: "Words",
  order: "In order of",
  search: "Search",
  facets: {
    category: { label: "Kind", empty: "Any kind" },
    element: { label: "Looked for", empty: "Anything" },
    verdict: { label: "Answer", empty: "Any answer" },
    material: { label: "Material", empty: "Any material" },
    age: { label: "Made for", empty: "Any age" },
    year: { label: "Tested in", empty: "Any year" },
  },
  tested: (day: string): string => `tested ${day}`,
  marks: "Marks",
  askForTest: "Ask us to test this one",
  seeAll: "See all tested items",
  near: "Near, but not the same",
  nearText: "These hold all your words but one. They are other things, and say nothing about yours.",
  wrongCheckDigit: (query: string, { found, expected }: { found: string; expected: string }): string =>
    `“${query.trim()}” has the length of a product code, but its last digit does not fit the others: it should be ${expected}, not ${found}. One digit is probably mistyped; look at the code again.`,
  nothing: "Not tested here yet",
  nothingText: (query: string): string =>
    query === "" ? "No item fits these filters." : `We have no result for “${query}”.`,
  proves:
    "A similar item proves nothing about yours: glazes, paints and alloys differ from batch to batch and year to year.",
  whatToDo: [
    "Try fewer words, or only what is drawn or stamped on its foot.",
    "Until you know, use another one for food and for small children.",
    "Ask a laboratory. Only a leach test shows how much comes out into food.",
    "For paint, dust or soil in a home, ask a licensed lead assessor or your health office.",
    "Worried about a child? Ask a doctor about a blood lead test. No object's number can take its place.",
  ],
} as const;

export const comparePage = {
  title: "Which one is yours?",
  most: 4,
  pick: "Compare this one",
  compare: "Compare the marked items",
  lead: "Two to four tested items side by side. Look at the marks first: they tell twins apart.",
  tooFew: "Nothing to compare yet",
  tooFewText: "Mark two to four items in a list of results, then compare them here.",
  notStated: "not stated",
  caution:
    "We tested the very objects described here. One that looks the same can come from another batch or year and have another glaze or paint.",
  rows: {
    photo: "Photo",
    marks: "Marks",
    otherNames: "Also called",
    code: "Product code",
    kind: "Kind",
    age: "Made for",
    object: "The object we tested",
    answer: "The answer",
    results: "What weighs most",
    tested: "Tested",
  },
} as const;

const chipped = "Stop using it for food or play once it is chipped, worn or flaking: what lies under was not tested.";
const toDo = {
  withdrawal: ["Treat the item as not tested. Look here again later: a new result gets a new revision on this page."],
  above: [
    "Do not let a child use it or put it in the mouth.",
    "Use another one for food and drink.",
    "Do not sand, scrape or heat the part: dust and fumes are the quickest way in.",
    "Before you throw it away, ask your local waste office.",
  ],
  "too-close": [
    "Treat it as if it were above: use another one for food and for children until more readings are in.",
    "More readings, or a laboratory, can settle it.",
  ],
  "cannot-say": [
    "This result cannot tell you which side of a limit it is on. The reason is given with each limit below.",
    "A laboratory can do the test that would be needed.",
  ],
  below: [
    "This part is below the limit we name, no more than that. Other parts and other substances may differ.",
    chipped,
  ],
  "not-detected": [
    "The tool saw nothing, down to the bound we state. Other parts and other substances may differ.",
    chipped,
  ],
};

/** What a reader can do about an answer; our own advice, on the careful side, with no source but common practice. */
export function whatToDo(
  verdict: Verdict | null,
  kind: Snapshot["kind"],
  language: Language = "en",
): readonly string[] {
  const words = catalogueIn[language].toDo;
  if (kind === "withdrawal") return words.withdrawal;
  return words[verdict ?? "cannot-say"];
}

const review = {
  by: (names: string, day: string | null) =>
    `Checked by ${names || "a second person"}${day === null ? "" : ` on ${day}`}`,
  none: "Not independently reviewed: nobody but the tester has checked it",
};
export const reviewText = (
  { reviewed, reviewers, reviewedOn }: Snapshot["review"],
  language: Language = "en",
): string => {
  const words = catalogueIn[language].review;
  if (!reviewed) return words.none;
  return words.by(reviewers.join(", "), reviewedOn ? plainDate(reviewedOn, language) : null);
};

const revision = {
  line: (number: number, kind: string, day: string) => `Revision ${number}: ${kind}, ${day}`,
};
/** "Revision 2: correction of an error, 26 November 2026". */
export const revisionLine = (
  entry: Pick<LogEntry, "revision" | "kind" | "publishedAt">,
  language: Language = "en",
): string =>
  catalogueIn[language].revision.line(
    entry.revision,
    labelsIn[language].revision[entry.kind].toLowerCase(),
    plainDate(entry.publishedAt, language),
  );

export const revisionBanner = {
  newerTitle: "There is a newer revision",
  newer: (shown: number, newest: number): string =>
    `You are reading revision ${shown}. It stays here so that nothing is hidden, but revision ${newest} has replaced it.`,
  withdrawnTitle: "This result has been withdrawn",
  withdrawn: "Please do not use it. It stays here so that nothing is hidden.",
  correctionTitle: "This page was corrected",
  linkText: "Go to the newest revision",
  reason: (reason: string): string => `Reason: ${reason}`,
} as const;

const answerNotes = {
  /** What the first answer rests on. */
  restsOn: (readings: number, spots: number, part: string): string =>
    `The first answer rests on ${counted(readings, "reading")} at ${counted(spots, "spot")} of the part “${part}”.`,
  noLimitOfKind: "We know of no limit of this kind to compare with.",
  enteredByHand: "The readings were entered by hand.",
  /** After the link to a result's evidence: limits that are not on the strip. */
  otherLimits: (n: number): string => (n === 0 ? "" : `, and ${counted(n, "more limit")} of another kind`),
  yes: "yes",
  no: "no",
  gotOn: (day: string): string => `on ${day}`,
  madeUnknown: "when is not known",
};
export const { restsOn, noLimitOfKind, enteredByHand, otherLimits } = answerNotes;

export const yesNo = (value: boolean, language: Language = "en"): string =>
  catalogueIn[language].notes[value ? "yes" : "no"];

export const inventedNotice =
  "All of it is invented: the items, the people and the readings were made up to show how the registry works. No real product was tested.";

/** How the tester got an object, and when: "bought in a shop, on 3 May 2026". */
export const howGotText = (specimen: Snapshot["specimens"][number], language: Language = "en"): string =>
  [specimen.howGot, specimen.gotOn ? catalogueIn[language].notes.gotOn(plainDate(specimen.gotOn, language)) : ""]
    .filter((text) => text)
    .join(", ");

/** "in August 2011"; a date of making that nobody knows is said, since some limits hang on it. */
export function madeText(madeOn: string | null | undefined, language: Language = "en"): string {
  if (!madeOn) return catalogueIn[language].notes.madeUnknown;
  return language === "en" ? madeInWords(madeOn) : madeInSpanish(madeOn);
}
const madeInSpanish = (iso: string): string =>
  iso.length === 4
    ? `en ${iso}`
    : iso.length === 7
      ? `en ${plainMonth(`${iso}-01`, "es")}`
      : `el ${plainDate(iso, "es")}`;

export const notFoundPage = {
  title: "This page is not here",
  text: "The address may be mistyped, or the page may never have been published. Published pages are never taken away, so search for the item.",
  search: "Look for it here",
} as const;

export const correctionsPage = {
  title: "Corrections",
  lead: "Every change to a published result, with its reason. The older page stays where it was, with a note on top.",
  feed: "The same as a feed",
  writeTo: (contact: string): string => `Something is wrong? Write to ${contact}.`,
  revisionOf: (name: string, revision: number): string => `${name}, revision ${revision}`,
  difference: "What changed, field by field",
  before: "The revision before it",
  none: "Nothing has been corrected or withdrawn",
  noneText: "When a result is corrected, brought up to date or withdrawn, it is listed here with the reason.",
} as const;

export const logPage = {
  title: "Publication log",
  lead: "Everything ever published, in order. Each entry's hash covers the entry before it, so nothing can be changed or taken out unseen. Anyone can check it.",
  none: "The log is empty",
  noneText: "Its first entry is made by the first publication.",
  asJson: "The log as JSON",
  dataPackage: "Everything published, as a data package",
  caption: "Entries, newest first",
  columns: {
    entry: "Entry",
    item: "Item and revision",
    what: "What",
    published: "Published",
    snapshot: "SHA-256 of the page's data",
    hash: "Hash of the entry",
  },
} as const;

const english = {
  site: siteWords,
  front: frontPage,
  search: searchPage,
  compare: comparePage,
  toDo,
  review,
  revision,
  banner: revisionBanner,
  notes: answerNotes,
  invented: inventedNotice,
  notFound: notFoundPage,
  corrections: correctionsPage,
  log: logPage,
};
export type Catalogue = Sentences<typeof english>;
/** All of them by language: `catalogueIn[language].front.title`. */
export const catalogueIn: ByLanguage<Catalogue> = { en: english, es: spanish };
