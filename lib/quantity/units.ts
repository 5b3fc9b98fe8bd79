import { readDigits, timesRatio } from "./decimal-digits.ts";
import { DomainError } from "./domain-error.ts";
import { type Amount, amount, canonicalUnit, type QuantityKind, quantityKinds } from "./kinds.ts";

export type Dimension =
  | "mass-fraction"
  | "areal"
  | "concentration"
  | "mass-per-day"
  | "mass"
  | "length"
  | "area"
  | "time";

/**
 * The closed list of units: dimension and exact size in the dimension's base unit (mg/kg, mg/m², µg/mL, µg/day, mg, mm, mm², s),
 * as a decimal text or as a ratio of two where the decimal does not end. Exact by definition: 1 in = 25.4 mm, 1 ft = 304.8 mm, 1 oz
 * (avoirdupois) = 28.349523125 g.
 *
 * Sources: SI Brochure, 9th ed. (2019) 5.4.7 for % and ppm; NIST SP 811 (2008) appendix B.8 for inch, foot and ounce.
 */
const unitTable = {
  "mg/kg": ["mass-fraction", "1"],
  ppm: ["mass-fraction", "1"],
  "µg/g": ["mass-fraction", "1"],
  "µg/kg": ["mass-fraction", "0.001"],
  "g/kg": ["mass-fraction", "1000"],
  "%": ["mass-fraction", "10000"],
  "mg/m²": ["areal", "1"],
  "mg/cm²": ["areal", "10000"],
  "µg/cm²": ["areal", "10"],
  "µg/ft²": ["areal", "0.001", "0.09290304"],
  "µg/mL": ["concentration", "1"],
  "mg/L": ["concentration", "1"],
  "µg/L": ["concentration", "0.001"],
  "µg/day": ["mass-per-day", "1"],
  "mg/day": ["mass-per-day", "1000"],
  µg: ["mass", "0.001"],
  mg: ["mass", "1"],
  g: ["mass", "1000"],
  kg: ["mass", "1000000"],
  oz: ["mass", "28349.523125"],
  mm: ["length", "1"],
  cm: ["length", "10"],
  m: ["length", "1000"],
  in: ["length", "25.4"],
  ft: ["length", "304.8"],
  "mm²": ["area", "1"],
  "cm²": ["area", "100"],
  "m²": ["area", "1000000"],
  "ft²": ["area", "92903.04"],
  s: ["time", "1"],
} as const satisfies Record<string, readonly [Dimension, string] | readonly [Dimension, string, string]>;

export type Unit = keyof typeof unitTable;
export const units = Object.keys(unitTable) as Unit[];

/**
 * Whether a text is a unit of the closed list, in its own spelling.
 * @example isUnit("µg/cm²") // true
 */
export const isUnit = (text: string): text is Unit => Object.hasOwn(unitTable, text);

/**
 * What a unit measures: units of one dimension convert into one another.
 * @example dimensionOf("ppm") === dimensionOf("%") // true
 */
export const dimensionOf = (unit: Unit): Dimension => unitTable[unit][0];

/** Spellings that are not the unit's own with another case, space, µ or ². Lower case. */
const otherSpellings: Record<string, Unit> = {
  percent: "%",
  pct: "%",
  "wt%": "%",
  "wt.%": "%",
  "weight%": "%",
  "mass%": "%",
  "%wt": "%",
  "%w/w": "%",
  "%(w/w)": "%",
  "w/w%": "%",
  "%m/m": "%",
  "mgkg-1": "mg/kg",
  "gkg-1": "g/kg",
  "µgg-1": "µg/g",
  "µg/sqft": "µg/ft²",
  "µg/sq.ft": "µg/ft²",
  "µg/sq.ft.": "µg/ft²",
  "mg/sqcm": "mg/cm²",
  "µg/sqcm": "µg/cm²",
  "mg/sqm": "mg/m²",
  "mgcm-2": "mg/cm²",
  "µgcm-2": "µg/cm²",
  "mg/d": "mg/day",
  "µg/d": "µg/day",
  inch: "in",
  inches: "in",
  foot: "ft",
  feet: "ft",
  sqft: "ft²",
  "sq.ft": "ft²",
  "sq.ft.": "ft²",
  sqcm: "cm²",
  sqm: "m²",
  sqmm: "mm²",
  sec: "s",
  secs: "s",
  second: "s",
  seconds: "s",
  ounce: "oz",
  ounces: "oz",
};

/** One spelling for the things that are written in several ways: µ (two code points, u, mc), ² (^2, 2), −, spaces. */
const spelled = (text: string): string =>
  text
    .trim()
    .replace(/[\s\u00a0\u2009\u202f·]/g, "")
    .replace(/\u03bc/g, "µ")
    .replace(/[\u2212\u207b]/g, "-")
    .replace(/\u00b9/g, "1")
    .replace(/^(?:u|mc)(?=g)/i, "µ")
    .replace(/\^?2$/, "²")
    .replace(/(?<=m|t)\^?-²$/, "-2");

const lowerCase = new Map<string, Unit>(units.map((unit) => [unit.toLowerCase(), unit]));

/**
 * The unit a text means, or null where it means none of the closed list or could mean two things.
 *
 * Case is free only where it cannot change the meaning: all capitals ("PPM", "MG/KG", "WT%") read as the unit, but a single "M", "G"
 * or "S" and a leading "M" before small letters ("Mg": megagram, or magnesium) do not. "ppb" is not on the list.
 *
 * @example parseUnit("ug/cm^2") // "µg/cm²"
 */
