import { describe, expect, it } from "vitest";
import {
  readCertifiedLines,
  readRangeLines,
  writeCertifiedLines,
  writeRangeLines,
} from "@/lib/consistency/certified-lines.ts";
import { type CheckStandard, namedStandard, type StandardReading } from "@/lib/consistency/check-standard.ts";
import { doubtedElements, sessionFitness, shotFitness } from "@/lib/consistency/session-fitness.ts";
import { moments } from "@/lib/statistics/moments.ts";
import { written } from "../reconcile/shots.ts";

// Standards and readings are invented.
const tile: CheckStandard = {
  ...{ id: "tile", name: "Tile", material: "glaze", modes: ["glaze"], expiresOn: "2027-01-01" },
  certified: { Pb: { value: 100, below: null, U: 4, k: 2, unit: "mg/kg" } },
};
const blank: CheckStandard = {
  ...{ id: "blank", name: "Blank", material: "glass", modes: [], expiresOn: null },
  certified: { Pb: { value: null, below: 1, U: null, k: 2, unit: "mg/kg" } },
};
const at = (clock: string) => `2026-03-14T${clock}:00+01:00`;
const result = (value: number | null, element = "Pb") => ({
  ...{ element, quantity: "bulk-mass-fraction" as const, unit: "ppm", unitText: "ppm", column: element },
  ...{ belowDetection: value === null, value: value === null ? null : written(value), k: 1 as const },
  ...{ error: value === null ? null : written(2), detectionLimit: value === null ? written(5) : null },
});
const read = (clock: string, value: number | null, more: Partial<StandardReading> = {}): StandardReading => ({
  ...{ id: clock, standardId: "tile", takenAt: at(clock), mode: "glaze", results: [result(value)], ...more },
});
const lead = (checks: StandardReading[], corrections: string[] = [], standards = [tile, blank]) => {
  const found = sessionFitness({ standards, checks, corrections });
  return { found, pb: found.elements.find((e) => e.element === "Pb") };
};
const shot = (clock: string, element = "Pb", mode = "glaze") => ({
  ...{ element, quantity: "bulk-mass-fraction" as const, mode, takenAt: at(clock) },
});
const session = { id: "s", label: "s", doubtAllowed: false };

describe("EPA Method 6200: check sample within 20 % of its value (figure from memory; that it is read before, during and after is verified, limits.md part B)", () => {
  it.each([
    [[80, 100, 120], "fit"],
    [[79.9, 100, 100], "not-fit"],
    [[100, 120.1, 100], "not-fit"],
    [[100, 100, 79], "not-fit"],
  ] as const)("%j → %s", (values, state) => {
    const clocks = ["09:00", "11:00", "13:00"];
    expect(lead(values.map((v, i) => read(clocks[i]!, v))).pb?.state).toBe(state);
  });

  it("a blank with nothing above the detection limit is good and alone shows no recovery; one with the element fails (rule verified, its frequency from memory)", () => {
    const good = read("09:00", null, { standardId: "blank" });
    expect(lead([good]).pb).toMatchObject({ state: "not-shown", inDoubt: [] });
    expect(lead([good, read("09:05", 100)]).pb?.state).toBe("fit");
    const dirty = read("09:00", 12, { standardId: "blank" });
    expect(lead([dirty, read("09:05", 100)]).pb?.state).toBe("not-fit");
  });

  it("precision: seven replicates of a steady analyser scatter by less than 20 %, and u(R) is their s/√7 (rule from memory)", () => {
    const values = [97, 103, 99, 101, 104, 96, 100];
    const { mean, sd } = moments(values);
    expect(sd / mean).toBeLessThan(0.2);
    const checks = values.map((v, i) => read(`09:0${i}`, v));
    expect(lead(checks).pb?.standards[0]?.recovery?.parts.scatter).toBeCloseTo(sd / Math.sqrt(7) / mean, 12);
  });
});

