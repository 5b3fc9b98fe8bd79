import { describe, expect, it } from "vitest";
import { checkChart } from "@/lib/consistency/check-chart.ts";
import type { CheckReading } from "@/lib/consistency/check-reading.ts";
import { compareResults } from "@/lib/consistency/compare-results.ts";
import { doubtSpans, isInDoubt } from "@/lib/consistency/doubt-spans.ts";
import { instantOf } from "@/lib/consistency/instant.ts";
import { recoveryOf } from "@/lib/consistency/recovery.ts";
import { recoveryLine } from "@/lib/consistency/recovery-line.ts";
import { sessionDrift } from "@/lib/consistency/session-drift.ts";
import { sessionState } from "@/lib/consistency/session-state.ts";
import { contributionName, contributionSource } from "@/lib/wording/budget.ts";
import { refusalCode } from "../support/refusal-code.ts";

// Readings and standards below are invented for the tests.
const clock = (hour: number) => `2026-03-14T${String(hour).padStart(2, "0")}:00:00+01:00`;
const check = (hour: number, value: number | null, more: Partial<CheckReading> = {}): CheckReading => ({
  id: `at ${hour}`,
  takenAt: clock(hour),
  value,
  u: 1,
  detectionLimit: null,
  ...more,
});
const standard = { certified: 100, uCertified: 2 };

describe("instantOf", () => {
  it("orders times of different zones and refuses a time without one", () => {
    expect(instantOf("2026-03-14T10:00:00+01:00")).toBe(instantOf("2026-03-14T09:00:00Z"));
    for (const text of ["2026-03-14T10:00:00", "2026-03-14", "", "2026-13-14T10:00:00Z"])
      expect(refusalCode(() => instantOf(text))).toBe("no-zone");
  });
});

describe("compareResults", () => {
  const result = (value: number, ...parts: [string, number, number?][]) => ({
    value,
    budget: parts.map(([code, u, nu]) => ({ code, u, nu: nu ?? null })),
  });
  it("leaves a shared calibration out of both, and then sees a difference it hid", () => {
    const a = result(412, ["scatter-and-counting", 3], ["calibration", 20]);
    const b = result(400, ["scatter-and-counting", 4], ["calibration", 20]);
    expect(compareResults(a, b)).toMatchObject({ verdict: "agree", leftOut: [] });
    const shared = compareResults(a, b, { shared: ["calibration"] });
    expect(shared).toMatchObject({ u: 5, zeta: 2.4, verdict: "differ", leftOut: ["calibration"] });
    expect(shared.p).toBeCloseTo(0.0163950718, 8); // 2·(1 − Φ(2.4)), normal table
  });
  it("keeps what only one of them has", () => {
    const r = compareResults(result(1, ["a", 3], ["b", 4]), result(1, ["a", 12]), { shared: ["b"] });
    expect(r).toMatchObject({ u: 13, leftOut: [], zeta: 0, verdict: "agree" });
  });
  it("expands each with its own degrees of freedom, as R 4.2 gives: u 6 (ν 4) against 8 (ν 9)", () => {
    const r = compareResults(result(412, ["s", 6, 4]), result(400, ["s", 8, 9]));
    expect(r.en).toBeCloseTo(0.487860495079, 10);
    expect(r.nuEff).toBeCloseTo(12.8351397604, 9);
    expect(r.p).toBeCloseTo(0.251820862737, 10);
  });
  it("the other way round gives the same with the sign turned", () => {
    const [a, b] = [result(412, ["s", 6, 4]), result(380, ["s", 8, 9])];
    const [there, back] = [compareResults(a, b), compareResults(b, a)];
    expect(back.zeta).toBe(-(there.zeta as number));
    expect(back.en).toBe(-(there.en as number));
    expect(back.p).toBe(there.p);
  });
  it("cannot say where nothing is left to hold the difference against", () => {
    const same = result(5, ["calibration", 1]);
    expect(compareResults(same, result(6, ["calibration", 1]), { shared: ["calibration"] })).toMatchObject({
      verdict: "cannot-say",
      zeta: null,
      en: null,
    });
    expect(refusalCode(() => compareResults(result(Number.NaN), same))).toBe("not-finite");
    expect(refusalCode(() => compareResults(result(1, ["a", -1]), same))).toBe("negative");
  });
});

