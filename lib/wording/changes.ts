import type { FieldChange, Leaf, PlaceStep } from "../publication/revision-difference.ts";
import { elementName } from "./elements.ts";
import { changeSentences as spanish } from "./es/changes.ts";
import { numberText } from "./formats.ts";
import { readable } from "./labels.ts";
import type { ByLanguage, Language } from "./language.ts";
import { quoted } from "./problem-sentence.ts";

/** What a field of the snapshot is called where two revisions are set side by side. */
const fieldNames: Record<string, string> = {
  aliases: "other names",
  marks: "maker's marks",
  gtin: "product code",
  interests: "ties to the maker",
  ageGroup: "age group",
  foodContact: "touches food",
  mouthable: "can be put in the mouth",
  howGot: "how it was got",
  whoPaid: "who paid",
  gotOn: "got on",
  dateCode: "date code",
  madeOn: "when it was made",
  valueText: "figure as written",
  sampleAreaCm2: "area wiped in cm²",
  blankText: "the laboratory's blank",
  reportedOn: "reported on",
  certificateName: "certificate",
  testedOn: "tested on",
  thicknessMm: "thickness in mm",
  smallestDimensionMm: "narrowest place in mm",
  areaCm2: "area in cm²",
  massG: "mass in g",
  u: "standard uncertainty",
  U: "expanded uncertainty",
  k: "coverage factor",
  nuEff: "degrees of freedom",
  below: "detection limit",
  upperBound: "upper bound",
  inputsDigest: "digest of the inputs",
  setAside: "setting aside",
  probabilityAbove: "probability of being above",
  takenAt: "time of the shot",
  secondsCounted: "seconds counted",
  belowDetection: "not detected",
  detectionLimit: "detection limit",
  windowMm: "window in mm",
  lengthMm: "known length in mm",
  scale: "known length",
  x: "place from the left",
  y: "place from the top",
  depth: "reading depth",
  inputs: "what it was made from",
  unevenFrom: "spread from which a part counts as uneven",
  decisionRisk: "risk taken in a verdict",
  spreadAllowed: "spread that a bound from few spots allows for",
  evenSeenTo: "share of counting errors up to which an even part can be seen",
  threeSpotsLevel: "level of an uneven part's range from three spots or fewer",
  fiveSpotsLevel: "level of an uneven part's range from four or five spots",
  mm: "depth in mm",
  ofThick: "share of a thick part's signal",
  errorK: "what the errors cover",
  sha256: "SHA-256",
  inDoubtReason: "why readings in doubt are used",
  clockShiftMinutes: "clock put right by, in minutes",
  fitness: "was the analyser fit",
  uCertified: "uncertainty of the certified value",
};

const memberNames: Record<string, string> = {
  specimens: "object",
  parts: "part",
  otherTests: "other test",
  results: "result",
  readings: "reading",
  decisions: "limit",
  spots: "spot",
  budget: "contribution",
  contributions: "stated contribution",
  photos: "photo",
  sizes: "file",
  testers: "tester",
  instruments: "instrument",
  files: "file",
  sessions: "session",
  fitness: "was the analyser fit for",
  standards: "check standard",
  checks: "check",
  history: "earlier check",
  inDoubt: "stretch in doubt after",
};

export type ChangeSentences = {
  fields: Record<string, string>;
  members: Record<string, string>;
  nothing: string;
  yes: string;
  no: string;
  changed: (place: string, before: string, after: string) => string;
  added: (place: string) => string;
  removed: (place: string) => string;
};
const changesIn: ByLanguage<ChangeSentences> = {
  en: {
    fields: fieldNames,
    members: memberNames,
    nothing: "nothing",
    yes: "yes",
    no: "no",
    changed: (place, before, after) => `Changed: ${place}. Before: ${before}. Now: ${after}.`,
    added: (place) => `Added: ${place}.`,
    removed: (place) => `Taken away: ${place}.`,
  },
  es: spanish,
};

const lower = (field: string): string =>
  readable(field.replace(/([a-z])([A-Z])/g, "$1-$2").toLowerCase()).toLowerCase();

/** A label that came from outside is quoted here, once; the sentences add no marks of their own. */
function stepName(step: PlaceStep, language: Language): string {
  const { fields, members } = changesIn[language];
  if (step.label === undefined) return fields[step.field] ?? lower(step.field);
  if (step.field === "results") return elementName(step.label, language);
  return `${members[step.field] ?? lower(step.field)} ${quoted(step.label, 80, language)}`;
}

/** "object “mug 1”, part “glaze, outside”, lead, stated, value" */
export const placeText = (place: readonly PlaceStep[], language: Language = "en"): string =>
  place.map((step) => stepName(step, language)).join(", ");

/** A leaf as words: "nothing", "yes", a number to six digits, or the text in quotation marks. */
export function leafText(leaf: Leaf, language: Language = "en"): string {
  const say = changesIn[language];
  if (leaf === null || leaf === "") return say.nothing;
  if (typeof leaf === "boolean") return leaf ? say.yes : say.no;
  if (typeof leaf === "number") return numberText(leaf, 6, language);
  if (typeof leaf === "string") return quoted(leaf, 200, language);
  return leaf.length === 0 ? say.nothing : leaf.map((one) => leafText(one, language)).join(", ");
}

/**
 * One difference between two revisions as a sentence.
 *
 * @example "Changed: item, name. Before: “Blue mug”. Now: “Bluebell mug”."
 */
export function changeSentence(change: FieldChange, language: Language = "en"): string {
  const say = changesIn[language];
  const place = placeText(change.place, language);
  if (change.kind === "changed")
    return say.changed(place, leafText(change.before, language), leafText(change.after, language));
  return change.kind === "added" ? say.added(place) : say.removed(place);
}

/** The words of the record that a difference quotes, as they stand in its sentence. */
export const writtenIn = (change: FieldChange): string[] =>
  [
    ...change.place.map((step) => (step.field === "results" ? "" : (step.label ?? ""))),
    ...(change.kind === "changed"
      ? [change.before, change.after].flat().map((leaf) => (typeof leaf === "string" ? leaf : ""))
      : []),
  ]
    .filter((text) => text !== "")
    .map((text) => quoted(text, 200).slice(1, -1));

/** Changes of digits and digests that follow from another change, which a page may fold away. */
export const isDerived = (change: FieldChange): boolean => {
  const fields = change.place.map((step) => step.field);
  return (
    fields.includes("inputsDigest") ||
    fields.includes("crossCheck") ||
    fields.includes("budget") ||
    fields.includes("scatter") ||
    (fields.includes("inputs") && !fields.includes("contributions") && !fields.includes("policy"))
  );
};
