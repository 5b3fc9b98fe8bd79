import type { Problem } from "../quantity/problem.ts";
import type { ByLanguage, Language } from "./language.ts";

/** Turns one problem into one or two sentences: what went wrong, where, what was found and what to do. */
export type ProblemWords = Record<string, (problem: Problem) => string>;

const quotationMarks: ByLanguage<readonly [string, string]> = { en: ["“", "”"], es: ["«", "»"] };

/** Text that came from outside, shortened and freed of control and direction marks, in quotation marks. */
export function quoted(text: string | undefined, longest = 80, language: Language = "en"): string {
  const [open, close] = quotationMarks[language];
  const clean = (text ?? "").replace(/[\p{Cc}\p{Cf}\u2028\u2029]+/gu, " ").trim();
  const short = [...clean].length > longest ? `${[...clean].slice(0, longest).join("")}…` : clean;
  return `${open}${short}${close}`;
}

/** "In shelf.csv, row 12, column Pb: " — empty where the problem has no place of its own. */
export function placeOf({ where }: Problem): string {
  const steps = [
    where?.file,
    where?.row === undefined ? undefined : `row ${where.row}`,
    where?.column === undefined ? undefined : `column ${quoted(where.column)}`,
    where?.field === undefined ? undefined : quoted(where.field),
  ].filter((step) => step !== undefined && step !== "");
  return steps.length === 0 ? "" : `In ${steps.join(", ")}: `;
}

/** " Found “x”." and " Allowed: y." where the problem carries them. */
export const foundText = ({ found }: Problem): string =>
  found === undefined || found === "" ? "" : ` Found: ${quoted(found)}.`;
export const allowedText = ({ allowed }: Problem): string =>
  allowed === undefined || allowed === "" ? "" : ` Allowed: ${allowed}.`;
