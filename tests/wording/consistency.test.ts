import { describe, expect, it } from "vitest";
import { checkChart } from "@/lib/consistency/check-chart.ts";
import type { CheckSeries } from "@/lib/consistency/check-series.ts";
import type { LocatedReading } from "@/lib/consistency/located-reading.ts";
import { sessionDrift } from "@/lib/consistency/session-drift.ts";
import { sessionPrecision } from "@/lib/consistency/session-precision.ts";
import { varianceComponents } from "@/lib/consistency/variance-components.ts";
import {
  checkPointWords,
  comparedText,
  componentText,
  detectedText,
  driftText,
  levelName,
  markedText,
  precisionSentences,
  retestTally,
  seriesSentences,
  seriesTitle,
  withoutText,
} from "@/lib/wording/consistency.ts";

// Readings are invented.
const located = (rows: [string | null, number][]): LocatedReading[] =>
  rows.map(([session, value], i) => ({
    ...{ id: String(i), value, session, spot: null, specimen: null, instrument: null, operator: null },
  }));
const twoDays: [string, number][] = [
  ["mon", 10],
  ["mon", 12],
  ["tue", 15],
  ["tue", 17],
];

describe("scatter taken apart", () => {
  it("says both deviations (means 11 and 16, s_r √2, s_L √(12.5 − 1) = 3.39), or what is lacking", () => {
    const text = (rows: [string | null, number][]) =>
      componentText("session", varianceComponents(located(rows), { outer: "session" }), "mg/kg");
    expect(text(twoDays)).toMatch(
      /^A standard deviation of 3\.39 mg\/kg from session to session, 85 % of the scatter; 1\.41 mg\/kg from one/,
    );
    expect(text([])).toBe("Cannot be said: no readings.");
    expect(
      text([
        ["mon", 1],
        [null, 2],
      ]),
    ).toContain("not every reading says its session");
    expect(
      text([
        ["mon", 1],
        ["mon", 2],
      ]),
    ).toContain("only one session was read");
    expect(
      text([
        ["mon", 1],
        ["tue", 2],
      ]),
    ).toContain("no session was read twice");
  });
  it("repeatability and reproducibility in sentences, or what is lacking", () => {
    const said = (rows: [string | null, number][]) => precisionSentences(sessionPrecision(located(rows)), "mg/kg");
    expect(said(twoDays)[0]).toMatch(/^Repeatability: s_r 1\.41 mg\/kg\. .* than 3\.96 mg\/kg once/);
    expect(said(twoDays)[1]).toMatch(/s_L 3\.39 mg\/kg; .* s_R 3\.67 mg\/kg/);
    expect(said([["mon", 1]])).toEqual([expect.stringMatching(/^All readings are of one session/)]);
    expect(said([[null, 1]])).toEqual([expect.stringMatching(/^Not every reading says its session/)]);
    expect(
      said([
        ["mon", 1],
        ["tue", 2],
      ]),
    ).toEqual([expect.stringMatching(/^No session holds two readings/)]);
    const third = said([...twoDays, ["wed", 40], ["wed", 44]]);
    expect(third[2]).toMatch(/^Widest scatter: wed \(Cochran’s C 0\.667, critical/);
    expect(third[3]).toMatch(/^Mean farthest off: wed \(Grubbs’ G/);
  });
  it("marks and counts", () => {
    expect(markedText(null, null)).toBe("–");
    expect(markedText(-1.42, "straggler")).toBe("−1.42, beyond the 5 % value");
    expect(markedText(1.42, null)).toBe("1.42 (no test)");
    expect(detectedText({ detected: 4, all: 5 } as never)).toBe("4 of 5 detected");
    expect(detectedText({ detected: 5, all: 5 } as never)).toBe("5 readings");
    expect([levelName("mon"), levelName(null)]).toEqual(["mon", "not known"]);
  });
});

describe("what a result would be", () => {
  const one = {
    id: "1",
    state: "quantified" as const,
    value: 398,
    interval: [371, 425] as [number, number],
    change: -14,
  };
  it("without one reading", () => {
    expect(withoutText(one, "mg/kg")).toMatch(/^398 mg\/kg \(371 .*425.*\), −14 mg\/kg$/);
    expect(withoutText({ ...one, interval: null, change: null }, "mg/kg")).toBe("398 mg/kg");
    expect(withoutText({ ...one, value: null, state: "not-detected" }, "mg/kg")).toBe("not detected");
    expect(withoutText({ ...one, value: null, state: "range-only" }, "mg/kg")).toBe("no single value");
  });
  it("beside another", () => {
    const compared = {
      difference: 1,
      u: 1,
      nuEff: null,
      zeta: -1.2,
      en: -0.61,
      p: 0.2,
      verdict: "agree" as const,
      leftOut: [],
    };
    expect(comparedText(compared)).toBe("zeta −1.2, E_n −0.61: they agree");
    expect(comparedText({ ...compared, verdict: "differ" })).toMatch(/they differ$/);
    for (const none of [null, { ...compared, zeta: null }, { ...compared, en: null }])
      expect(comparedText(none)).toBe("cannot be said");
  });
  it("and tallies", () => {
    expect(retestTally(["agree", "agree", "differ", "cannot-say"])).toBe("2 agree, 1 differs, of 1 it cannot be said");
    expect(retestTally(["agree", "differ", "differ"])).toBe("1 agrees, 2 differ");
    expect(retestTally([])).toBe("");
    expect(driftText({ series: 2, speakUp: 0, tooFew: 2 })).toBe("cannot be said yet: too few checks");
    expect(driftText({ series: 6, speakUp: 1, tooFew: 0 })).toBe("1 of 6 series speaks up");
    expect(driftText({ series: 6, speakUp: 2, tooFew: 1 })).toBe("2 of 5 series speak up; 1 too short to say");
  });
});

describe("a series of checks", () => {
  const series = (values: number[], more: Partial<CheckSeries> = {}): CheckSeries => {
    const checks = values.map((value, i) => ({
      ...{
        id: String(i),
        takenAt: `2026-03-14T${String(9 + i).padStart(2, "0")}:00:00Z`,
        value,
        u: null,
        detectionLimit: null,
      },
      ...{ session: "s", operator: null },
    }));
    return {
      ...{ instrument: "A", mode: null, element: "Pb", standard: "Tile", unit: "mg/kg", certified: 100, checks },
      chart: checkChart(checks, { certified: 100 }),
      drift: sessionDrift(checks.map(({ takenAt, value, u }) => ({ takenAt, value: value / 100, u }))),
      ...{ speaksUp: null, ...more },
    };
  };
  it("too short or too like for charts says so", () => {
    expect(seriesSentences(series([100]))).toEqual([
      "Fewer than two readings with a value: a chart needs a second one.",
      expect.stringMatching(/^Fewer than three readings/),
    ]);
    expect(seriesSentences(series([100, 100]))[0]).toMatch(/^All readings are alike/);
  });
  it("steady, and one that climbs", () => {
    const [chart, drift] = seriesSentences(series([100, 101, 99, 101, 99, 100]));
    expect(chart).toBe("No chart speaks up. Mean recovery 1.");
    expect(drift).toMatch(/^No slope over time/);
    const climbing = seriesSentences(series([90, 91, 92.1, 93, 94, 95.1, 96, 97, 98, 99, 100.1, 101]));
    expect(climbing[0]).toMatch(
      /^The charts speak up: \d+ readings beyond the limits, the moving average \(EWMA\) beyond its own and the running sum/,
    );
    expect(climbing[1]).toMatch(/^The recovery changes by 11 % from the first/);
  });
  it("and its heading and points in words", () => {
    const titles = [null, true, false].map((speaksUp) => seriesTitle(series([100, 101], { speaksUp })));
    expect(titles.map((title) => title.split(": ")[1])).toEqual(["too few to say", "look at it", "steady"]);
    expect(titles[0]).toContain("no mode named");
    expect(seriesTitle(series([100, 101], { mode: "glaze" }))).toContain("A, glaze:");
    const point = { takenAt: "2026-03-14T09:00:00Z", recovery: 1.014 };
    expect(checkPointWords(point, false)).toBe("14 March 2026: read over certified 1.01");
    expect(checkPointWords(point, true)).toMatch(/1\.01, a chart speaks up here$/);
  });
});
