/** Widths of characters in ems, on the generous side, so that a label never turns out longer than the room kept for it. */
const narrow = new Set([..."iIjlftr.,:;'|!()[] ·-\u202F\u00A0"]);
const wide = new Set([..."mwMWOQGCD@%±≥≤–—"]);

const em = (char: string): number => {
  if (narrow.has(char)) return 0.34;
  if (wide.has(char)) return 0.84;
  if (char >= "0" && char <= "9") return 0.53;
  if (char >= "A" && char <= "Z") return 0.66;
  if (char >= "a" && char <= "z") return 0.54;
  return 1; // accents, other scripts, signs
};

/**
 * The width in px a text is expected to take at most in the sans face: the sum of its characters' widths.
 * `textWidth("90", 10)` is 10.6.
 */
export const textWidth = (text: string, fontSize: number): number =>
  [...text].reduce((sum, char) => sum + em(char), 0) * fontSize;

/** The text, or as much of it as fits with an ellipsis. */
export function fitText(text: string, fontSize: number, room: number): string {
  if (textWidth(text, fontSize) <= room) return text;
  const chars = [...text];
  while (chars.length > 1 && textWidth(`${chars.join("").trimEnd()}…`, fontSize) > room) chars.pop();
  return `${chars.join("").trimEnd()}…`;
}
