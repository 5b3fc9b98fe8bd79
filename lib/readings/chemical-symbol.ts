import { elementInOxide, type Oxide, oxides } from "../quantity/oxides.ts";
import { type Element, elements } from "./elements.ts";

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
const oxideByLowerCase = new Map<string, Oxide>(oxides.map((formula) => [formula.toLowerCase(), formula]));
/** Two-letter symbols that are words or common abbreviations when not written in their own case, and short names that are words. */
const ordinaryWords = new Set("as in be ho la se te ti ta re os er es co ce pr sm dy tb or".split(" "));

/** "Molybdän" → "molybdan": lower case, accents folded, so that one table serves every spelling. */
export const foldWord = (word: string): string =>
  word.normalize("NFKD").replace(/\p{M}/gu, "").toLowerCase().replace(/ß/g, "ss").trim();

/**
 * Reads one word as an element's symbol or name or as an oxide. Null when it is none.
 * Examples: "Pb" → Pb; "plomb" → Pb; "PBO" → Pb as PbO; "Y" → yttrium that needs company; "Tinker" → null.
 */
export function readChemicalName(word: string): ChemicalName | null {
  const exact = bySymbol.get(word);
  if (exact) return { symbol: word, oxide: null, factor: 1, needsCompany: word.length === 1 };
  const folded = foldWord(word);
  const formula = oxideByLowerCase.get(folded);
  if (formula) {
    const { element, factor } = elementInOxide(formula);
    return { symbol: element, oxide: formula, factor, needsCompany: false };
  }
  const named = byName.get(folded);
  if (named) return { symbol: named.symbol, oxide: null, factor: 1, needsCompany: ordinaryWords.has(folded) };
  const loose = folded.length === 2 ? symbolByLowerCase.get(folded) : undefined;
  if (loose) return { symbol: loose.symbol, oxide: null, factor: 1, needsCompany: ordinaryWords.has(folded) };
  return null;
}
