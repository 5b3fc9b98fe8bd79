import * as library from "@/lib/index.ts";
import { reconcile } from "@/lib/reconcile/reconcile.ts";
import type { ReconcileInput } from "@/lib/reconcile/types.ts";

// Runs in Node and, bundled, in a browser: no import but the pure rooms.

// biome-ignore lint/suspicious/noExplicitAny: the shape of a case's inputs differs by kind
type Inputs = any;

const draws = 20_000;
const named = (shape: string, entries: object[]): Inputs =>
  Object.fromEntries(entries.map((entry, i) => [`x${i}`, { shape, ...entry }]));
const overRootOf = (weights: number[] | undefined) => weights?.map((weight) => 1 / Math.sqrt(weight));
const groupsOf = ({ group, y }: Inputs): number[][] =>
  [...new Set<number>(group)].map((g) => y.filter((_: number, i: number) => group[i] === g));

/** What each kind of reference case is answered with; the checks of the answers are in tests/published. */
const answers: Record<string, (inputs: Inputs) => unknown> = {
  "a.weighted_mean": ({ x, u }) => library.weightedMean(x, u),
  "b.random_effects": ({ x, u, level }) =>
    (["PM", "DL", "REML"] as const).map((tau2) =>
      (["HK", "HK-adhoc", "normal"] as const).map((interval) => library.randomEffects(x, u, { tau2, interval, level })),
    ),
  "c.robust": ({ x }) => [library.medianMad(x), library.algorithmA(x), library.huberProposal2(x, { k: 1.5 })],
  "d.cochran": ({ variances, n_each }) => library.cochran(variances, n_each, { alpha: 0.05 }),
  "d.dixon_r10": ({ x }) => library.dixon(x, { alpha: 0.05 }),
  "d.gesd": ({ x, max_outliers, alpha }) => library.generalizedEsd(x, { maxOutliers: max_outliers, alpha }),
  "d.grubbs": ({ x, alpha }) => ([1, 2] as const).map((sides) => library.grubbs(x, { sides, alpha })),
  "e.all_censored_bound": ({ lod, u }) => library.upperBoundAllCensored(lod, u),
  "e.censored": ({ value_or_lod, censored }) =>
    [false, true].map((log) => library.censoredNormal(value_or_lod, censored, { log })),
  "e.degenerate": ({ value_or_lod, censored }) => library.censoredNormal(value_or_lod, censored),
  "e.likelihood_known_sd": ({ value_or_lod, u, censored }) => [
    library.censoredRandomEffects(value_or_lod, u, censored, { level: 0.95, cut: "chi2" }),
    library.lognormalRandomEffects(value_or_lod, u, censored, { level: 0.95 }),
  ],
  "f.iso5725": ({ lab, y }) => library.repeatability(y.map((one: number, i: number) => ({ lab: lab[i], y: one }))),
  "f.nested": ({ A, B, y }) => library.nestedAnova(y.map((one: number, i: number) => ({ a: A[i], b: B[i], y: one }))),
  "f.oneway": (inputs) => library.oneWayAnova(groupsOf(inputs)),
  "f.scores": ({ x, u_x, X, u_X, sigma_pt, k }) =>
    library.scores({ x, ux: u_x, assigned: X, uAssigned: u_X, sigma: sigma_pt, k }),
  "g.geometry": ({ shape, dimensions, u }) => library.solidVolume({ shape, dimensions, u }),
  "g.jcgm101_rectangular_sum": ({ standard_uncertainties }) =>
    library.monteCarlo(
      (values) => Object.values<number>(values).reduce((a, b) => a + b, 0),
      named(
        "rectangular",
        standard_uncertainties.map((sd: number) => ({ mean: 0, sd })),
      ),
      { draws, seed: 7 },
    ),
  "g.product": ({ means, relative_u }) =>
    ["normal", "lognormal", "triangular"].map((shape) =>
      library.monteCarlo(
        (values) => Object.values<number>(values).reduce((a, b) => a * b, 1),
        named(
          shape,
          means.map((mean: number, i: number) => ({ mean, sd: mean * relative_u[i] })),
        ),
        { draws, seed: 20261124 },
      ),
    ),
  "g.t_factor": ({ nu, level }) => nu.map((one: number) => library.coverageFactor(one, level)),
  "g.welch_satterthwaite": ({ contributions, nu, levels }) =>
    levels.map((level: string) =>
      library.combine(
        contributions.map((u: number, i: number) => ({ u, nu: nu[i] })),
        { level: Number(level) },
      ),
    ),
  "h.conformity": ({ y: value, u, limit, nu }) => [
    library.probabilityAbove({ value, u, shape: "normal" }, limit),
    ...(nu ? [library.probabilityAbove({ value, u, nu, shape: "t" }, limit)] : []),
    ...(value > 0 ? [library.probabilityAbove({ value, u, shape: "lognormal" }, limit)] : []),
  ],
  "h.guard_band": ({ risk, nu }) => library.guardBand({ risk, u: 1, nu }),
  "h.two_sided_conformity": ({ y: value, u, lower, upper }) =>
    [lower, upper].map((limit) => library.probabilityAbove({ value, u, shape: "normal" }, limit)),
  "i.cusum": ({ x, ...settings }) => library.cusum(x, settings),
  "i.ewma": ({ x, ...settings }) => library.ewma(x, settings),
  "i.individuals": ({ x }) => library.individualsChart(x),
  "i.multirule": ({ z }) => library.multirule(z),
  "i.xbar_known": ({ subgroups, mu, sigma }) => library.xbarChart(subgroups, { mu, sigma }),
  "j.weighted_ls": ({ x, y, sigma_y, y0, u_y0 }) => {
    const line = library.weightedLine(x, y, sigma_y);
    return [line, library.inversePrediction(line, { y0, uY0: u_y0 })];
  },
  "j.york": ({ x, y, wx, wy, sx, sy }) => library.york(x, y, sx ?? overRootOf(wx), sy ?? overRootOf(wy)),
  "k.rounding": ({ value, u, significant }) =>
    (["half-even", "half-up"] as const).map((ties) =>
      library.roundToUncertainty(value, u, { digits: significant, ties }),
    ),
};

/** Kinds that no function of the library's face answers. */
const unanswered = new Set(["e.likelihood_grouped", "h.global_risk"]);

/** JSON that keeps what JSON would lose: infinities, NaN and the sign of zero. */
const digits = (value: unknown): string =>
  JSON.stringify(value, (_, part) =>
    typeof part === "number" && (!Number.isFinite(part) || Object.is(part, -0))
      ? `${Object.is(part, -0) ? "-" : ""}${part}`
      : part,
  );

export type Work = { parts: ReconcileInput[]; cases: { id: string; kind: string; inputs: unknown }[] };

/** One result in all its digits, as JSON. */
export type Printed = { name: string; digits: string };

/** Whole reconcile results (with the text their digest is made of, so that it is compared too), then the cases. */
export const printedDigits = ({ parts, cases }: Work): Printed[] => [
  ...parts.map((input, i) => ({
    name: `part ${i} ${input.element}`,
    digits: digits(reconcile(input, (text) => text)),
  })),
  ...cases
    .filter(({ kind }) => !unanswered.has(kind))
    .map(({ id, kind, inputs }) => {
      const answer = answers[kind];
      if (!answer) throw new Error(`no answer for cases of kind ${kind}`);
      return { name: id, digits: digits(answer(inputs)) };
    }),
];
