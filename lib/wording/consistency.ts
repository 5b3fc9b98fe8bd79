import type { CheckChart } from "../consistency/check-chart.ts";
import type { CheckSeries } from "../consistency/check-series.ts";
import type { ComparedResults } from "../consistency/compare-results.ts";
import type { Factor } from "../consistency/located-reading.ts";
import type { LevelReadings, WithoutOne } from "../consistency/part-consistency.ts";
import type { Mark, SessionPrecision } from "../consistency/session-precision.ts";
import type { VarianceComponents } from "../consistency/variance-components.ts";
import { amountText, counted, intervalText, listed, plainDate, significant } from "./formats.ts";
import { pText } from "./repeats.ts";
import { differenceText } from "./retests.ts";

/** What readings can differ by, in the words of the page. */
export const factorWords: Record<Factor | "repeat", string> = {
  specimen: "object",
  instrument: "analyser",
  operator: "operator",
  session: "session",
  spot: "spot",
  repeat: "one reading and the next",
};

export const consistencyPage = {
  title: "Consistency",
  lead: "Whether readings, sessions, analysers and people say the same. Everything here is for a person to look at: nothing is left out of a result by it.",
  belowDetection:
    "Some readings are below detection, so scatter cannot be taken apart here: an analysis of variance has no place for “less than”. Repeats are judged on the item’s own page.",
  noSessions:
    "No session with a check standard lies within three weeks of these readings, so nothing shows how the analyser was.",
  tooMany: "There are too many readings here to leave each out in turn on a page.",
} as const;

const cannotTell: Record<Exclude<VarianceComponents["status"], "ok">, (factor: string) => string> = {
  "no-readings": () => "no readings",
  "level-unknown": (factor) => `not every reading says its ${factor}`,
  "one-level": (factor) => `only one ${factor} was read: a second one is lacking`,
  "no-repeats": (factor) => `no ${factor} was read twice: a second reading of the same is lacking`,
  "no-nesting": (factor) => `no ${factor} lies inside another`,
};

/** One line of the table of variance components: what it contributes, or what is lacking to say so. */
export function componentText(factor: Factor, result: VarianceComponents, unit: string): string {
  if (result.status !== "ok") return `Cannot be said: ${cannotTell[result.status](factorWords[factor])}.`;
  const [own, repeat] = [result.components[0]!, result.components[1]!]; // the factor's own, and that of repeats
  const share = own.share === null ? "" : `, ${significant(own.share * 100, 2)} % of the scatter`;
  return `A standard deviation of ${amountText(own.sd, unit)} from ${factorWords[factor]} to ${factorWords[factor]}${share}; ${amountText(repeat.sd, unit)} from one reading to the next.`;
}

export const inseparableText = (factors: readonly Factor[]): string =>
  `${listed(factors.map((factor) => factorWords[factor]))} changed together in these readings, so what is said of one is that of all of them.`;

const precisionLacks: Record<Exclude<SessionPrecision["status"], "ok">, string> = {
  "session-unknown": "Not every reading says its session, so sessions cannot be held beside each other.",
  "one-session":
    "All readings are of one session. Repeatability and reproducibility need a second session, best with another analyser or operator.",
  "no-repeats":
    "No session holds two readings, so there is nothing to tell its own scatter from that between sessions.",
};

/** Repeatability and reproducibility in sentences, or what is lacking for them. */
export function precisionSentences(precision: SessionPrecision, unit: string): string[] {
  if (precision.status !== "ok") return [precisionLacks[precision.status]];
  const { precision: p, limits, cochran, grubbs } = precision;
  return [
    `Repeatability: s_r ${amountText(p.sr, unit)}. Two readings of one session lie farther apart than ${amountText(limits.repeatability, unit)} once in twenty times.`,
    `Between sessions: s_L ${amountText(p.sL, unit)}; reproducibility over sessions: s_R ${amountText(p.sR, unit)}. Two readings of different sessions lie farther apart than ${amountText(limits.reproducibility, unit)} once in twenty times.`,
    ...(cochran ? extreme("Widest scatter", cochran.session, "Cochran’s C", cochran.c, cochran) : []),
    ...(grubbs ? extreme("Mean farthest off", grubbs.session, "Grubbs’ G", grubbs.g, grubbs) : []),
  ];
}

function extreme(
  what: string,
  session: string | null,
  name: string,
  statistic: number | null,
  { critical, p }: { critical: number; p: number | null },
): string[] {
  if (session === null || statistic === null || p === null) return [];
  return [
    `${what}: ${session} (${name} ${significant(statistic, 3)}, critical ${significant(critical, 3)}, ${pText(p)}).`,
  ];
}

const marks: Record<Mark, string> = {
  none: "",
  straggler: ", beyond the 5 % value",
  outlier: ", beyond the 1 % value",
};

/** A value of h or k with its mark: "1.42, beyond the 5 % value". */
export const markedText = (statistic: number | null, mark: Mark | null): string =>
  statistic === null
    ? "–"
    : `${significant(statistic, 3).replace("-", "−")}${mark === null ? " (no test)" : marks[mark]}`;

