import { DomainError } from "../quantity/domain-error.ts";
import { combine } from "../statistics/combine.ts";
import { compareNames } from "./canonical-order.ts";
import type { Fit } from "./fit.ts";
import type { BudgetLine, StatedContribution } from "./types.ts";

/** The part's value with everything in the budget counted (steps 6 and 7). */
export type Combined = {
  lines: BudgetLine[];
  u: number | null;
  nuEff: number | null; // null = infinite
  k: number | null;
  U: number | null; // null where only an asymmetric interval is stated
  interval: [number, number] | null;
  asymmetric: boolean;
  notes: string[];
};

type Part = { u: number; nu: number; line: Omit<BudgetLine, "share"> };

/**
 * Step 6: the parts of the budget and their sum. u_c = √Σu², ν_eff by Welch–Satterthwaite (GUM G.4.1), k = t(0.975, ν_eff) with
 * ν_eff not rounded, U = k·u_c, interval value ± U. A relative contribution counts relative × |value|. The first line is the part's own
 * "scatter and counting"; `share` is u²/u_c².
 *
 * **An asymmetric interval** [lo, hi] of the part's own (a profile) keeps its form. With a = ln(M/lo), b = ln(hi/M) the arms, r
 * the relative standard uncertainty of all other parts together and k_r its coverage factor (its own ν_eff), the arms
 * combine on the log scale: a' = √(a² + (k_r·r)²), b' = √(b² + (k_r·r)²), stated as [M·exp(−a'), M·exp(b')]. Where lo is zero or
 * less there is no logarithm, and the arms M − lo and hi − M combine as they stand. U is then null: the ends are the
 * statement.
 *
 * **No content is below zero.** A symmetric interval, or a normal profile, that reaches below zero is stated from zero: [0, max(value, 0)
 * + upper arm] (note `interval-from-zero`). That is the profile interval of the normal model over contents of zero and
 * more; leaving out the impossible part loses no coverage.
 *
 * **No content is above the whole.** A profile whose upper end passes `most` (1,000,000 mg/kg for a mass fraction) is stated up to it (note
 * `interval-to-whole`): it says that the spots put no useful bound on the mean.
 *
 * A value whose own u is unknown has no combined uncertainty, however well the other parts are known.
 *
 * Refused (DomainError `contribution`): a contribution that is neither relative nor absolute, or both, or whose numbers
 * are not finite and zero or more (ν: above zero).
 *
 * @example value 410, scatter u 4, ν 4; calibration 5 % → u_c 20.9, ν_eff ≈ 2970, k 1.961, U 40.9
 */
export function budgetOf(fit: Fit, contributions: readonly StatedContribution[], most = Infinity): Combined {
  const stated = contributions.map(checked).sort((a, b) => compareNames(a.code, b.code) || size(a) - size(b));
  const nothing = { lines: [], u: null, nuEff: null, k: null, U: null, interval: null, asymmetric: false, notes: [] };
  if (fit.value === null || fit.u === null || fit.interval === null) return nothing;
  const value = fit.value;
  const own: Part = { u: fit.u, nu: fit.nu, line: ownLine(fit, value, fit.u) };
  const others = stated.map((one) => otherPart(one, value));
  const parts = [own, ...others];
  const sum = combined(parts);
  const lines = parts.map((part) => ({ ...part.line, share: sum.u > 0 ? (part.u / sum.u) ** 2 : 0 }));
  const [lo, hi] = fit.asymmetric ? widened(value, fit.interval, others) : around(value, sum.U);
  const whole = fit.asymmetric && hi >= most;
  const interval: [number, number] = [lo, whole ? most : hi];
  const fromZero = interval[0] < 0;
  const asymmetric = fit.asymmetric || fromZero;
  return {
    lines,
    u: sum.u,
    nuEff: Number.isFinite(sum.nuEff) ? sum.nuEff : null,
    k: sum.k,
    U: asymmetric ? null : sum.U,
    interval: fromZero ? [0, Math.max(value, 0) + (interval[1] - value)] : interval,
    asymmetric,
    notes: [...(fromZero ? ["interval-from-zero"] : []), ...(whole ? ["interval-to-whole"] : [])],
  };
}

const around = (value: number, half: number): [number, number] => [value - half, value + half];
/** Of a contribution that was `checked`: one of the two is stated. */
const size = (one: StatedContribution): number => one.relative ?? one.absolute!;

function combined(parts: readonly Part[]): { u: number; nuEff: number; k: number; U: number } {
  return combine(parts.map(({ u, nu }) => (Number.isFinite(nu) ? { u, nu } : { u })));
}

/** The ends of a profile interval with the other parts of the budget combined in, arm by arm. */
function widened(value: number, [lo, hi]: [number, number], others: readonly Part[]): [number, number] {
  if (!others.some((part) => part.u > 0)) return [lo, hi];
  const rest = combined(others).U;
  if (lo <= 0 || value <= 0) return [value - Math.hypot(value - lo, rest), value + Math.hypot(hi - value, rest)];
  const relative = rest / value;
  return [
    value * Math.exp(-Math.hypot(Math.log(value / lo), relative)),
    value * Math.exp(Math.hypot(Math.log(hi / value), relative)),
  ];
}

function ownLine(fit: Fit, value: number, u: number): Omit<BudgetLine, "share"> {
  return {
    code: "scatter-and-counting",
    value,
    u,
    nu: Number.isFinite(fit.nu) ? fit.nu : null,
    type: "A",
    source: fit.model,
  };
}

function otherPart(one: StatedContribution, value: number): Part {
  const u = one.relative === undefined ? one.absolute! : one.relative * Math.abs(value);
  const nu = one.nu ?? Infinity;
  const shared = one.shared === undefined ? {} : { shared: one.shared };
  const line = { code: one.code, value: null, u, nu: one.nu ?? null, type: one.type, source: one.source, ...shared };
  return { u, nu, line };
}

function checked(one: StatedContribution): StatedContribution {
  const given = [one.relative, one.absolute].filter((number) => number !== undefined);
  const number = given[0] ?? Number.NaN;
  if (given.length !== 1 || !Number.isFinite(number) || number < 0 || (one.nu !== undefined && !(one.nu > 0)))
    throw new DomainError("contribution", "a contribution needs one u, relative or absolute, zero or more", one);
  return one;
}
