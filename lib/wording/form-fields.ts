import { readable } from "./labels.ts";

/** Fields of forms as their labels call them, where the name in the program is another. */
const names: Record<string, string> = {
  howGot: "how it was got",
  whoPaid: "who paid",
  gotOn: "got on",
  dateCode: "date code",
  madeOn: "when it was made",
  thicknessMm: "thickness",
  smallestDimensionMm: "narrowest place",
  areaCm2: "area",
  massG: "mass",
  gtin: "number under the bar code",
  category: "kind of object",
  ageGroup: "made for",
  marks: "maker’s marks",
  aliases: "other names",
  alt: "what it shows",
  errorK: "what the errors cover",
  calibrationRel: "calibration",
  windowMm: "window diameter",
  minimumSeconds: "shortest count",
  instrumentId: "analyser",
  startedAt: "start",
  endedAt: "end",
  clockShiftMinutes: "clock put right by",
  certified: "certified values",
  calibratedRanges: "calibrated ranges",
  expiresOn: "valid until",
  otherNames: "other names in files",
  inDoubtReason: "why they are used",
  timeZone: "time zone",
};

/** "how it was got" for "howGot"; a field without a name here as its own words: "shotCount" → "shot count". */
export function fieldName(field: string): string {
  const own = names[field];
  return own ?? readable(field.replace(/([a-z0-9])([A-Z])/g, "$1-$2").toLowerCase()).toLowerCase();
}
