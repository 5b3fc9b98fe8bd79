import { DomainError } from "../quantity/domain-error.ts";
import type { BudgetLine } from "../reconcile/types.ts";
import { combine } from "../statistics/combine.ts";
import { tUpperTail } from "../statistics/distributions.ts";

/** A result as far as comparing asks: its value and what its uncertainty is made of, as `reconcile` states them. */
export type ComparedResult = { value: number; budget: readonly Pick<BudgetLine, "code" | "u" | "nu">[] };

export type ComparedResults = {
  /** a − b. */
  difference: number;
  /** Standard uncertainty of the difference, and its degrees of freedom (null: infinite). */
  u: number;
  nuEff: number | null;
  /** Null where nothing is left that could make them differ by chance. */
  zeta: number | null;
  en: number | null;
  /** Probability of a difference this large or larger if both saw the same content. */
  p: number | null;
  /** "agree": |E_n| at most 1. "cannot-say": no uncertainty is left to hold a difference against. */
  verdict: "agree" | "differ" | "cannot-say";
  /** Codes of the budget left out because both results share them. */
  leftOut: string[];
};

/**
 * Whether two results of the same thing agree, each with its own uncertainty.
 *
 * zeta = (a − b)/√(u_a² + u_b²); E_n = (a − b)/√(U_a² + U_b²), each U = k·u with its own degrees of freedom at 95 %; p two-sided
 * by Student's t with the effective degrees of freedom of the difference.
 *
 * `shared` names the budget codes that both results have from the same source, such as the calibration component of one session. It makes
 * both wrong in the same direction, cancels in the difference, and is left out of both (method, step 6); it is kept where only one result has
 * it. Exactly, |u_a − u_b| of it remains: nothing where the values are alike, which is where the question is close.
 *
 * Values and u in one unit; two results of one kind, part and element. Non-detects have no value to compare.
 *
 * Source: ISO 13528:2015 9.6 and 9.7 (zeta, E_n); JCGM 100:2008 5.2.2 (correlation) and G.4.1.
 *
 * @throws DomainError `not-finite`, `negative`, `not-positive` (degrees of freedom)
 * @example compareResults({ value: 412, budget: [{ code: "scatter-and-counting", u: 6, nu: null }, { code: "calibration", u: 20, nu: null }] },
 *   { value: 400, budget: [{ code: "scatter-and-counting", u: 8, nu: null }, { code: "calibration", u: 20, nu: null }] }, { shared: ["calibration"] })
 * // { difference: 12, u: 10, nuEff: null, zeta: 1.2, en: 0.612256, p: 0.230139, verdict: "agree", leftOut: ["calibration"] }
 */
export function compareResults(
  a: ComparedResult,
  b: ComparedResult,
  { shared = [] }: { shared?: readonly string[] } = {},
): ComparedResults {
  for (const { value } of [a, b])
    if (!Number.isFinite(value)) throw new DomainError("not-finite", "a value is not a finite number", value);
  const has = (one: ComparedResult, code: string) => one.budget.some((line) => line.code === code);
  const leftOut = [...new Set(shared)].filter((code) => has(a, code) && has(b, code));
  const kept = (one: ComparedResult) =>
    one.budget.filter((line) => !leftOut.includes(line.code)).map(({ u, nu }) => ({ u, nu }));
  const [ofA, ofB] = [kept(a), kept(b)];
  const difference = a.value - b.value;
  const sum = combined([...ofA, ...ofB]);
  if (sum.u === 0)
    return { difference, u: 0, nuEff: null, zeta: null, en: null, p: null, verdict: "cannot-say", leftOut };
  const en = difference / Math.hypot(combined(ofA).U, combined(ofB).U);
  return {
    difference,
    u: sum.u,
    nuEff: Number.isFinite(sum.nuEff) ? sum.nuEff : null,
    zeta: difference / sum.u,
    en,
    p: 2 * tUpperTail(Math.abs(difference) / sum.u, sum.nuEff),
    verdict: Math.abs(en) <= 1 ? "agree" : "differ",
    leftOut,
  };
}

/** A budget of which nothing is left has no uncertainty. */
const combined = (parts: { u: number; nu: number | null }[]) => combine(parts.length > 0 ? parts : [{ u: 0 }]);
