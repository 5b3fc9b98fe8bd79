// The face of the pure rooms for whoever uses them as a library: these names and nothing else.
export { guardBand } from "./limits/guard-band.ts";
export { probabilityAbove } from "./limits/probability-above.ts";
export { roundToUncertainty } from "./quantity/round-to-uncertainty.ts";
export { combine } from "./statistics/combine.ts";
export { coverageFactor } from "./statistics/coverage-factor.ts";
export { medianMad } from "./statistics/median-mad.ts";
export { randomEffects } from "./statistics/random-effects.ts";
export { weightedMean } from "./statistics/weighted-mean.ts";
