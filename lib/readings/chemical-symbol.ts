import { type Element, elements, oxides } from "./elements.ts";

/** What a word in a header or an element cell names: an element, or an oxide that stands for one. */
export type ChemicalName = {
  symbol: string;
  /** "PbO" where the figures are of the oxide; null where they are of the element. */
  oxide: string | null;
  /** Mass of the element in one mass of what was reported; 1 for the element itself. */
  factor: number;
  /** The spelling could as well be an ordinary word or a coordinate ("in", "Y"): it counts only with a unit or an error beside it. */
  needsCompany: boolean;
};

const bySymbol = new Map<string, Element>(elements.map((element) => [element.symbol, element]));
const byName = new Map<string, Element>(elements.flatMap((element) => element.names.map((name) => [name, element])));
const symbolByLowerCase = new Map<string, Element>(elements.map((element) => [element.symbol.toLowerCase(), element]));
const oxideByLowerCase = new Map<string, string>(oxides.map((formula) => [formula.toLowerCase(), formula]));
/** Two-letter symbols that are words or common abbreviations when not written in their own case, and short names that are words. */
const ordinaryWords = new Set("as in be ho la se te ti ta re os er es co ce pr sm dy tb or".split(" "));

/** "Molybdän" → "molybdan": lower case, accents folded, so that one table serves every spelling. */
export const foldWord = (word: string): string =>
  word.normalize("NFKD").replace(/\p{M}/gu, "").toLowerCase().replace(/ß/g, "ss").trim();

/**
 * Mass of the element in a unit mass of an oxide: n·A(E) / (n·A(E) + m·A(O)). Dimensionless.
 * Example: elementFactor("PbO") = 207.2 / (207.2 + 15.999) = 0.92832.
 */
export function elementFactor(formula: string): { symbol: string; factor: number } | null {
  const parts = /^([A-Z][a-z]?)(\d*)O(\d*)$/.exec(formula);
  const element = parts ? bySymbol.get(parts[1]!) : undefined;
  if (!parts || !element) return null;
  const ofElement = element.weight * Number(parts[2] || 1);
  return { symbol: element.symbol, factor: ofElement / (ofElement + 15.999 * Number(parts[3] || 1)) };
}

/**
 * Reads one word as an element's symbol or name or as an oxide. Null when it is none.
 * Examples: "Pb" → Pb; "plomb" → Pb; "PBO" → Pb as PbO; "Y" → yttrium that needs company; "Tinker" → null.
 */
export function readChemicalName(word: string): ChemicalName | null {
  const exact = bySymbol.get(word);
  if (exact) return { symbol: word, oxide: null, factor: 1, needsCompany: word.length === 1 };
  const folded = foldWord(word);
  const formula = oxides.includes(word) ? word : oxideByLowerCase.get(folded);
  if (formula) {
    const { symbol, factor } = elementFactor(formula)!;
    return { symbol, oxide: formula, factor, needsCompany: false };
  }
  const named = byName.get(folded);
  if (named) return { symbol: named.symbol, oxide: null, factor: 1, needsCompany: ordinaryWords.has(folded) };
  const loose = folded.length === 2 ? symbolByLowerCase.get(folded) : undefined;
  if (loose) return { symbol: loose.symbol, oxide: null, factor: 1, needsCompany: ordinaryWords.has(folded) };
  return null;
}
