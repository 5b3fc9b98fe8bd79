import { DomainError } from "../quantity/domain-error.ts";
import { convert } from "../quantity/units.ts";
import type { AreaComparator, MassComparator, Nearest } from "./types.ts";

const m = (value: number, unit: "ft" | "in" | "m"): number => convert(value, unit, "m");
const rectangle = (
  id: string,
  name: string,
  [long, short, unit]: readonly [number, number, "ft" | "in" | "m"],
  size: string,
  source: string,
  checked: AreaComparator["checked"],
): AreaComparator => {
  const sides = [m(long, unit), m(short, unit)] as const;
  return { id, name, kind: "area", area: convert(sides[0] * sides[1], "m²", "ft²"), sides, size, source, checked };
};

const courtPages = "pages on court sizes and copies of the rules of the game";
const ours = "our own assumption, no source";

/** Areas a reader can picture, smallest first. */
export const areaComparators: readonly AreaComparator[] = [
  rectangle("sill", "a window sill", [36, 4, "in"], "36 × 4 in (1 ft²)", ours, "assumption"),
  rectangle("doormat", "a doormat", [30, 18, "in"], "30 × 18 in (3.75 ft²)", ours, "assumption"),
  rectangle(
    "cot-mattress",
    "a cot mattress",
    [51.25, 27.25, "in"],
    "at least 51 1/4 × 27 1/4 in (9.7 ft²)",
    "16 CFR 1219; ASTM F1169, read in a page on cot sizes",
    "second-hand",
  ),
  rectangle("bedroom", "a bedroom floor", [12, 10, "ft"], "12 × 10 ft (120 ft²)", ours, "assumption"),
  rectangle("classroom", "a classroom floor", [30, 30, "ft"], "30 × 30 ft (900 ft²)", ours, "assumption"),
  rectangle(
    "tennis-court",
    "a tennis court (doubles lines)",
    [78, 36, "ft"],
    "78 × 36 ft (2808 ft²)",
    courtPages,
    "second-hand",
  ),
  rectangle(
    "football-pitch",
    "a football pitch",
    [105, 68, "m"],
    "105 × 68 m (about 76 854 ft²); pitches may be 100–110 × 64–75 m",
    courtPages,
    "second-hand",
  ),
];

const coin = (
  id: string,
  name: string,
  diameter: number,
  thickness: number,
  grams: number,
  source: string,
  checked: MassComparator["checked"],
): MassComparator => ({
  id,
  name,
  kind: "mass",
  mass: grams * 1000,
  coin: { diameter, thickness },
  size: `${diameter} mm across, ${thickness} mm thick, ${grams} g`,
  source,
  checked,
});
const usMint = "coin specifications of the United States Mint";
const euroTables = "tables of euro coins; summary of Regulation (EC) No 975/98";
const massPage = "one page that compares small masses; the order of magnitude only";

/** Masses a reader can picture, smallest first. The mass of a coin is not the mass of lead in a piece of a coin's size. */
export const massComparators: readonly MassComparator[] = [
  {
    id: "salt-grain",
    name: "a grain of table salt",
    kind: "mass",
    mass: 0.0585,
    size: "about 0.06 mg",
    source: massPage,
    checked: "second-hand",
  },
  {
    id: "poppy-seed",
    name: "a poppy seed",
    kind: "mass",
    mass: 0.3,
    size: "about 0.3 mg",
    source: massPage,
    checked: "second-hand",
  },
  {
    id: "sesame-seed",
    name: "a sesame seed",
    kind: "mass",
    mass: 3.64,
    size: "3 to 4 mg",
    source: massPage,
    checked: "second-hand",
  },
  coin("dime", "a US dime", 17.91, 1.35, 2.268, usMint, "verified"),
  coin("euro-cent", "a euro 1 cent coin", 16.25, 1.67, 2.3, euroTables, "second-hand"),
  coin("us-cent", "a US cent", 19.05, 1.52, 2.5, usMint, "verified"),
  coin("euro-2-cent", "a euro 2 cent coin", 18.75, 1.67, 3.06, euroTables, "second-hand"),
  coin("us-5-cent", "a US 5 cent coin", 21.21, 1.95, 5, usMint, "verified"),
  coin("us-quarter", "a US quarter", 24.26, 1.75, 5.67, usMint, "verified"),
];

export const findAreaComparator = (id: string): AreaComparator | null =>
  areaComparators.find((one) => one.id === id) ?? null;
export const findMassComparator = (id: string): MassComparator | null =>
  massComparators.find((one) => one.id === id) ?? null;

const nearest = <C>(all: readonly C[], sizeOf: (one: C) => number, amount: number, count: number): Nearest<C>[] => {
  if (!Number.isFinite(amount) || amount <= 0)
    throw new DomainError("not-positive", "an amount to compare must be above zero", amount);
  return all
    .map((comparator) => ({ comparator, times: amount / sizeOf(comparator) }))
    .sort((a, b) => Math.abs(Math.log(a.times)) - Math.abs(Math.log(b.times)))
    .slice(0, count);
};

/**
 * The comparators whose size is nearest by ratio, nearest first, with how many of each the amount is.
 *
 * @example nearestAreas(2808)[0]?.comparator.id // "tennis-court", times 1
 */
export const nearestAreas = (areaFt2: number, count = 2): Nearest<AreaComparator>[] =>
  nearest(areaComparators, (one) => one.area, areaFt2, count);

/** As `nearestAreas`, for a mass in mg. @example nearestMasses(4)[0]?.comparator.id // "sesame-seed" */
export const nearestMasses = (massMg: number, count = 2): Nearest<MassComparator>[] =>
  nearest(massComparators, (one) => one.mass, massMg, count);
