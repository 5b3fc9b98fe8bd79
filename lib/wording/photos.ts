import type { PhotoMark } from "../publication/photo-marks.ts";
import { parseTypedNumber } from "../quantity/written-quantity.ts";
import { photoSentences as spanish } from "./es/photos.ts";
import { counted, listed, numberText } from "./formats.ts";
import type { ByLanguage, Language, Sentences } from "./language.ts";

/** What readers are told below a photo. */
const english = {
  spot: (spot: string) => `spot ${spot}`,
  noSize: "The circles show where, not how large a spot was.",
  asWindow: (across: string, some: boolean) =>
    `The circles are as large as the analyser’s window, ${across} mm across${some ? " where that is known" : ""}, by the known length on the photo.`,
};
export type PhotoSentences = Sentences<typeof english>;
const photosIn: ByLanguage<PhotoSentences> = { en: english, es: spanish };

/** The words of photos and of the spots on them. A place along a side as a field holds it: "34.5" for 0.345. */
export const percentText = (share: number): string => (share * 100).toFixed(1);
const percent = (share: number): string => `${percentText(share)} %`;

const typed = (text: string): number | null => {
  const read = parseTypedNumber(text);
  return read.ok ? read.value.value : null;
};

/** What was typed for a place, as a share: 0.345 for "34,5"; null where it is no number from 0 to 100. */
export function shareTyped(text: string): number | null {
  const value = typed(text);
  return value !== null && value >= 0 && value <= 100 ? value / 100 : null;
}

/** What was typed for a length in mm; null where it is no number above 0. */
export function lengthTyped(text: string): number | null {
  const value = typed(text);
  return value !== null && value > 0 ? value : null;
}

/** "34.5 % from the left, 20.0 % from the top" */
export const placeText = (x: number, y: number): string => `${percent(x)} from the left, ${percent(y)} from the top`;

/** A spot by the number on the photo: "1: glaze, inside, spot a". */
export const markName = (
  { number, spot }: Pick<PhotoMark, "number" | "spot">,
  part: string | undefined,
  language: Language = "en",
): string => `${number}: ${part ? `${part}, ` : ""}${photosIn[language].spot(spot)}`;

/** How large the circles are, below a photo with marks; null where there is none. */
export function marksNote(
  marks: readonly Pick<PhotoMark, "share">[],
  windows: readonly (number | null)[],
  language: Language = "en",
): string | null {
  const say = photosIn[language];
  if (marks.length === 0) return null;
  if (marks.every((mark) => mark.share === null)) return say.noSize;
  const sizes = [...new Set(windows.flatMap((mm) => (mm === null ? [] : [mm])))].sort((a, b) => a - b);
  const across = listed(
    sizes.map((mm) => numberText(mm, 3, language)),
    language,
  );
  return say.asWindow(
    across,
    marks.some((mark) => mark.share === null),
  );
}

export const photoWords = {
  none: "No photo yet. A reader tells by it whether theirs is the same.",
  hint: "JPEG, PNG, WebP or AVIF, up to 20 MB each. Place, time and camera are taken out of what is shown; the file as it came is kept where only this registry can read it.",
  noWords: "has no words yet",
  first: "Readers see the first photo beside the answer.",
  spotsOn: (n: number): string => (n === 0 ? "no spot marked" : `${counted(n, "spot")} marked`),
  keys: "Arrow keys move a mark a little, Shift and an arrow key ten times as far. Delete takes it off the photo.",
  tap: "Click or tap the photo where the window stood: a spot is marked there. Drag a mark to move it, or give its place in the table.",
  scaleAbout:
    "Something of known length beside the object, as far from the camera as the face that was shot: a ruler, a coin. The spots are then drawn as large as the analyser’s window.",
  moved: (name: string, x: number, y: number): string => `${name}: ${placeText(x, y)}.`,
  joined: (n: number): string => `${counted(n, "reading is", "readings are")} joined to spots.`,
} as const;

/** What joining in order would do, or why it does not go. */
export function dealSentence(readings: number, spots: number): string {
  const have = `${counted(readings, "reading")} and ${counted(spots, "spot")}`;
  if (readings === 0) return "No reading is on this part yet.";
  if (spots === 0) return "No spot of this part is marked on this photo yet.";
  if (readings % spots !== 0)
    return `${have}: they do not go evenly. Mark the missing spot, set a stray reading aside, or join them one by one.`;
  return `${have}: ${counted(readings / spots, "shot")} on each, in order of time.`;
}