/** "4 of 5 detected". */
export const detectedText = ({ detected, all }: LevelReadings): string =>
  detected === all ? counted(all, "reading") : `${detected} of ${all} detected`;

export const levelName = (level: string | null): string => level ?? "not known";

/** What a result would be without one reading: "398 mg/kg (371 to 425 mg/kg), −14 mg/kg". */
export function withoutText({ state, value, interval, change }: WithoutOne, unit: string): string {
  if (value === null) return state === "not-detected" ? "not detected" : "no single value";
  const range = interval ? ` (${intervalText([significant(interval[0]), significant(interval[1])], unit)})` : "";
  return `${amountText(value, unit)}${range}${change === null ? "" : `, ${differenceText(change, unit)}`}`;
}

/** "zeta 1.2, E_n 0.61: they agree". */
export function comparedText(compared: ComparedResults | null): string {
  if (compared === null || compared.zeta === null || compared.en === null) return "cannot be said";
  const verdict = compared.verdict === "agree" ? "they agree" : "they differ";
  return `zeta ${significant(compared.zeta, 2)}, E_n ${significant(compared.en, 2)}: ${verdict}`.replaceAll("-", "−");
}

/** "Glass tile, Pb, Shelf analyser A, glass and glaze". */
export const seriesName = ({ standard, element, instrument, mode }: CheckSeries): string =>
  [standard, element, instrument, mode ?? "no mode named"].join(", ");

const chartLacks: Record<Exclude<CheckChart["status"], "ok">, string> = {
  "too-few": "Fewer than two readings with a value: a chart needs a second one.",
  "no-spread": "All readings are alike to the last digit, so there is no spread to draw limits from.",
};

/** What the charts of one series say, in sentences. */
export function seriesSentences({ chart, drift }: CheckSeries): string[] {
  const lines: string[] = [];
  if (chart.status !== "ok") lines.push(chartLacks[chart.status]);
  else {
    const { signals } = chart;
    const spoke = [
      signals.individuals.length > 0 ? `${counted(signals.individuals.length, "reading")} beyond the limits` : "",
      signals.ewma.length > 0 ? "the moving average (EWMA) beyond its own" : "",
      signals.cusum.length > 0 ? "the running sum (CUSUM) beyond its own" : "",
    ].filter((text) => text !== "");
    lines.push(
      spoke.length === 0
        ? `No chart speaks up. Mean recovery ${significant(chart.center, 3)}.`
        : `The charts speak up: ${listed(spoke)}. Mean recovery ${significant(chart.center, 3)}.`,
    );
  }
  if (drift.status === "ok")
    lines.push(
      drift.drifts
        ? `The recovery changes by ${significant(drift.change * 100, 2)} % from the first reading to the last, more than chance explains (${pText(drift.p)}).`
        : `No slope over time that chance does not explain (${pText(drift.p)}).`,
    );
  else lines.push("Fewer than three readings at different times: whether it drifts cannot be said.");
  return lines;
}

/** The heading of a series' chart, saying what is to be seen. */
export const seriesTitle = (series: CheckSeries): string =>
  `${seriesName(series)}: ${series.speaksUp === null ? "too few to say" : series.speaksUp ? "look at it" : "steady"}`;

/** A point of the chart in words. */
export const checkPointWords = (point: { takenAt: string; recovery: number }, signal: boolean): string =>
  `${plainDate(point.takenAt)}: read over certified ${significant(point.recovery, 3)}${signal ? ", a chart speaks up here" : ""}`;

export const registryConsistency = {
  title: "Consistency of the registry",
  lead: "Which analyser, operator or mode drifts, by the check standards of all sessions, and how published values fared when somebody else measured again.",
  noChecks: "No session has a check standard yet. Without one nothing shows whether an analyser drifts.",
  noRetests: "No published value has been measured again yet.",
} as const;

/** "1 of 6 series speaks up". */
export function driftText({ series, speakUp, tooFew }: { series: number; speakUp: number; tooFew: number }): string {
  const said = series - tooFew;
  if (said === 0) return "cannot be said yet: too few checks";
  return `${speakUp} of ${said} series ${speakUp === 1 ? "speaks" : "speak"} up${tooFew > 0 ? `; ${tooFew} too short to say` : ""}`;
}

/** "2 agree, 1 differs, 1 cannot be said". */
export function retestTally(verdicts: readonly ("agree" | "differ" | "cannot-say")[]): string {
  const n = (verdict: string) => verdicts.filter((each) => each === verdict).length;
  return [
    n("agree") > 0 ? `${n("agree")} ${n("agree") === 1 ? "agrees" : "agree"}` : "",
    n("differ") > 0 ? `${n("differ")} ${n("differ") === 1 ? "differs" : "differ"}` : "",
    n("cannot-say") > 0 ? `of ${n("cannot-say")} it cannot be said` : "",
  ]
    .filter((text) => text !== "")
    .join(", ");
}
