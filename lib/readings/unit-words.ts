import type { QuantityKind } from "../quantity/kinds.ts";
import type { Unit } from "../quantity/units.ts";

/**
 * The units a file of readings writes, in their many spellings, and what kind of quantity each can stand for.
 * A mass fraction does not say whether it is of a bulk part or of a coating: that is asked.
 */
export type UnitWord = { unit: Unit; kinds: readonly QuantityKind[]; spellings: readonly string[] };

const fraction = ["bulk-mass-fraction", "coating-mass-fraction"] as const;

export const unitWords: readonly UnitWord[] = [
  { unit: "ppm", kinds: fraction, spellings: ["ppm", "ppmw", "ppm w/w", "ppm (w/w)", "ppm m/m"] },
  { unit: "mg/kg", kinds: fraction, spellings: ["mg/kg", "mg kg-1", "mg.kg-1", "mg·kg-1", "mgkg-1", "mg/kilogram"] },
  { unit: "µg/g", kinds: fraction, spellings: ["µg/g", "ug/g", "mcg/g", "µg g-1", "ug g-1"] },
  { unit: "g/kg", kinds: fraction, spellings: ["g/kg", "g kg-1"] },
  {
    unit: "%",
    kinds: fraction,
    spellings: [
      ..."% wt% wt.% %wt m% ma% gew% gew.-% gew.% %m/m %w/w percent pct prozent".split(" "),
      ...["wt %", "wt. %", "% wt", "% (m/m)", "% m/m", "m-%", "ma.-%", "gew.-%", "gew. %", "% w/w", "w/w %", "% p/p"],
      ...["weight %", "weight percent", "mass %", "% mass", "mass percent", "masse-%", "% masse"],
    ],
  },
  { unit: "µg/kg", kinds: fraction, spellings: ["ppb", "µg/kg", "ug/kg"] },
  {
    unit: "mg/cm²",
    kinds: ["coating-areal"],
    spellings: ["mg/cm²", "mg/cm2", "mg/cm^2", "mg cm-2", "mg/sqcm", "mg/sq cm"],
  },
  {
    unit: "µg/cm²",
    kinds: ["coating-areal"],
    spellings: ["µg/cm²", "µg/cm2", "µg/cm^2", "ug/cm²", "ug/cm2", "ug/cm^2", "mcg/cm2", "µg cm-2", "ug cm-2"],
  },
  {
    unit: "µg/ft²",
    kinds: ["dust-loading"],
    spellings: ["µg/ft²", "µg/ft2", "µg/ft^2", "ug/ft²", "ug/ft2", "ug/ft^2", "ug/sq ft"],
  },
];

/** Both micro signs as U+00B5, all dashes as "-", superscript minus and digits plain, so that spellings compare. */
export const foldUnitText = (text: string): string =>
  text
    .normalize("NFC")
    .replace(/\u03bc/g, "µ")
    .replace(/[\u2010-\u2015\u2212\u207b]/g, "-")
    .replace(/¹/g, "1")
    .replace(/-²/g, "-2")
    .replace(/[\u00a0\u2009\u202f]/g, " ");

const bySpelling = new Map(unitWords.flatMap((word) => word.spellings.map((spelling) => [spelling, word])));
const escaped = (text: string) => text.replace(/[.*+?^${}()|[\]\\/]/g, "\\$&");
const longestFirst = [...bySpelling.keys()].sort((a, b) => b.length - a.length).map(escaped);
const unitInText = new RegExp(`(?<![\\p{L}\\d%/])(?:${longestFirst.join("|")})(?![\\p{L}\\d²%/])`, "iu");

/** Reads a text that is a unit and nothing else (brackets around it allowed). Null when it is not. "[wt %]" → "%". */
export function readUnit(text: string): UnitWord | null {
  const bare = foldUnitText(text)
    .trim()
    .replace(/^[[(]\s*(.*?)\s*[\])]$/, "$1")
    .replace(/\s+/g, " ");
  return bySpelling.get(bare) ?? bySpelling.get(bare.toLowerCase()) ?? null;
}

/** Finds a unit inside a longer text, such as a header. "Pb (mg/kg)" → unit mg/kg, rest "Pb ( )". */
export function findUnit(text: string): { word: UnitWord; written: string; rest: string } | null {
  const folded = foldUnitText(text).replace(/[ \t]+/g, " ");
  const match = unitInText.exec(folded);
  if (!match) return null;
  const word = bySpelling.get(match[0]) ?? bySpelling.get(match[0].toLowerCase());
  if (!word) return null;
  return {
    word,
    written: match[0],
    rest: `${folded.slice(0, match.index)} ${folded.slice(match.index + match[0].length)}`,
  };
}

export const unitWordOf = (unit: string): UnitWord | null =>
  unitWords.find((word) => word.unit === unit) ?? readUnit(unit);