describe("recoveryOf", () => {
  it("takes scatter where it is the larger, counting where it is not, and the certificate always", () => {
    const scattered = recoveryOf(
      [
        { value: 80, u: 1 },
        { value: 100, u: 1 },
        { value: 120, u: 1 },
      ],
      standard,
    );
    expect(scattered.parts.scatter).toBeCloseTo(0.2 / Math.sqrt(3), 12);
    expect(scattered.u).toBeCloseTo(Math.hypot(0.2 / Math.sqrt(3), 0.02), 12);
    expect(scattered.nuEff).toBeCloseTo(2 * (1 + 0.0004 / (0.04 / 3)) ** 2, 9);
    const counted = recoveryOf(
      [
        { value: 100, u: 6 },
        { value: 100, u: 8 },
      ],
      standard,
    );
    expect(counted.parts).toEqual({ scatter: 0, counting: expect.closeTo(0.05, 12), certificate: 0.02 });
    expect(counted.nuEff).toBeNull();
  });
  it("one reading stands on its counting alone, and on nothing without it", () => {
    expect(recoveryOf([{ value: 90, u: 3 }], { certified: 100, uCertified: 0 }).u).toBeCloseTo(0.03, 12);
    expect(recoveryOf([{ value: 90, u: null }], standard)).toMatchObject({
      u: null,
      U: null,
      differs: null,
      recovery: 0.9,
    });
    expect(
      recoveryOf(
        [
          { value: 90, u: null },
          { value: 92, u: 1 },
        ],
        standard,
      ).parts.counting,
    ).toBeNull();
  });
  it("three readings by scatter alone, against R 4.2: relative u 0.00607737125463, t(0.975, 2)", () => {
    const r = recoveryOf(
      [94, 96, 95].map((value) => ({ value, u: null })),
      { certified: 100, uCertified: 0 },
    );
    expect(r.parts.scatter).toBeCloseTo(0.00607737125463, 13);
    expect(r.U).toBeCloseTo(0.95 * 0.00607737125463 * 4.30265273, 8);
    expect(r.differs).toBe(true);
  });
  it("refuses what has no recovery", () => {
    expect(refusalCode(() => recoveryOf([], standard))).toBe("empty");
    expect(refusalCode(() => recoveryOf([{ value: 0, u: 1 }], standard))).toBe("not-positive");
    expect(refusalCode(() => recoveryOf([{ value: 1, u: -1 }], standard))).toBe("negative");
    expect(refusalCode(() => recoveryOf([{ value: 1, u: 1 }], { certified: 0, uCertified: 1 }))).toBe("not-positive");
    expect(refusalCode(() => recoveryOf([{ value: 1, u: 1 }], { certified: 1, uCertified: -1 }))).toBe("negative");
  });
});

describe("recoveryLine", () => {
  const standards = (slope: number, offset: number) =>
    [20, 100, 400, 1000].map((certified) => ({
      certified,
      uCertified: certified * 0.01,
      read: offset + slope * certified,
      uRead: 1 + certified * 0.01,
    }));
  it("tells an error in proportion from one that is the same everywhere", () => {
    expect(recoveryLine(standards(1, 0))).toMatchObject({ recoveryDiffers: false, offsetDiffers: false, widened: 1 });
    expect(recoveryLine(standards(1.15, 0))).toMatchObject({ recoveryDiffers: true, offsetDiffers: false });
    expect(recoveryLine(standards(1, 12))).toMatchObject({ recoveryDiffers: false, offsetDiffers: true });
  });
  it("two standards make a line but no test of it", () => {
    expect(recoveryLine(standards(1, 0).slice(0, 2)).fitP).toBeNull();
    expect(refusalCode(() => recoveryLine(standards(1, 0).slice(0, 1)))).toBe("too-few");
  });
});

describe("sessionDrift", () => {
  const hours = [0, 1, 2, 3, 5];
  const values = [400, 404, 409, 412, 409.5];
  const at = (us: (number | null)[]) =>
    sessionDrift(
      values.map((value, i) => ({ takenAt: clock(9 + (hours[i] as number)), value, u: us[i] as number | null })),
    );
  it("without errors is R's lm: slope 2, se 0.875080433884, p 0.106395137879", () => {
    expect(at([null, 1, 1, 1, 1])).toMatchObject({
      status: "ok",
      slopePerHour: expect.closeTo(2, 12),
      u: expect.closeTo(0.875080433884, 11),
      p: expect.closeTo(0.106395137879, 11),
      change: expect.closeTo(10, 11),
      drifts: false,
      from: "scatter",
    });
  });
  it("with errors too small for the scatter is R's weighted lm: se 0.757679617468, p 0.0955122719417", () => {
    expect(at([1, 2, 1, 2, 1])).toMatchObject({
      slopePerHour: expect.closeTo(1.82162162162, 10),
      u: expect.closeTo(0.757679617468, 11),
      p: expect.closeTo(0.0955122719417, 11),
      from: "errors",
    });
  });
  it("errors that explain the scatter stand as they are: se 0.275092122162 of the same weights, ten times as large", () => {
    expect(at([10, 20, 10, 20, 10])).toMatchObject({ u: expect.closeTo(2.75092122162, 10), drifts: false });
  });
  it("points exactly on a line: certain of a slope, and of none", () => {
    const line = (slope: number) =>
      sessionDrift([0, 1, 2].map((h) => ({ takenAt: clock(h), value: 8 + slope * h, u: null })));
    expect(line(2)).toMatchObject({ p: 0, drifts: true });
    expect(line(0)).toMatchObject({ p: 1, drifts: false });
  });
  it("says so where there is no telling, and refuses times without a zone", () => {
    const one = (hour: number) => ({ takenAt: clock(hour), value: 1, u: 1 });
    expect(sessionDrift([one(1), one(2)]).status).toBe("too-few");
    expect(sessionDrift([one(1), one(1), one(1)]).status).toBe("same-time");
    expect(refusalCode(() => sessionDrift([{ takenAt: "2026-03-14T10:00", value: 1, u: 1 }]))).toBe("no-zone");
    expect(refusalCode(() => sessionDrift([one(1), one(2), { ...one(3), value: Number.NaN }]))).toBe("not-finite");
    expect(refusalCode(() => sessionDrift([one(1), one(2), { ...one(3), u: 0 }]))).toBe("not-positive");
    expect(refusalCode(() => sessionDrift([], { differBelow: 2 }))).toBe("bad-level");
  });
});

