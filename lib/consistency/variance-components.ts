import { nestedAnova } from "../statistics/nested-anova.ts";
import { oneWayAnova } from "../statistics/one-way-anova.ts";
import { grouped } from "./grouped.ts";
import type { Factor, LocatedReading } from "./located-reading.ts";

/** One source of scatter. Variances in the squared unit of the readings. */
export type Component = {
  source: Factor | "repeat";
  /** From the analysis of variance: cut at 0, and as it came out. */
  anova: number;
  anovaRaw: number;
  /** Restricted maximum likelihood, all variances held at 0 or more. */
  reml: number;
  /** √reml, in the unit of the readings, and its share of the whole variance (0 to 1; null where nothing varies). */
  sd: number;
  share: number | null;
};

export type VarianceComponents =
  | { status: "ok"; components: Component[]; mean: number; seMean: number }
  /**
   * Why nothing can be said: "no-readings"; "level-unknown": a reading does not say which level it belongs to; "one-level": all
   * readings share one; "no-repeats": no level (no inner level) was read twice; "no-nesting": no outer level has two inner ones.
   */
  | {
      status: "no-readings" | "level-unknown" | "one-level" | "no-repeats" | "no-nesting";
      factor: Factor;
      components: null;
      mean: null;
      seMean: null;
    };

/**
 * How much of the scatter of readings comes from each level of a nesting: specimens and their spots, sessions and the spots read in them,
 * instruments and their sessions.
 *
 * With `outer` alone: y = μ + outer + repeat. With `inner` as well: y = μ + outer + inner within outer + repeat; the same inner label under
 * two outer levels counts as two. Both by analysis of variance (a raw variance can come out negative; cut at 0) and by restricted maximum
 * likelihood, unequal numbers welcome. mean and seMean are those of REML: the mean of a new whole, not of these readings. Nothing is
 * said, with the reason, where the readings cannot tell; none is left out to make it possible.
 *
 * readings: detected values only, one element, kind and mode, one unit. A part with readings below detection has no such analysis.
 *
 * Source: Searle, Casella and McCulloch, Variance Components (1992), chapters 3 and 6; ISO 5725-3:1994 for the design of such readings.
 *
 * @throws DomainError `not-finite`
 * @example varianceComponents([["A", 10], ["A", 12], ["B", 15], ["B", 17]].map(([spot, value], i) =>
 *   ({ id: String(i), value, spot, specimen: null, instrument: null, operator: null, session: null })), { outer: "spot" })
 * // { status: "ok", components: [{ source: "spot", anova: 11.5, reml: 11.5, share: 0.8519 }, { source: "repeat", anova: 2, reml: 2 }], mean: 13.5, seMean: 2.5 }
 */
export function varianceComponents(
  readings: readonly LocatedReading[],
  { outer, inner }: { outer: Factor; inner?: Factor },
): VarianceComponents {
  const refusal = cannotTell(readings, outer, inner);
  if (refusal) return { ...refusal, components: null, mean: null, seMean: null };
  if (inner === undefined) {
    const groups = grouped(readings, (reading) => reading[outer]);
    const r = oneWayAnova([...groups.values()].map((group) => group.map((reading) => reading.value)));
    return summed(
      [
        { source: outer, anova: r.between, anovaRaw: r.betweenRaw, reml: r.reml.between },
        { source: "repeat", anova: r.within, anovaRaw: r.within, reml: r.reml.within },
      ],
      r.reml,
    );
  }
  const r = nestedAnova(readings.map((one) => ({ a: one[outer] as string, b: one[inner] as string, y: one.value })));
  return summed(
    [
      { source: outer, anova: r.a, anovaRaw: r.aRaw, reml: r.reml.a },
      { source: inner, anova: r.b, anovaRaw: r.bRaw, reml: r.reml.b },
      { source: "repeat", anova: r.error, anovaRaw: r.error, reml: r.reml.error },
    ],
    r.reml,
  );
}

function summed(
  parts: Omit<Component, "sd" | "share">[],
  { mean, seMean }: { mean: number; seMean: number },
): VarianceComponents {
  const whole = parts.reduce((sum, part) => sum + part.reml, 0);
  const components = parts.map((part) => ({
    ...part,
    sd: Math.sqrt(part.reml),
    share: whole > 0 ? part.reml / whole : null,
  }));
  return { status: "ok", components, mean, seMean };
}

type Refusal = Pick<Exclude<VarianceComponents, { status: "ok" }>, "status" | "factor">;

/** Why the readings cannot tell these levels apart; null where they can. */
function cannotTell(readings: readonly LocatedReading[], outer: Factor, inner: Factor | undefined): Refusal | null {
  if (readings.length === 0) return { status: "no-readings", factor: outer };
  for (const factor of inner === undefined ? [outer] : [outer, inner])
    if (readings.some((reading) => reading[factor] === null)) return { status: "level-unknown", factor };
  const outers = new Set(readings.map((reading) => reading[outer])).size;
  if (outers < 2) return { status: "one-level", factor: outer };
  const cells = new Set(readings.map((reading) => JSON.stringify([reading[outer], inner ? reading[inner] : null])))
    .size;
  if (inner !== undefined && cells === outers) return { status: "no-nesting", factor: inner };
  if (cells === readings.length) return { status: "no-repeats", factor: inner ?? outer };
  return null;
}
