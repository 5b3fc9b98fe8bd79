import { atomicWeights } from "./atomic-weights.ts";
import { DomainError } from "./domain-error.ts";

/** Mass fractions by chemical symbol, adding to 1. */
export type ElementFractions = Readonly<Record<string, number>>;

/** Ingredients by chemical formula ("SiO2", "C2H3Cl", "Fe") and the mass fraction of each, adding to 1. */
export type Ingredients = Readonly<Record<string, number>>;

const formulaForm = /^(?:[A-Z][a-z]?\d*)+$/;

/** Atoms in a formula of plain symbols and digits, without brackets: "Al2O3" is two of Al and three of O. */
function atomsOf(formula: string): Map<string, number> {
  if (!formulaForm.test(formula))
    throw new DomainError("not-a-formula", "a formula is written with symbols and plain digits only", formula);
  const atoms = new Map<string, number>();
  for (const [, symbol = "", count = ""] of formula.matchAll(/([A-Z][a-z]?)(\d*)/g))
    atoms.set(symbol, (atoms.get(symbol) ?? 0) + (count === "" ? 1 : Number(count)));
  return atoms;
}

/**
 * Mass fraction of every element in a mixture given by the formulas of its ingredients:
 * w(E) = Σ wᵢ·nᵢ(E)·A(E) / Σ nᵢ(e)·A(e), over the ingredients i, with standard atomic weights A.
 *
 * Refuses (DomainError) `not-a-formula`, `unknown-element`, `not-a-fraction` (a share that is not within 0 and 1) and
 * `shares-do-not-add-up` (a sum more than 1e-9 away from 1).
 *
 * @example elementFractions({ SiO2: 1 }) // { Si: 0.46744, O: 0.53256 }
 */
export function elementFractions(ingredients: Ingredients): ElementFractions {
  const fractions: Record<string, number> = {};
  let sum = 0;
  for (const [formula, share] of Object.entries(ingredients)) {
    if (!(share >= 0 && share <= 1))
      throw new DomainError("not-a-fraction", "a mass fraction lies within 0 and 1", share);
    sum += share;
    const atoms = [...atomsOf(formula)].map(([symbol, count]) => ({ symbol, mass: count * weightOf(symbol) }));
    const whole = atoms.reduce((total, { mass }) => total + mass, 0);
    for (const { symbol, mass } of atoms) fractions[symbol] = (fractions[symbol] ?? 0) + (share * mass) / whole;
  }
  if (Math.abs(sum - 1) > 1e-9)
    throw new DomainError("shares-do-not-add-up", "the mass fractions of the ingredients must add to 1", sum);
  return fractions;
}

function weightOf(symbol: string): number {
  const weight = Object.hasOwn(atomicWeights, symbol) ? atomicWeights[symbol] : undefined;
  if (weight === undefined) throw new DomainError("unknown-element", "no atomic weight for this symbol", symbol);
  return weight;
}
