import { type ChemicalName, foldWord, readChemicalName } from "./chemical-symbol.ts";
import {
  errorWords,
  fillerWords,
  halfLimitWords,
  limitWords,
  type Role,
  relativeWords,
  roleHeaders,
  standardDeviationWords,
} from "./header-words.ts";
import { findUnit, foldUnitText, type UnitWord } from "./unit-words.ts";

export type Coverage = 1 | 2 | 3;

/** What one header says its column is. `chemical` is null where the header names no element ("Error", "Result (ppm)"). */
export type HeaderMeaning =
  | { is: "role"; role: Role | "element" | "unit" }
  | {
      is: "value" | "error" | "limit" | "flag";
      chemical: ChemicalName | null;
      unit: UnitWord | null;
      unitText: string | null;
      k: Coverage | null;
      relative: boolean;
    }
  | { is: "unknown" };

const roleOf = new Map<string, Role | "element" | "unit" | "flag">(
  Object.entries(roleHeaders).flatMap(([role, names]) =>
    names.map((name) => [name, role as Role | "element" | "unit" | "flag"]),
  ),
);

const foldHeader = (text: string): string =>
  foldWord(text.replace(/[_.:]+/g, " ").replace(/-/g, " "))
    .replace(/\s+/g, " ")
    .trim();

const secondsUnit = /[[(,]?\s*\b(s|sec|secs|seconds|sek|sekunden|secondes|segundos)\s*[\])]?\s*$/i;