describe("a failed check in the middle", () => {
  const checks = [read("09:00", 101), read("11:00", 70), read("12:00", 99)];
  const { found } = lead(checks);
  it.each([
    ["08:30", false],
    ["09:00", false],
    ["10:00", true],
    ["11:30", true],
    ["12:30", false],
  ] as const)("at %s: in doubt %s", (clock, inDoubt) => {
    expect(shotFitness(found, session, shot(clock), "glaze").inDoubt).toBe(inDoubt);
  });
  it("doubts an element without a check of its own, and clears one that has good checks of its own mode", () => {
    expect(shotFitness(found, session, shot("10:00", "As"), "glaze").inDoubt).toBe(true);
    expect(
      doubtedElements(found, { mode: "glaze", takenAt: at("10:00"), results: [result(5), result(5, "As")] }),
    ).toEqual(["Pb", "As"]);
    expect(doubtedElements(found, { mode: "glaze", takenAt: at("12:30"), results: [result(5)] })).toEqual([]);
    const metal: CheckStandard = { ...tile, id: "bar", modes: ["metal"] };
    const both = sessionFitness({
      standards: [tile, metal],
      checks: [...checks, read("09:10", 100, { id: "b", standardId: "bar", mode: "metal" })],
    });
    expect(shotFitness(both, session, shot("10:00", "Pb", "metal"), "brass")).toMatchObject({
      state: "fit",
      inDoubt: false,
    });
  });
  it("uses a doubtful reading only where the tester said why", () => {
    const allowed = { ...session, doubtAllowed: true };
    expect(shotFitness(found, allowed, shot("10:00"), "glaze")).toMatchObject({
      inDoubt: true,
      allowed: true,
      state: "not-fit",
    });
  });
});

describe("a correction", () => {
  const high = [read("09:00", 112), read("11:00", 113), read("13:00", 112)];
  it("is made where asked for, called for, and of the same material", () => {
    const { found } = lead(high, ["Pb"]);
    const shown = shotFitness(found, session, shot("10:00"), "glaze");
    expect(shown.state).toBe("fit-with-correction");
    expect(shown.factor).toBeCloseTo(100 / ((112 + 113 + 112) / 3), 12);
    expect(shown.contributions.every((c) => c.shared === "s")).toBe(true);
    expect(shotFitness(found, session, shot("10:00"), "brass")).toMatchObject({ state: "fit", factor: null });
    expect(shotFitness(lead(high).found, session, shot("10:00"), "glaze").factor).toBeNull();
  });
  it("otherwise the difference counts as doubt, |R − 1|/√3 (JCGM 100:2008 4.3.7)", () => {
    const shown = shotFitness(lead(high).found, session, shot("10:00"), "glaze");
    const recovery = shown.contributions.find((c) => c.code === "recovery");
    expect(recovery?.relative).toBeCloseTo(((112 + 113 + 112) / 300 - 1) / Math.sqrt(3), 12);
  });
  it("is never made by a certificate that states no uncertainty; its line stays out and the default comes in", () => {
    const unsaid = { ...tile, certified: { Pb: { ...tile.certified["Pb"]!, U: null } } };
    const { found } = lead(high, ["Pb"], [unsaid]);
    const shown = shotFitness(found, session, shot("10:00"), "glaze");
    expect(shown).toMatchObject({ state: "fit", factor: null, unsaidCertificate: true });
    expect(shown.contributions.map((c) => c.code)).toEqual(["recovery"]);
  });
});

describe("checks that show nothing", () => {
  it.each([
    [{ mode: "metal" }, "wrong-mode"],
    [{ takenAt: "2027-02-01T09:00:00+01:00" }, "expired"],
    [{ takenAt: null }, "no-time"],
    [{ results: [result(100, "Sn")] }, "nothing-certified"],
  ] as const)("%j → %s", (more, why) => {
    const { found } = lead([read("09:00", 100, more)]);
    expect(found.uncounted).toEqual([{ readingId: "09:00", standardId: "tile", why }]);
    expect(found.elements).toEqual([]);
  });
  it("a session without checks shows nothing", () => {
    const { found } = lead([]);
    expect(shotFitness(found, session, shot("10:00"), "glaze")).toMatchObject({ state: "not-shown", inDoubt: false });
    expect(shotFitness(null, null, shot("10:00"), "glaze").state).toBe("not-shown");
  });
});

