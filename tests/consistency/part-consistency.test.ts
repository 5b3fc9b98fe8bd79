import { describe, expect, it } from "vitest";
import { type CheckedSitting, checkSeries, driftCounts } from "@/lib/consistency/check-series.ts";
import { compareRetest } from "@/lib/consistency/compare-retest.ts";
import { partConsistency, type ShotPlace } from "@/lib/consistency/part-consistency.ts";
import { sessionFitness } from "@/lib/consistency/session-fitness.ts";
import { sha256 } from "@/lib/platform/sha256.ts";
import type { ReconcileInput, ShotInput } from "@/lib/reconcile/types.ts";
import { repeatability } from "@/lib/statistics/repeatability.ts";

// Readings below are invented for the tests.
const shot = (id: string, value: number | null, spot: string): ShotInput => ({
  id,
  spot,
  quantity: "bulk-mass-fraction",
  mode: null,
  unit: "ppm",
  belowDetection: value === null,
  value: value === null ? null : { text: String(value), value, decimals: 0 },
  error: value === null ? null : { text: "5", value: 5, decimals: 0 },
  k: 1,
  detectionLimit: value === null ? { text: "10", value: 10, decimals: 0 } : null,
  secondsCounted: 40,
  takenAt: null,
  setAside: null,
});
const inputOf = (shots: ShotInput[]): ReconcileInput => ({
  element: "Pb",
  quantity: "bulk-mass-fraction",
  form: "bulk",
  shots,
  contributions: [{ code: "calibration", relative: 0.05, type: "B", source: "instrument-default" }],
});
const place = (at: Partial<ShotPlace>): ShotPlace => ({
  specimen: "mug 1",
  instrument: "A",
  operator: null,
  session: null,
  spot: null,
  ...at,
});
const shots = [shot("1", 400, "a"), shot("2", 410, "b"), shot("3", 430, "a"), shot("4", 444, "b"), shot("5", 436, "c")];
const places = new Map(
  shots.map((s, i) => [
    s.id,
    place({ spot: s.spot, session: i < 2 ? "Monday" : "Tuesday", operator: i < 2 ? "Otto" : "Tea" }),
  ]),
);
const consistency = partConsistency(inputOf(shots), places, sha256);

