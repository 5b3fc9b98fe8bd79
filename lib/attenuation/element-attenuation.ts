import { DomainError } from "../quantity/domain-error.ts";
import { massAttenuationTable, type Piece, pointsAt, tableRange } from "./tables/mass-attenuation.ts";

/**
 * Mass attenuation coefficient µ/ρ of one element in cm²/g at an energy in keV, with coherent scattering (narrow beam).
 * A cubic through four points of ln(µ/ρ) over ln E, within one piece of our table; no piece crosses an absorption edge.
 * At an edge itself the value above it is taken. Held to xraylib's CS_Total within 1e-6 from 4 to 60 keV.
 *
 * Refuses (DomainError) `element-not-in-table` and `energy-outside-table`.
 *
 * @example elementAttenuation("Pb", 10) // 130.64
 */
export function elementAttenuation(symbol: string, keV: number): number {
  const pieces = Object.hasOwn(massAttenuationTable, symbol) ? massAttenuationTable[symbol]! : null;
  if (!pieces) throw new DomainError("element-not-in-table", "no attenuation is tabled for this element", symbol);
  if (!(keV >= tableRange.low && keV <= tableRange.high))
    throw new DomainError("energy-outside-table", "the table runs from 4 to 60 keV", keV);
  let at = pieces.length - 1;
  while (at > 0 && keV < pieces[at]![0]) at--;
  const piece = pieces[at]!;
  const end = pieces[at + 1]?.[0] ?? tableRange.high;
  return Math.exp(cubicThrough(logsOf(piece), Math.log(keV / piece[0]) / Math.log(end / piece[0])));
}

const logsOf = ([, ...values]: Piece): number[] => values.map(Math.log);

/** Lagrange's form of the cubic through the values at `pointsAt`. */
function cubicThrough(values: readonly number[], t: number): number {
  let sum = 0;
  for (const [j, value] of values.entries()) {
    let weight = 1;
    for (const [k, node] of pointsAt.entries()) if (k !== j) weight *= (t - node) / (pointsAt[j]! - node);
    sum += weight * value;
  }
  return sum;
}