describe("names and certificates as typed", () => {
  const names = [{ id: "a", name: "Amber disc", otherNames: ["CHECK Amber"] }];
  it("knows a standard by a whole name only", () => {
    expect(namedStandard("check  amber", names)).toBe("a");
    for (const text of ["Amber", "Amber disc, broken", "", null]) expect(namedStandard(text, names)).toBeNull();
    expect(namedStandard("Amber disc", [...names, { id: "b", name: "amber disc", otherNames: [] }])).toBeNull();
  });
  it("reads a certificate line by line, and asks for an uncertainty that is missing", () => {
    const text = "Pb 5150 ± 180\nCu 59,2 ± 0,52 %\nCr 115 none stated\nAs < 1";
    const found = readCertifiedLines(text, { unit: "mg/kg", k: 2 });
    expect(found).toMatchObject({
      ok: true,
      value: {
        Cu: { value: 59.2, U: 0.52, unit: "%" },
        Cr: { value: 115, U: null },
        As: { value: null, below: 1 },
      },
    });
    if (found.ok)
      expect(readCertifiedLines(writeCertifiedLines(found.value, "mg/kg"), { unit: "mg/kg", k: 2 })).toEqual(found);
    for (const [line, code] of [
      ["Pb 5150", "certified-uncertainty-missing"],
      ["lead 5150 ± 2", "certified-line-unread"],
      ["Pb 5 ± 1 parsecs", "certified-line-unread"],
      ["Pb 5 ± 1\nPb 6 ± 1", "certified-twice"],
    ] as const)
      expect(readCertifiedLines(line, { unit: "mg/kg", k: 2 })).toMatchObject({ ok: false, problems: [{ code }] });
  });
  it("reads calibrated ranges", () => {
    expect(readRangeLines("Pb 20–6000 mg/kg, glass and glaze\nCd 0.002 to 0,5 %")).toMatchObject({
      ok: true,
      value: [
        { element: "Pb", low: 20, high: 6000, unit: "mg/kg", mode: "glass and glaze" },
        { element: "Cd", low: 0.002, high: 0.5, unit: "%", mode: null },
      ],
    });
    expect(readRangeLines("Pb 20")).toMatchObject({ ok: false, problems: [{ code: "range-line-unread" }] });
  });
});

describe("ranges of calibration as lines", () => {
  it("are read back as they were written, with and without a mode", () => {
    const ranges = [
      { element: "Pb", low: 5, high: 2000, unit: "mg/kg", mode: "glaze" },
      { element: "Cd", low: 1, high: 80, unit: "mg/kg", mode: null },
    ];
    expect(writeRangeLines(ranges)).toBe("Pb 5–2000 mg/kg, glaze\nCd 1–80 mg/kg");
    expect(readRangeLines(writeRangeLines(ranges))).toEqual({ ok: true, value: ranges });
  });
});

describe("several standards in one session", () => {
  const second: CheckStandard = { ...tile, id: "second", name: "Second", material: "brass" };
  const both = [tile, second];
  it("the one that says the least good brings its contributions, in whichever order they were read", () => {
    const good = [read("09:00", 100), read("11:00", 101)];
    const off = [
      read("09:10", 110, { id: "x", standardId: "second" }),
      read("11:10", 112, { id: "y", standardId: "second" }),
    ];
    const widest = (checks: StandardReading[]) => {
      const { contributions } = shotFitness(sessionFitness({ standards: both, checks }), null, shot("10:00"), "glass");
      return contributions.find((one) => one.code === "recovery")?.relative;
    };
    expect(widest([...good, ...off])).toBeCloseTo((111 / 100 - 1) / Math.sqrt(3), 9);
    expect(widest([...off, ...good])).toBe(widest([...good, ...off]));
  });
  it("a reading of a standard that is not among them counts for nothing, and elements come by mode, the unnamed first", () => {
    const { elements, uncounted } = sessionFitness({
      standards: [{ ...tile, modes: [] }],
      checks: [read("09:00", 100), read("09:05", 100, { mode: null }), read("09:10", 10, { standardId: "gone" })],
    });
    expect(elements.map((one) => one.mode)).toEqual([null, "glaze"]);
    expect(uncounted).toEqual([]);
  });
  it("blanks are judged in the order of their times, not of the list", () => {
    const checks = [read("12:00", null, { standardId: "blank" }), read("09:00", 12, { id: "d", standardId: "blank" })];
    const [only] = lead(checks).pb!.standards;
    expect(only?.checks.map(({ within }) => within)).toEqual([false, true]);
    expect(lead([...checks].reverse()).pb?.inDoubt).toEqual(lead(checks).pb?.inDoubt);
  });
});