describe("partConsistency", () => {
  it("gives each level of each factor its own mean and spread", () => {
    const of = (factor: string) =>
      consistency.levels.filter((l) => l.factor === factor).map((l) => [l.level, l.all, l.mean]);
    // Means by hand.
    expect(of("session")).toEqual([
      ["Monday", 2, 405],
      ["Tuesday", 3, expect.closeTo(436.6667, 3)],
    ]);
    expect(of("spot").map(([level, n]) => [level, n])).toEqual([
      ["a", 2],
      ["b", 2],
      ["c", 1],
    ]);
    expect(of("instrument")).toEqual([["A", 5, 424]]);
    const [monday] = consistency.levels.filter((l) => l.factor === "session");
    expect(monday?.sd).toBeCloseTo(Math.sqrt(50), 10);
  });

  it("says what changes together, and takes repeatability from the same function as everywhere", () => {
    expect(consistency.survey?.inseparable).toEqual([["operator", "session"]]);
    const precision = consistency.precision;
    if (precision?.status !== "ok") throw new Error("not ok");
    const { sr, sR } = repeatability(
      [400, 410, 430, 444, 436].map((y, i) => ({ lab: i < 2 ? "Monday" : "Tuesday", y })),
    );
    expect([precision.precision.sr, precision.precision.sR]).toEqual([sr, sR]);
  });

  it("compares the levels by their own results, without what one analyser shares", () => {
    const [operators, sessions] = consistency.compared;
    expect([operators?.a, operators?.b, operators?.compared?.leftOut]).toEqual(["Otto", "Tea", ["calibration"]]);
    expect(sessions?.compared?.difference).toBe(operators?.compared?.difference);
    expect(operators!.compared!.difference).toBeLessThan(0);
  });

  it("compares nothing where a level has no value, and shares what one session brought", () => {
    const unseen = [shot("1", 400, "a"), shot("2", 410, "b"), shot("3", null, "a"), shot("4", null, "b")];
    const compared = (at: (i: number) => Partial<ShotPlace>, given = shots) => {
      const located = new Map(given.map((s, i) => [s.id, place({ spot: s.spot, ...at(i) })]));
      return partConsistency(inputOf(given), located, sha256).compared.filter((c) => c.factor === "operator");
    };
    const halves = (i: number) => ({ operator: i < 2 ? "Otto" : "Tea" });
    expect(compared(halves, unseen).map((c) => c.compared)).toEqual([null]);
    const [ofOneSession] = compared((i) => ({ ...halves(i), session: "Monday" }));
    const [ofOneAnalyser] = compared((i) => ({ ...halves(i), session: i < 2 ? "Monday" : "Tuesday" }));
    const [ofTwo] = compared((i) => ({ ...halves(i), session: null, instrument: i < 2 ? "A" : "B" }));
    expect([ofOneSession, ofOneAnalyser, ofTwo].map((c) => c!.compared!.leftOut)).toEqual([
      ["calibration"],
      ["calibration"],
      [],
    ]);
  });
  it("a reading left out changes nothing that can be told where no value was stated", () => {
    const unseen = [shot("1", null, "a"), shot("2", null, "b"), shot("3", null, "c")];
    const located = new Map(unseen.map((s) => [s.id, place({ spot: s.spot })]));
    const { withoutEach } = partConsistency(inputOf(unseen), located, sha256);
    expect(withoutEach?.map((one) => [one.state, one.change])).toEqual(Array(3).fill(["not-detected", null]));
  });
  it("leaves each reading out in turn; all but one as if it had never been read", () => {
    const { withoutEach, whole } = consistency;
    expect(withoutEach?.map((one) => one.id)).toEqual(["1", "2", "3", "4", "5"]);
    const alone = partConsistency(inputOf(shots.slice(1)), places, sha256).whole;
    expect(withoutEach?.[0]).toMatchObject({ value: alone.value, interval: alone.interval });
    expect(withoutEach?.[0]?.change).toBe(alone.value! - whole.value!);
  });

  it("says nothing of scatter with readings below detection, or of one session, and throws away none", () => {
    const some = partConsistency(inputOf([...shots, shot("6", null, "d")]), places, sha256);
    expect([some.survey, some.precision]).toEqual([null, null]);
    expect(some.levels.filter((l) => l.factor === "spot").map((l) => [l.level, l.detected, l.all])).toContainEqual([
      null,
      0,
      1,
    ]);
    const one = partConsistency(inputOf(shots.slice(0, 2)), places, sha256);
    expect(one.precision?.status).toBe("one-session");
    expect(one.compared).toEqual([]);
    const aside = { ...shots[4]!, setAside: { reason: "missed" } };
    expect(partConsistency(inputOf([...shots.slice(0, 4), aside]), places, sha256).withoutEach).toHaveLength(4);
  });

  it("leaves nothing out in turn where there are too many", () => {
    const many = Array.from({ length: 81 }, (_, i) => shot(String(i), 400 + (i % 7), String(i % 9)));
    expect(partConsistency(inputOf(many), new Map(), sha256).withoutEach).toBeNull();
  });
});

describe("compareRetest", () => {
  const value = (v: number | null, instrument: string) => ({
    quantity: "bulk-mass-fraction",
    value: v,
    budget: [
      { code: "scatter-and-counting", u: 6, nu: null },
      { code: "calibration", u: 20, nu: null },
    ],
    instruments: [instrument],
  });
  it("leaves the calibration out with one analyser and keeps it with two", () => {
    // By hand: √(6² + 6²), and √(6² + 20² + 6² + 20²).
    expect(compareRetest(value(412, "A"), value(400, "A"))?.u).toBeCloseTo(Math.sqrt(72), 10);
    expect(compareRetest(value(412, "A"), value(400, "B"))?.u).toBeCloseTo(Math.sqrt(872), 10);
    expect(compareRetest(value(412, "A"), value(null, "A"))).toBeNull();
  });
});

