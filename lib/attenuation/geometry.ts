import { DomainError } from "../quantity/domain-error.ts";
import type { Material } from "../quantity/item-words.ts";
import { type LineName, lineOf, massAttenuation, massAttenuationAt } from "./mass-attenuation.ts";
import type { Matter } from "./matter.ts";

/** How X-rays reach the part and leave it. Angles are measured from the surface: 90° is straight in or out. */
export type Geometry = { incidentDegrees: number; takeOffDegrees: number; incidentKeV: number };

/** Tube voltage taken where none is known, kV (common practice, no source). No photon carries more, in keV. */
export const usualTubeKilovolts = 50;

/**
 * One energy in keV to stand for the part of a tube's spectrum that excites a line: 1.5 times the edge (effective
 * wavelength two thirds of the edge's: Bertin, Principles and Practice of X-Ray Spectrometric Analysis, from memory),
 * but never past the middle between the edge and the tube's voltage (ours, so that a 50 kV tube is not overdrawn).
 *
 * @example incidentEnergy("Pb Lβ") // 22.8
 */
export function incidentEnergy(line: LineName): number {
  const { edgeKeV } = lineOf(line);
  return Math.min(1.5 * edgeKeV, (edgeKeV + usualTubeKilovolts) / 2);
}

/** In and out at 45° (common practice, no source), with the line's own incident energy. What is given replaces it. */
export const geometryFor = (line: LineName, given: Partial<Geometry> = {}): Geometry => ({
  incidentDegrees: 45,
  takeOffDegrees: 45,
  incidentKeV: incidentEnergy(line),
  ...given,
});

/** Sine of an angle above 0° and at most 90°; anything else is refused (DomainError `angle-out-of-range`). */
export function sineOf(degrees: number): number {
  if (!(degrees > 0 && degrees <= 90))
    throw new DomainError(
      "angle-out-of-range",
      "an angle from the surface lies above 0 and at most at 90 degrees",
      degrees,
    );
  return degrees === 90 ? 1 : Math.sin((degrees * Math.PI) / 180);
}

/**
 * Attenuation of the whole path in and out, cm²/g of depth: χ = (µ/ρ)(E₀)/sin ψ₁ + (µ/ρ)(E)/sin ψ₂, with E₀ the incident
 * energy, ψ₁ its angle, E the line's energy and ψ₂ the take-off angle. One incident energy stands for the spectrum, and
 * what other elements excite in turn is left out.
 * Source: Sherman, Spectrochimica Acta 7 (1955) 283, primary fluorescence of a flat layer (from memory).
 */
export function pathAttenuation(material: Material | Matter, line: LineName, given: Partial<Geometry> = {}): number {
  const { incidentDegrees, takeOffDegrees, incidentKeV } = geometryFor(line, given);
  if (incidentKeV <= lineOf(line).edgeKeV)
    throw new DomainError(
      "incident-below-edge",
      "X-rays below the absorption edge do not excite the line",
      incidentKeV,
    );
  return (
    massAttenuationAt(material, incidentKeV) / sineOf(incidentDegrees) +
    massAttenuation(material, line) / sineOf(takeOffDegrees)
  );
}
