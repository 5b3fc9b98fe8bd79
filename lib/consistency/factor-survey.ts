import { grouped } from "./grouped.ts";
import { type Factor, factors, type LocatedReading } from "./located-reading.ts";
import { type VarianceComponents, varianceComponents } from "./variance-components.ts";

export type FactorSurvey = {
  /** Each factor on its own: how many levels were read, and what the readings say of it. */
  alone: { factor: Factor; levels: number; result: VarianceComponents }[];
  /**
   * Factors that split the readings the same way, as where each session had an operator of its own: their parts of the scatter cannot be told
   * apart, and what `alone` gives for each is that of all of them together.
   */
  inseparable: Factor[][];
};

/**
 * What the readings of one part can say of specimen, instrument, operator, session and spot, each on its own (one-way analysis,
 * `varianceComponents`), and which of these cannot be told apart from these readings.
 *
 * A component found on its own also holds what changed along with it: with `outer` and `inner` in `varianceComponents` two levels come apart.
 * `levels` counts the known ones. Readings as `varianceComponents` takes them.
 *
 * Source: ISO 5725-3:1994 (factors that change together are confounded).
 *
 * @throws DomainError `not-finite`
 * @example surveyFactors([["A", 1], ["A", 2], ["B", 5], ["B", 6]].map(([at, value], i) =>
 *   ({ id: String(i), value, spot: null, specimen: null, instrument: "x", operator: at, session: at }))).inseparable // [["operator", "session"]]
 */
export function surveyFactors(readings: readonly LocatedReading[]): FactorSurvey {
  const alone = factors.map((factor) => ({
    factor,
    levels: new Set(readings.flatMap((reading) => (reading[factor] === null ? [] : [reading[factor]]))).size,
    result: varianceComponents(readings, { outer: factor }),
  }));
  const told = alone.filter(({ levels }) => levels > 1).map(({ factor }) => factor);
  const bySplit = grouped(told, (factor) => splitOf(readings, factor));
  return { alone, inseparable: [...bySplit.values()].filter((group) => group.length > 1) };
}

/** The readings' levels numbered in the order they first appear: equal for two factors that split alike. */
function splitOf(readings: readonly LocatedReading[], factor: Factor): string {
  const numbers = new Map<string | null, number>();
  return readings
    .map((reading) => {
      const level = reading[factor];
      const number = numbers.get(level) ?? numbers.size;
      numbers.set(level, number);
      return number;
    })
    .join(" ");
}
