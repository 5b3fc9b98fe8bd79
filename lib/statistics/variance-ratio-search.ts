import { bracketedRoot } from "./bracketed-root.ts";

/** A restricted likelihood along one variance ratio: −2ℓ up to a constant, and its slope. */
export type RatioProfile = { deviance: (ratio: number) => number; slope: (ratio: number) => number };

const POINTS_PER_DECADE = 4;

/**
 * The variance ratio at or above 0 with the least deviance. The slope's changes of sign are found on a grid of equal
 * steps in the logarithm from `lowest` to `highest`, each is refined to the last digit, and the deviance picks among
 * them and 0 (a restricted likelihood can have two humps when groups are few and unequal).
 *
 * @example leastDevianceRatio({ deviance: (r) => (r - 2) ** 2, slope: (r) => 2 * (r - 2) }, 0.1, 10) // 2
 */
export function leastDevianceRatio(profile: RatioProfile, lowest: number, highest: number): number {
  const decades = Math.log10(highest / lowest);
  const count = Math.ceil(decades * POINTS_PER_DECADE);
  let best = 0;
  let bestDeviance = profile.deviance(0);
  let before = 0;
  let slopeBefore = profile.slope(0);
  for (let i = 0; i <= count; i++) {
    const ratio = lowest * 10 ** ((decades * i) / count);
    const slope = profile.slope(ratio);
    if (slopeBefore < 0 && slope >= 0) {
      const candidate = bracketedRoot(profile.slope, before, ratio);
      const deviance = profile.deviance(candidate);
      if (deviance < bestDeviance) {
        best = candidate;
        bestDeviance = deviance;
      }
    }
    before = ratio;
    slopeBefore = slope;
  }
  return best;
}