function readRole(text: string): HeaderMeaning | null {
  const whole = roleOf.get(foldHeader(text)) ?? roleOf.get(text.trim().toLowerCase());
  if (whole === "flag") return { is: "flag", chemical: null, unit: null, unitText: null, k: null, relative: false };
  if (whole) return { is: "role", role: whole };
  // "Time (s)", "Live time [sec]": a time with a unit of seconds is a duration, not a time of day.
  const timed = secondsUnit.exec(text);
  if (!timed) return null;
  const bare = foldHeader(text.slice(0, timed.index).replace(/[_(\s[]+$/, ""));
  return roleOf.get(bare) === "seconds" || roleOf.get(bare) === "time" ? { is: "role", role: "seconds" } : null;
}

/** "Pb 2σ", "Pb (k=2)", "1-sigma error", "Pb_2s": the multiple of the standard uncertainty, and the text without it. */
function takeCoverage(text: string): { k: Coverage | null; rest: string; found: boolean } {
  const match =
    /\bk\s*=\s*([123])(?![\d.,])/i.exec(text) ??
    /(?<![\d.,])([123])\s*[-_x×·]?\s*(?:σ|sigmas?\b|sig\b|sd\b|std\.?\b|s(?![\p{L}\d]))/iu.exec(text);
  if (!match) return { k: null, rest: text, found: false };
  const rest = `${text.slice(0, match.index)} ${text.slice(match.index + match[0].length)}`;
  return { k: Number(match[1]) as Coverage, rest, found: true };
}

/** Splits "PbErr", "Pb±", "PbLOD" where the whole is no word of its own: first a symbol, then the rest. */
function splitWord(word: string): string[] {
  if (readChemicalName(word) || isKnownWord(foldWord(word))) return [word];
  for (let cut = word.length - 1; cut > 0; cut--) {
    const head = word.slice(0, cut);
    const tail = word.slice(cut);
    if (!isKnownWord(foldWord(tail)) && !readChemicalName(tail)) continue;
    if (/[a-z]/.test(tail[0]!) && /[a-z]/.test(head.at(-1)!)) continue; // cut only where the case changes: "Tinsd" is no word of ours
    if (readChemicalName(head) || isKnownWord(foldWord(head))) return [head, tail];
  }
  return [word];
}

const isKnownWord = (word: string): boolean =>
  errorWords.has(word) ||
  standardDeviationWords.has(word) ||
  relativeWords.has(word) ||
  limitWords.has(word) ||
  halfLimitWords.has(word) ||
  fillerWords.has(word) ||
  word === "<" ||
  word === "std";

type Found = {
  chemicals: ChemicalName[];
  error: boolean;
  deviation: boolean;
  relative: boolean;
  limit: boolean;
  halves: number;
  flag: boolean;
  expanded: boolean;
};

/** Accounts for every word; false as soon as one is not of the grammar. */
function takeWords(words: readonly string[], found: Found): boolean {
  for (const word of words) {
    const folded = foldWord(word);
    // "In" with a capital is indium only where no element was named yet: "Pb In Glaze" stays unknown by its last word.
    const filler =
      fillerWords.has(folded) && !(readChemicalName(word) && word !== folded && found.chemicals.length === 0);
    const chemical = filler ? null : readChemicalName(word);
    if (word === "u") found.deviation = true;
    else if (chemical) found.chemicals.push(chemical);
    else if (errorWords.has(folded)) found.error = true;
    else if (standardDeviationWords.has(folded) || folded === "std") found.deviation = true;
    else if (relativeWords.has(folded)) found.relative = true;
    else if (limitWords.has(folded)) found.limit = true;
    else if (halfLimitWords.has(folded)) found.halves += 1;
    else if (folded === "<") found.flag = true;
    else if (!filler) return false;
  }
  return true;
}

/** "Lead (Pb)" names one element twice; two different ones make the header unreadable. */
function oneChemical(names: readonly ChemicalName[]): ChemicalName | null | "several" {
  const [first] = names;
  if (!first) return null;
  if (names.some((name) => name.symbol !== first.symbol)) return "several";
  return names.find((name) => name.oxide) ?? names.find((name) => !name.needsCompany) ?? first;
}

/**
 * Reads one header by the grammar: [element or oxide] [unit] [error words, coverage] [detection words] [filler], in any
 * order, every word accounted for; or a role ("Reading no.", "Date"). One unknown word makes the whole unknown: a column
 * "Lead tester" is no lead result.
 *
 * Examples: "Pb (ppm)" → value of Pb in ppm; "Pb +/- 2σ" → error of Pb, k 2; "LOD Blei [mg/kg]" → limit of Pb;
 * "PbO wt%" → value of Pb as PbO in %; "±" → error of whatever stands before it; "Lead tester" → unknown.
 */
export function readHeaderCell(header: string): HeaderMeaning {
  const text = foldUnitText(header).replace(/\s+/g, " ").trim();
  if (text === "" || text.length > 80) return { is: "unknown" };
  const role = readRole(text);
  if (role) return role;
  const marked = text.replace(/\+\s*[/\\]?\s*-/g, " ± ").replace(/(±|<)/g, " $1 ");
  const unit = findUnit(marked);
  const coverage = takeCoverage(unit?.rest ?? marked);
  const found: Found = {
    chemicals: [],
    error: coverage.found,
    deviation: false,
    relative: false,
    limit: false,
    halves: 0,
    flag: false,
    expanded: false,
  };
  const words = coverage.rest.split(/[\s_()[\]{},;:.\-/|=*]+/).filter((word) => word !== "");
  if (!takeWords(words.flatMap(splitWord), found)) return { is: "unknown" };
  // "U(Pb)": a capital U beside another element is an expanded uncertainty, not uranium.
  if (words.includes("U") && found.chemicals.some((name) => name.symbol !== "U")) {
    found.expanded = true;
    found.chemicals = found.chemicals.filter((name) => name.symbol !== "U");
  }
  const chemical = oneChemical(found.chemicals);
  if (chemical === "several" || found.halves === 1) return { is: "unknown" };
  const limit = found.limit || found.halves > 1;
  const error = found.error || found.deviation || found.expanded || found.relative;
  if (!limit && !error && !found.flag && !chemical && !unit && words.length === 0) return { is: "unknown" };
  const k = coverage.k ?? (found.deviation && !found.expanded ? 1 : null);
  return {
    is: limit ? "limit" : error ? "error" : found.flag ? "flag" : "value",
    chemical,
    unit: unit?.word ?? null,
    unitText: unit?.written ?? null,
    k: limit ? null : k,
    relative: found.relative,
  };
}

/** True where a header says something the reader can use: a result column of an element, or a role. */
export function isRecognised(meaning: HeaderMeaning): boolean {
  if (meaning.is === "unknown") return false;
  if (meaning.is === "role") return true;
  return !meaning.chemical?.needsCompany || meaning.unit !== null || meaning.is !== "value";
}
