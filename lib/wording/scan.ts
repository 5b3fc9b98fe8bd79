import { scanWords as spanish } from "./es/scan.ts";
import type { ByLanguage, Sentences } from "./language.ts";

/** What is said while the bar code of a thing is read by the camera. */
export const scanWords = {
  open: "Scan the bar code",
  picture: "What the camera sees",
  title: "Hold the bar code in front of the camera",
  hint: "Keep it flat, in good light, about as far away as your hand is wide. It is looked up as soon as it can be read.",
  starting: "Starting the camera …",
  looking: "Looking for a bar code …",
  slow: "Nothing readable yet. Come a little closer, or type the number under the bars instead.",
  found: (code: string): string => `Found ${code}. Looking it up …`,
  refused: "The camera was not allowed. Allow it in the browser’s settings, or type the number under the bars.",
  noCamera: "No camera was found here. Type the number under the bars.",
  trouble: "The camera could not be used. Type the number under the bars.",
  unscripted: "The camera needs scripts, and they are off in this browser. Type the number under the bars instead.",
  again: "Try the camera again",
  number: "Or type the number under the bars",
  numberHint: "8 to 14 digits. The picture stays on this device: only the number is looked up.",
} as const;
export type ScanWords = Sentences<typeof scanWords>;
export const scanWordsIn: ByLanguage<ScanWords> = { en: scanWords, es: spanish };
