import { DomainError } from "../quantity/domain-error.ts";
import type { Material } from "../quantity/item-words.ts";
import { requireLevel } from "../statistics/checks.ts";
import { type Geometry, pathAttenuation, sineOf } from "./geometry.ts";
import { type LineName, massAttenuation } from "./mass-attenuation.ts";
import { type Matter, matterOf } from "./matter.ts";

/** The share of the signal that counts as all of it, where none is given (common practice, no source). */
export const usualShare = 0.99;
const millimetresInCentimetre = 10;

/**
 * Depth in mm above which the given share of a line's way out is lost: d = −ln(1 − share)·sin ψ / ((µ/ρ)·ρ), with ψ the
 * take-off angle from the surface. The way out only: `infiniteThickness` takes in the way in as well.
 * Refuses (DomainError) `bad-level` (a share not within 0 and 1) and `angle-out-of-range`.
 * Source: the exponential law of attenuation, NISTIR 5632, equation 1.
 *
 * @example informationDepth("glaze", "Pb Lα", { takeOffDegrees: 90 }) // 0.935
 */
export function informationDepth(
  material: Material | Matter,
  line: LineName,
  { takeOffDegrees = 45, share = usualShare }: { takeOffDegrees?: number; share?: number } = {},
): number {
  const perCentimetre = (massAttenuation(material, line) * matterOf(material).density) / sineOf(takeOffDegrees);
  return (millimetresInCentimetre * meanPaths(share)) / perCentimetre;
}

/**
 * Share (0 … 1) of the signal of an infinitely thick part that a part of this thickness gives, evenly composed and with
 * nothing behind it: 1 − exp(−χ·ρ·t), χ as in `pathAttenuation` (way in and way out). Thickness in mm.
 * Refuses (DomainError) `negative-thickness`, `incident-below-edge` and `angle-out-of-range`.
 * Source: as `pathAttenuation`, integrated over the depth.
 *
 * @example signalShare(0.25, "glaze", "Pb Lβ") // 0.708
 */
export function signalShare(
  thicknessMm: number,
  material: Material | Matter,
  line: LineName,
  geometry: Partial<Geometry> = {},
): number {
  if (!(thicknessMm >= 0)) throw new DomainError("negative-thickness", "a thickness is zero or more", thicknessMm);
  const arealDensity = (matterOf(material).density * thicknessMm) / millimetresInCentimetre;
  return -Math.expm1(-pathAttenuation(material, line, geometry) * arealDensity);
}

/**
 * Areal density in g/cm² from which the given share of an infinitely thick part's signal comes: −ln(1 − share)/χ. It asks
 * for no density, so it holds for a coat whose thickness nobody knows.
 *
 * @example limitingArealDensity("glaze", "Pb Lβ") // 0.234
 */
export const limitingArealDensity = (
  material: Material | Matter,
  line: LineName,
  { share = usualShare, ...geometry }: Partial<Geometry> & { share?: number } = {},
): number => meanPaths(share) / pathAttenuation(material, line, geometry);

/**
 * Thickness in mm from which more of the material changes the signal by less than 1 − share: the limiting areal density
 * over the density.
 *
 * @example infiniteThickness("glaze", "Pb Lβ") // 0.936
 */
export const infiniteThickness = (
  material: Material | Matter,
  line: LineName,
  options: Partial<Geometry> & { share?: number } = {},
): number => (millimetresInCentimetre * limitingArealDensity(material, line, options)) / matterOf(material).density;

function meanPaths(share: number): number {
  requireLevel(share, "share");
  return -Math.log1p(-share);
}