export const parseUnit = (text: string): Unit | null => {
  const plain = spelled(text);
  if (isUnit(plain)) return plain;
  const lower = plain.toLowerCase();
  if (Object.hasOwn(otherSpellings, lower)) return otherSpellings[lower]!;
  const letters = plain.replace(/[^A-Za-zµ]/g, "");
  const bare = letters.replace(/µ/g, "");
  const capitals = letters.length > 1 && (bare === bare.toUpperCase() || lower === "ppm");
  const litre = plain.replace(/(?<=\/[mµ]?)l$/, "L"); // mg/l is mg/L
  if (isUnit(litre)) return litre;
  return capitals ? (lowerCase.get(lower) ?? null) : null;
};

const known = (unit: string): Unit => {
  const found = parseUnit(unit);
  if (found === null) throw new DomainError("unknown-unit", "not a unit of the closed list", unit);
  return found;
};

type Ratio = { top: bigint; bottom: bigint };

/** A decimal text as a ratio of whole numbers. */
const ratioOf = (text: string): Ratio => {
  const { digits, power } = readDigits("unit", text);
  return { top: BigInt(digits) * 10n ** BigInt(Math.max(0, power)), bottom: 10n ** BigInt(Math.max(0, -power)) };
};
const sizeOf = (unit: Unit): Ratio => {
  const [, over, under = "1"] = unitTable[unit] as readonly [Dimension, string, string?];
  const [a, b] = [ratioOf(over), ratioOf(under)];
  return { top: a.top * b.bottom, bottom: a.bottom * b.top };
};

type Conversion = (value: number) => number;

const conversionBetween = (source: Unit, target: Unit): Conversion => {
  if (dimensionOf(source) !== dimensionOf(target))
    throw new DomainError("dimension-mismatch", "the units measure different things", [source, target]);
  const [from, to] = [sizeOf(source), sizeOf(target)];
  const top = from.top * to.bottom;
  const bottom = from.bottom * to.top;
  const exactly: Conversion = (value) => timesRatio(value, top, bottom);
  const power = powerOfTen(top, bottom);
  if (power === null) return exactly;
  if (power === 0) return (value) => value;
  // A power of ten only moves the point of the written number: as exact, and much quicker.
  return (value) => {
    const text = String(value);
    return text.includes("e") ? exactly(value) : Number(`${text}e${power}`);
  };
};

/** n where top ÷ bottom is 10ⁿ; null where it is no power of ten. */
const powerOfTen = (top: bigint, bottom: bigint): number | null => {
  const [large, small] = top > bottom ? [top, bottom] : [bottom, top];
  const quotient = String(large / small);
  if (large % small !== 0n || !/^10*$/.test(quotient)) return null;
  return top > bottom ? quotient.length - 1 : 1 - quotient.length;
};

/** Conversions met so far, by the spellings they were asked for in; emptied before a hostile file could fill it. */
const conversions = new Map<string, Conversion>();
const conversion = (from: string, to: string): Conversion => {
  const key = `${from}>${to}`;
  const met = conversions.get(key);
  if (met !== undefined) return met;
  const found = conversionBetween(known(from), known(to));
  if (conversions.size >= 1000) conversions.clear();
  conversions.set(key, found);
  return found;
};

/**
 * A number in one unit as a number in another of the same dimension, rounded once: 0.07 % is 700 ppm, not 700.0000000000001.
 *
 * Refuses (DomainError) an unknown unit, two dimensions (`dimension-mismatch`: mg/cm² never becomes ppm), a number that is not finite.
 *
 * @example convert(0.25, "%", "ppm") // 2500
 */
export const convert = (value: number, from: string, to: string): number => {
  const convertOne = conversion(from, to);
  if (typeof value !== "number" || !Number.isFinite(value))
    throw new DomainError("not-finite", "a value must be a finite number", value);
  return convertOne(value);
};

/** A kind may be written in any unit of its canonical unit's dimension. */
const dimensionOfKind = (kind: QuantityKind): Dimension => dimensionOf(canonicalUnit(kind));

/**
 * The units a quantity of this kind can be written in, in the order of the list.
 * @example unitsOfKind("coating-areal").includes("µg/cm²") // true
 */
export const unitsOfKind = (kind: QuantityKind): Unit[] =>
  units.filter((unit) => dimensionOf(unit) === dimensionOfKind(kind));

/**
 * The kinds that can be written in this unit: what a unit alone does not settle.
 * @example kindsOfUnit("µg/ft²") // ["coating-areal", "dust-loading"]
 */
export const kindsOfUnit = (unit: Unit): QuantityKind[] =>
  (Object.keys(quantityKinds) as QuantityKind[]).filter((kind) => dimensionOfKind(kind) === dimensionOf(unit));

/**
 * Whether a quantity of this kind can be written in this unit (any spelling).
 *
 * @example unitBelongs("coating-areal", "ppm") // false
 */
export const unitBelongs = (kind: QuantityKind, unit: string): boolean => {
  const found = parseUnit(unit);
  return found !== null && dimensionOf(found) === dimensionOfKind(kind);
};

/**
 * A number in any unit of the kind, as an amount in the kind's canonical unit.
 * Refuses (DomainError) like `convert`; ask `unitBelongs` first where the unit comes from a file.
 *
 * @example toCanonical("coating-areal", 1000, "µg/cm²") // 1
 */
export const toCanonical = <K extends QuantityKind>(kind: K, value: number, unit: string): Amount<K> => {
  if (!Object.hasOwn(quantityKinds, kind)) throw new DomainError("unknown-kind", "not a quantity kind", kind);
  return amount(kind, convert(value, unit, canonicalUnit(kind)));
};