describe("checkChart", () => {
  it("about its own mean: individuals as the chart of the recoveries", () => {
    const values = [49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1];
    const r = checkChart([...values.map((value, i) => check(i, value))].reverse(), { certified: 50 });
    if (r.status !== "ok") throw new Error(r.status);
    // NIST/SEMATECH e-Handbook 6.3.2.2, over 50: mean 50.81, limits 45.8159 and 55.8041.
    expect(r.center * 50).toBeCloseTo(50.81, 10);
    expect(r.limits.map((limit) => limit * 50)).toEqual([expect.closeTo(45.81591, 4), expect.closeTo(55.80409, 4)]);
    expect(r.points.map(({ recovery }) => recovery * 50)).toEqual(values.map((value) => expect.closeTo(value, 10)));
    expect(r.baseline).toBe("these readings");
  });
  it("leaves a reading below detection off the chart and says so", () => {
    const r = checkChart([check(1, 100), check(2, null), check(3, 101)], {
      certified: 100,
      baseline: { mean: 1, sd: 0.01 },
    });
    expect(r.withoutValue).toEqual(["at 2"]);
    expect(r.status === "ok" && r.points.map(({ id }) => id)).toEqual(["at 1", "at 3"]);
  });
  it("needs two readings, or one and a baseline; needs a spread of its own or a given one", () => {
    const baseline = { mean: 1, sd: 0.02 };
    expect(checkChart([check(1, 100)], { certified: 100 }).status).toBe("too-few");
    expect(checkChart([check(1, 100)], { certified: 100, baseline }).status).toBe("ok");
    expect(checkChart([], { certified: 100, baseline }).status).toBe("too-few");
    expect(checkChart([check(1, 100), check(2, 100)], { certified: 100 }).status).toBe("no-spread");
    expect(refusalCode(() => checkChart([check(1, 100)], { certified: 100, baseline: { mean: 1, sd: 0 } }))).toBe(
      "not-positive",
    );
    expect(refusalCode(() => checkChart([], { certified: 0 }))).toBe("not-positive");
  });
});