describe("checkSeries", () => {
  const standard = {
    id: "t",
    name: "Tile",
    material: "glaze" as const,
    modes: [],
    expiresOn: null,
    certified: { Pb: { value: 100, below: null, U: 4, k: 2 as const, unit: "mg/kg" as const } },
  };
  const sitting = (id: string, day: number, reads: number[], operator = "Otto", instrument = "A"): CheckedSitting => ({
    id,
    instrument,
    operator,
    startedAt: `2026-03-${String(day).padStart(2, "0")}T09:00:00Z`,
    fitness: sessionFitness({
      standards: [standard],
      checks: reads.map((value, i) => ({
        id: `${id}-${i}`,
        standardId: "t",
        takenAt: `2026-03-${String(day).padStart(2, "0")}T09:0${i}:00Z`,
        mode: null,
        results: [
          {
            element: "Pb",
            quantity: "bulk-mass-fraction",
            unit: "ppm",
            unitText: "ppm",
            column: "Pb",
            belowDetection: false,
            value: { text: String(value), value, decimals: 0 },
            error: { text: "1", value: 1, decimals: 0 },
            k: 1,
            detectionLimit: null,
          },
        ],
      })),
    }),
  });
  const steady = [1, 4, 8, 11].map((day, i) => sitting(`s${day}`, day, [99 + (i % 3), 101 - (i % 2)]));
  const drifting = [1, 4, 8, 11].map((day, i) => sitting(`d${day}`, day, [96 + 4 * i, 97 + 4 * i], "Tea", "B"));

  it("puts the checks of all sessions together, and speaks up where the recovery slopes", () => {
    const [a, b] = checkSeries([...steady, ...drifting]);
    expect([a?.instrument, a?.checks.length, a?.speaksUp]).toEqual(["A", 8, false]);
    expect([b?.instrument, b?.checks.length, b?.speaksUp]).toEqual(["B", 8, true]);
    // From the first to the last of ten days by 12 parts in 100.
    expect(b?.drift.status === "ok" ? b.drift.change : null).toBeCloseTo(0.12, 1);
  });

  it("a blank makes no series, and a check without a stated error or below detection counts with what it has", () => {
    const bare = sitting("bare", 1, [100, 101, 99]);
    const [pb] = bare.fitness.elements;
    const [verdict] = pb!.standards;
    const altered = (change: object, checks = verdict!.checks): CheckedSitting => ({
      ...bare,
      fitness: { ...bare.fitness, elements: [{ ...pb!, standards: [{ ...verdict!, ...change, checks }] }] },
    });
    expect(checkSeries([altered({ certified: null, below: 1 })])).toEqual([]);
    const [whole] = checkSeries([altered({})]);
    const [mixed] = checkSeries([
      altered(
        {},
        verdict!.checks.map((check, i) => ({ ...check, u: i === 0 ? 0 : null, value: i === 2 ? null : check.value })),
      ),
    ]);
    expect([whole!.drift.status, mixed!.drift.status]).toEqual(["ok", "too-few"]);
  });
  it("counts by analyser, operator and mode", () => {
    expect(driftCounts([...steady, ...drifting], "operator")).toMatchObject([
      { level: "Otto", series: 1, speakUp: 0, quiet: 1, checks: 8 },
      { level: "Tea", series: 1, speakUp: 1, quiet: 0, checks: 8 },
    ]);
    expect(driftCounts([...steady, ...drifting], "mode")).toMatchObject([{ level: null, series: 2, speakUp: 1 }]);
    expect(driftCounts([sitting("one", 1, [100])], "instrument")).toMatchObject([{ tooFew: 1, speakUp: 0, quiet: 0 }]);
  });
});
