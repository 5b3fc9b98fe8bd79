import { type Cochran, cochran } from "../statistics/cochran.ts";
import { type Grubbs, grubbs } from "../statistics/grubbs.ts";
import { mandelHCritical } from "../statistics/mandel-h-critical.ts";
import { mandelKCritical } from "../statistics/mandel-k-critical.ts";
import { moments } from "../statistics/moments.ts";
import { type Repeatability, repeatability } from "../statistics/repeatability.ts";
import { grouped } from "./grouped.ts";
import type { LocatedReading } from "./located-reading.ts";

/** Beyond the 5 % critical value, beyond the 1 % one, or neither; null where there is no test. */
export type Mark = "none" | "straggler" | "outlier";

export type SessionConsistency = {
  session: string;
  readings: number;
  mean: number;
  /** Null with one reading. */
  sd: number | null;
  h: number | null;
  hMark: Mark | null;
  k: number | null;
  kMark: Mark | null;
};

export type SessionPrecision =
  | {
      status: "ok";
      precision: Omit<Repeatability, "h" | "k">;
      /** 2.8·s_r and 2.8·s_R: two single readings of one session, of two sessions, lie farther apart once in twenty times. */
      limits: { repeatability: number; reproducibility: number };
      sessions: SessionConsistency[];
      /** Cochran's test on the sessions' variances; null where their numbers of readings differ. */
      cochran: (Cochran & { session: string | null }) | null;
      /** Grubbs' test on the sessions' means, either end; null with fewer than three sessions. */
      grubbs: (Grubbs & { session: string | null }) | null;
    }
  | { status: "session-unknown" | "one-session" | "no-repeats"; precision: null; sessions: null };

/**
 * Repeatability within sessions and reproducibility over them, of one part and element, and which session stands apart: Mandel's
 * h (its mean) and k (its spread) with their critical values, Cochran's and Grubbs' tests.
 *
 * s_r, s_L, s_R, h and k as `repeatability`, a session in the place of a laboratory. Marks at 5 % ("straggler") and 1 % ("outlier") by
 * `mandelHCritical` and `mandelKCritical`; h has no test with two sessions. These are candidates for a person to look at: nothing is
 * left out. Sessions with one instrument and operator give an intermediate precision rather than reproducibility in the standard's full sense.
 *
 * readings: detected values only, one element, kind and mode, one unit.
 *
 * Source: ISO 5725-2:1994 7.3 and 7.4; ISO 5725-3:1994 (intermediate precision); ISO 5725-6:1994 4.1 for the 2.8.
 *
 * @throws DomainError `not-finite`
 * @example sessionPrecision([["mon", 10], ["mon", 12], ["tue", 15], ["tue", 17]].map(([session, value], i) =>
 *   ({ id: String(i), value, session, spot: null, specimen: null, instrument: null, operator: null }))).precision
 * // { sr: 1.41421, sL: 3.39116, sR: 3.67423, generalMean: 13.5 }
 */
export function sessionPrecision(readings: readonly LocatedReading[]): SessionPrecision {
  const nothing = { precision: null, sessions: null };
  if (readings.some((reading) => reading.session === null)) return { status: "session-unknown", ...nothing };
  const groups = [...grouped(readings, (reading) => reading.session as string)].map(([session, members]) => ({
    session,
    ...moments(members.map((reading) => reading.value)),
  }));
  if (groups.length < 2) return { status: "one-session", ...nothing };
  if (groups.length === readings.length) return { status: "no-repeats", ...nothing };
  const { h, k, ...precision } = repeatability(
    readings.map((reading) => ({ lab: reading.session as string, y: reading.value })),
  );
  const freedom = readings.length - groups.length;
  const sessions = groups.map(({ session, n, mean, sd }, i) => {
    const own = n - 1;
    return {
      session,
      readings: n,
      mean,
      sd: n > 1 ? sd : null,
      h: h[i] ?? null,
      hMark: groups.length < 3 ? null : marked(h[i] ?? null, (alpha) => mandelHCritical(groups.length, { alpha })),
      k: k[i] ?? null,
      kMark:
        own === 0 || own === freedom
          ? null
          : marked(k[i] ?? null, (alpha) => mandelKCritical(own, freedom - own, { alpha })),
    };
  });
  return {
    status: "ok",
    precision,
    limits: { repeatability: 2.8 * precision.sr, reproducibility: 2.8 * precision.sR },
    sessions,
    cochran: cochranOf(groups),
    grubbs: grubbsOf(groups),
  };
}

function marked(statistic: number | null, critical: (alpha: number) => number): Mark | null {
  if (statistic === null) return null;
  const size = Math.abs(statistic);
  return size > critical(0.01) ? "outlier" : size > critical(0.05) ? "straggler" : "none";
}

type Group = { session: string; n: number; mean: number; sd: number };

const named = <T extends { index: number | null }>(test: T, groups: readonly Group[]) => ({
  ...test,
  session: test.index === null ? null : (groups[test.index] as Group).session,
});

function cochranOf(groups: readonly Group[]) {
  const n = (groups[0] as Group).n;
  if (groups.some((group) => group.n !== n)) return null;
  return named(
    cochran(
      groups.map((group) => group.sd ** 2),
      n,
    ),
    groups,
  );
}

function grubbsOf(groups: readonly Group[]) {
  if (groups.length < 3) return null;
  return named(
    grubbs(
      groups.map((group) => group.mean),
      { sides: 2 },
    ),
    groups,
  );
}
