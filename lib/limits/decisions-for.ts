import { applicability, type Standing } from "./applicability.ts";
import { type Decidable, decide, type Held, heldOf, type Judgement } from "./decide.ts";
import { decideSum } from "./decide-sum.ts";
import { isoDay } from "./iso-day.ts";
import type { Decision, Limit, Subject } from "./types.ts";

export type DecisionDays = { testDay: string; today: string };

/**
 * The decisions of each result of one part, in the order of the results: every limit a page shows for it, judged for the
 * test's day and for today.
 *
 * A limit that stands the same way on both days comes once, as "both", with the test's day; otherwise it comes for the day
 * on which it stands. A limit on a sum is judged from all results of the same quantity kind and comes with each of them.
 * Where the test's day is today there is one set, "both". Order: the test's day's limits first, then those of today only.
 *
 * Source: method step 9; two dates for each judgement (registry policy).
 *
 * Examples with their answers: tests/limits/decisions-for.test.ts.
 */
export const decisionsByResult = (
  subject: Subject,
  results: readonly Decidable[],
  { testDay, today }: DecisionDays,
  risk = 0.05,
): Decision[][] => {
  isoDay(testDay);
  isoDay(today);
  return results.map((result) => {
    const { quantity, element } = result;
    const then = applicability(subject, quantity, element, testDay);
    const now = applicability(subject, quantity, element, today);
    const same = (a: Standing, b: Standing) => a.limit.id === b.limit.id && a.applies === b.applies && a.why === b.why;
    const judge = (standing: Standing, day: string, which: Decision["which"]) =>
      decision(standing, result, results, risk, day, which);
    return [
      ...then.map((s) => judge(s, testDay, now.some((other) => same(s, other)) ? "both" : "test-day")),
      ...now.filter((s) => !then.some((other) => same(s, other))).map((s) => judge(s, today, "today")),
    ];
  });
};

/**
 * All decisions of a part in one list, each naming its element; a limit on a sum comes once, named by its substances.
 *
 * Examples with their answers: tests/limits/decisions-for.test.ts.
 */
export const decisionsFor = (
  subject: Subject,
  results: readonly Decidable[],
  days: DecisionDays,
  risk = 0.05,
): Decision[] => {
  const seen = new Set<string>();
  return decisionsByResult(subject, results, days, risk)
    .flat()
    .filter((one) => {
      if (!one.element?.includes("+")) return true;
      const key = `${one.limitId} ${one.day} ${one.which} ${one.applies}`;
      return !seen.has(key) && seen.add(key);
    });
};

const decision = (
  { limit, applies, why }: Standing,
  result: Decidable,
  results: readonly Decidable[],
  risk: number,
  day: string,
  which: Decision["which"],
): Decision => {
  const judgement: Judgement =
    applies === "other-quantity"
      ? { verdict: "cannot-say", probabilityAbove: null }
      : limit.sum
        ? decideSum(heldByElement(limit, result, results), limit, risk)
        : decide(heldOf(result), limit, risk);
  return {
    limitId: limit.id,
    title: limit.title,
    jurisdiction: limit.jurisdiction,
    value: limit.value,
    unit: limit.unit,
    failsAt: limit.failsAt,
    applies,
    why: limit.rule === null ? why : `${why} The rule: ${limit.rule}.`,
    verdict: judgement.verdict,
    probabilityAbove: judgement.probabilityAbove,
    day,
    which,
    checked: limit.checked,
    element: limit.sum ? limit.substances.join("+") : result.element,
  };
};

/** The results a sum is made of: those of the same quantity kind, one for each element; the result in hand comes first. */
const heldByElement = (limit: Limit, result: Decidable, results: readonly Decidable[]): Record<string, Held> => {
  const held: Record<string, Held> = {};
  for (const one of [result, ...results])
    if (one.quantity === limit.quantity && !(one.element in held)) held[one.element] = heldOf(one);
  return held;
};
