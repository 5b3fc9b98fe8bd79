/** What is wrong with a cell before its meaning is asked. */
export type CellFault = "formula" | "direction-control" | "control-character" | "broken-character";

// Overrides, embeddings and isolates turn displayed text around; U+200E and U+200F only mark a direction and are ordinary in Hebrew or Arabic.
const directionControls = /[\u202a-\u202e\u2066-\u2069]/;
// biome-ignore lint/suspicious/noControlCharactersInRegex: finding control characters is this line's purpose
const controls = /[\u0000-\u0008\u000b-\u001f\u007f-\u009f\u200b\u2060\ufeff]/;
// biome-ignore lint/suspicious/noControlCharactersInRegex: as above; one cheap look that clears most cells
const suspicious = /[\u0000-\u0008\u000b-\u001f\u007f-\u009f\u200b\u202a-\u202e\u2060\u2066-\u2069\ufeff\ufffd=@+\-|!]/;

/**
 * A cell a spreadsheet would compute or run: "=1+1", "@SUM(A1)", "+cmd|' /C calc'!A0". Signed numbers, a lone "-" and ordinary
 * words behind a dash are none.
 */
export function isFormula(cell: string): boolean {
  const text = cell.trimStart();
  if (text.startsWith("=")) return true;
  return /^[@+-]\s*[\p{L}_$(]/u.test(text) && /[(|!]/.test(text);
}

/** Null for a clean cell. "=1+1" → "formula"; "mug\u202egnp" → "direction-control". */
export function faultOf(cell: string): CellFault | null {
  if (!suspicious.test(cell)) return null;
  if (directionControls.test(cell)) return "direction-control";
  if (controls.test(cell)) return "control-character";
  if (cell.includes("\ufffd")) return "broken-character";
  return isFormula(cell) ? "formula" : null;
}

/** Text as it can be shown in a table cell: invisible characters by their code point, long text cut. */
export const shown = (text: string): string =>
  text
    .slice(0, 80)
    .replace(
      /[\p{Cc}\p{Cf}\ufffd]/gu,
      (character) => `U+${character.codePointAt(0)!.toString(16).toUpperCase().padStart(4, "0")}`,
    ) + (text.length > 80 ? "…" : "");