describe("sessionState", () => {
  it("without a check that says anything: not shown", () => {
    expect(sessionState([], standard)).toMatchObject({ state: "not-shown", flag: "check-missing", contributions: [] });
    const silent = sessionState([check(9, null, { detectionLimit: 90 }), check(10, null)], standard);
    expect(silent).toMatchObject({ state: "not-shown", failed: [] });
    expect(silent.checks.map(({ within }) => within)).toEqual([null, null]);
  });
  it("within ±20 %: fit, and the difference enters as a rectangle", () => {
    const r = sessionState([check(9, 120), check(12, 100)], standard);
    expect(r).toMatchObject({ state: "fit", flag: null, factor: null, band: 0.2, inDoubt: [] });
    expect(r.contributions).toEqual([
      expect.objectContaining({ code: "certified-value", relative: 0.02, type: "B" }),
      expect.objectContaining({ code: "recovery", relative: expect.closeTo(0.1 / Math.sqrt(3), 12), type: "B" }),
    ]);
    expect(sessionState([check(9, 80)], standard).state).toBe("fit");
    expect(sessionState([check(9, 79.9)], standard).state).toBe("not-fit");
    expect(sessionState([check(9, 1.2)], { certified: 1, uCertified: 0 }).state).toBe("fit");
  });
  it("the instrument's own band counts where it is tighter, and only there", () => {
    expect(sessionState([check(9, 112)], standard, { instrumentBand: 0.1 }).state).toBe("not-fit");
    expect(sessionState([check(9, 125)], standard, { instrumentBand: 0.5 }).state).toBe("not-fit");
    expect(refusalCode(() => sessionState([], standard, { instrumentBand: 0 }))).toBe("bad-band");
  });
  it("corrects only when asked, when the matrix matches, and when the recovery differs for certain", () => {
    const low = [check(9, 88), check(12, 88)];
    const correction = { asked: true, matrixMatches: true };
    const r = sessionState(low, standard, { correction });
    expect(r).toMatchObject({ state: "fit-with-correction", factor: expect.closeTo(1 / 0.88, 12) });
    expect(r.contributions[1]).toMatchObject({
      code: "recovery",
      type: "A",
      relative: expect.closeTo(Math.SQRT1_2 / 88, 12),
    });
    expect(r.contributions[1]?.nu).toBeUndefined();
    expect(sessionState(low, standard, { correction: { asked: false, matrixMatches: true } }).state).toBe("fit");
    expect(sessionState(low, standard, { correction: { asked: true, matrixMatches: false } }).state).toBe("fit");
    expect(sessionState([check(9, 98)], standard, { correction }).state).toBe("fit");
    expect(sessionState([check(9, 88, { u: null })], standard, { correction }).state).toBe("fit");
  });
  it("a correction from scattered checks brings their degrees of freedom", () => {
    const r = sessionState(
      [check(9, 86), check(10, 87), check(11, 88), check(12, 89)].map((c) => ({ ...c, u: null })),
      standard,
      {
        correction: { asked: true, matrixMatches: true },
      },
    );
    expect(r.contributions[1]).toMatchObject({ nu: 3, source: "check-standard-corrected" });
  });
  it("a failed check: not fit, with the readings about it in doubt and the good checks' recovery kept", () => {
    const r = sessionState([check(15, 102), check(9, 98), check(12, 60)], standard);
    expect(r).toMatchObject({ state: "not-fit", flag: "check-failed", failed: ["at 12"], factor: null });
    expect(r.inDoubt).toEqual([{ after: clock(9), before: clock(15) }]);
    expect(r.recovery?.recovery).toBeCloseTo(1, 12);
    expect(r.contributions).toHaveLength(2);
    const none = sessionState([check(9, 40)], standard);
    expect(none).toMatchObject({
      state: "not-fit",
      recovery: null,
      contributions: [],
      inDoubt: [{ after: null, before: null }],
    });
  });
  it("a standard not seen at all that should have been is a failed check", () => {
    expect(sessionState([check(9, null, { detectionLimit: 12 })], standard)).toMatchObject({
      state: "not-fit",
      failed: ["at 9"],
    });
  });
  it("refuses a certificate that is none", () => {
    expect(refusalCode(() => sessionState([], { certified: -1, uCertified: 1 }))).toBe("not-positive");
    expect(refusalCode(() => sessionState([], { certified: 1, uCertified: Number.NaN }))).toBe("not-finite");
    expect(refusalCode(() => sessionState([check(9, 100, { takenAt: "09:00" }), check(10, 1)], standard))).toBe(
      "no-zone",
    );
  });
});

describe("doubtSpans", () => {
  const spans = (...within: (boolean | null)[]) =>
    doubtSpans(within.map((each, i) => ({ takenAt: clock(i), within: each })));
  it("runs from the last good check to the next good one", () => {
    expect(spans(true, true)).toEqual([]);
    expect(spans(false)).toEqual([{ after: null, before: null }]);
    expect(spans(true, false, false, true, false)).toEqual([
      { after: clock(0), before: clock(3) },
      { after: clock(3), before: null },
    ]);
    expect(spans(true, null, false, null, true)).toEqual([{ after: clock(0), before: clock(4) }]);
  });
  it("holds the readings between, not those at a good check, and all whose time is unknown", () => {
    const one = spans(true, false, true);
    expect(isInDoubt(clock(1), one)).toBe(true);
    expect(isInDoubt(clock(0), one)).toBe(false);
    expect(isInDoubt(clock(2), one)).toBe(false);
    expect(isInDoubt(clock(3), one)).toBe(false);
    expect(isInDoubt(null, one)).toBe(true);
    expect(isInDoubt(null, [])).toBe(false);
  });
});

describe("what a session adds to the budget", () => {
  it("every source has words, and every code a name", () => {
    const asked = { correction: { asked: true, matrixMatches: true } };
    const lines = [sessionState([check(9, 88)], standard), sessionState([check(9, 88)], standard, asked)].flatMap(
      ({ contributions }) => contributions,
    );
    for (const { code, source } of lines) {
      expect(contributionSource(source)).not.toBe(source);
      expect(contributionName(code)).toMatch(/check standard/);
    }
  });
});
