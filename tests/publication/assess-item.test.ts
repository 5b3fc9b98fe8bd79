import { describe, expect, it } from "vitest";
import { readingDepth, shareOfThick } from "@/lib/attenuation/reading-depth.ts";
import { worst } from "@/lib/consistency/session-fitness.ts";
import { type AssessInput, type AssessReading, assessItem } from "@/lib/publication/assess-item.ts";
import { buildSnapshot } from "@/lib/publication/build-snapshot.ts";
import type { OtherTest } from "@/lib/publication/other-test.ts";
import type { AssessSession } from "@/lib/publication/snapshot-sessions.ts";
import { workingItemOf } from "@/lib/publication/working-item-of.ts";
import type { QuantityKind } from "@/lib/quantity/kinds.ts";
import { written } from "../reconcile/shots.ts";
import { sha256 } from "../support/sample-revisions.ts";

/** An invented part with one reading; nothing here was measured. */
const readingOf = (element: string, quantity: QuantityKind, unit: string): AssessReading => ({
  ...{ id: "r1", componentId: "c1", file: null, row: null, number: null, takenAt: null, takenAtText: null },
  ...{ spot: "A", mode: null, secondsCounted: 30, setAside: null, instrument: null },
  results: [
    {
      ...{ element, quantity, unit, unitText: unit, column: element, belowDetection: false, detectionLimit: null },
      ...{ value: written(100), error: written(5), k: 1 as const },
    },
  ],
});

const item: AssessInput["item"] = {
  ...{ name: "Invented mug", aliases: [], marks: "", maker: null, gtin: null, category: "mug-or-cup" },
  ...{ ageGroup: "adult", foodContact: true, mouthable: false, description: "" },
};
const specimen = {
  ...{ id: "s1", label: "One", howGot: "", whoPaid: "", gotOn: null, dateCode: null, condition: null },
};
type Part = AssessInput["specimens"][number]["parts"][number];
function resultFor(
  part: Partial<Part>,
  [element, quantity, unit]: [string, QuantityKind, string] = ["Pb", "bulk-mass-fraction", "mg/kg"],
  instrument: AssessReading["instrument"] = null,
) {
  const whole: Part = {
    ...{ id: "c1", name: "outside", material: "glaze", form: "bulk", accessible: true },
    ...{ thicknessMm: null, areaCm2: null, massG: null, ...part },
  };
  const input: AssessInput = {
    item,
    specimens: [{ ...specimen, parts: [whole] }],
    readings: [{ ...readingOf(element, quantity, unit), instrument }],
    testDay: "2026-11-01",
    today: "2026-11-24",
  };
  const assessed = assessItem(input, sha256);
  return { ...assessed.specimens[0]!.parts[0]!.results[0]!, inputsDigest: assessed.inputsDigest };
}

describe("thick enough?", () => {
  const deep = readingDepth("glaze", "Pb")!;

  it("flags a part thinner than the depth its material asks for, and no other", () => {
    expect(resultFor({ thicknessMm: deep.mm * 0.99 }).reconciled.flags).toContain("not-infinitely-thick");
    for (const thicknessMm of [deep.mm, deep.mm * 1.01, null])
      expect(resultFor({ thicknessMm }).reconciled.flags).not.toContain("not-infinitely-thick");
    expect(resultFor({ thicknessMm: 0.5, material: "brass" }).reconciled.flags).not.toContain("not-infinitely-thick");
    expect(resultFor({ thicknessMm: 0.5, material: "other" }).reconciled.flags).not.toContain("not-infinitely-thick");
  });

  it("hands the depth on, with the share that the part's thickness gives", () => {
    expect(resultFor({ thicknessMm: 0.25 }).depth).toEqual({ ...deep, ofThick: shareOfThick(deep, 0.25) });
    expect(resultFor({}).depth).toEqual({ ...deep, ofThick: null });
    expect(resultFor({ material: "other" }).depth).toBeNull();
    expect(resultFor({}, ["U", "bulk-mass-fraction", "mg/kg"]).depth).toBeNull();
  });

  it("does not call a coat too thin for a loading per area, which is read on thin coats", () => {
    const areal = resultFor({ material: "paint", form: "coating", thicknessMm: 0.05 }, [
      "Pb",
      "coating-areal",
      "mg/cm²",
    ]);
    expect(areal.reconciled.flags).not.toContain("not-infinitely-thick");
    expect(areal.depth?.line).toBe("Pb Lβ");
  });

  it("gives no depth to what was not read by X-rays", () => {
    expect(resultFor({}, ["Pb", "leachate", "µg/mL"]).depth).toBeNull();
  });

  it("flags a part narrower than the analyser's window, where both are known", () => {
    const instrument = { calibrationRel: null, windowMm: 8, minimumSeconds: null };
    const flags = (smallestDimensionMm: number | null, analyser: AssessReading["instrument"]) =>
      resultFor({ smallestDimensionMm }, undefined, analyser).reconciled.flags;
    expect(flags(3, instrument)).toContain("smaller-than-window");
    expect(flags(8, instrument)).not.toContain("smaller-than-window");
    expect(flags(null, instrument)).not.toContain("smaller-than-window");
    expect(flags(3, null)).not.toContain("smaller-than-window");
  });

  it("binds the depth into the digest: another material is another input", () => {
    expect(resultFor({}).inputsDigest).not.toBe(resultFor({ material: "enamel" }).inputsDigest);
    expect(resultFor({}).reconciled.inputsDigest).not.toBe(resultFor({ material: "enamel" }).reconciled.inputsDigest);
  });
});

/** An invented wipe of the whole object, and sessions in which nobody read a check standard. */
const wipe: OtherTest = {
  ...{ id: "t1", specimenId: "s1", componentId: null, kind: "wipe", element: "Pb", valueText: "20", value: 20 },
  ...{ reportingLimit: null, unit: "µg/ft²", u: null, sampleAreaCm2: null, blankText: null, note: "" },
  ...{ laboratory: "Invented laboratory", method: "invented", reportedOn: null, certificateName: null },
};
const session = (id: string, change: Partial<AssessSession> = {}): AssessSession =>
  ({
    ...{ id, label: id, startedAt: "2026-10-31T09:00:00Z", endedAt: null, clockShiftMinutes: 0, inDoubtReason: null },
    ...{ place: "", note: "", tester: "Ana", instrument: { name: "Bench 1", kind: "XRF", serial: "X-1" } },
    fitness: { elements: [], uncounted: [] },
    ...(change as object),
  }) as unknown as AssessSession;
const part: Part = {
  ...{ id: "c1", name: "outside", material: "glaze", form: "bulk", accessible: true },
  ...{ thicknessMm: null, areaCm2: null, massG: null },
};
const input = (change: Partial<AssessInput>): AssessInput => ({
  ...{ item, specimens: [{ ...specimen, parts: [part] }], readings: [], testDay: null, today: "2026-11-24", ...change },
});

describe("an item's other tests", () => {
  const testsOf = (change: Partial<AssessInput>) => assessItem(input(change), sha256).specimens[0]!.otherTests;
  it("one of the whole object belongs to no part, one of a part names it", () => {
    const tests = testsOf({ otherTests: [wipe, { ...wipe, id: "t2", componentId: "c1" }] })!;
    expect(tests.map((test) => [test.id, test.part])).toEqual([
      ["t1", null],
      ["t2", "c1"],
    ]);
    expect(tests[0]).toMatchObject({ result: { quantity: "dust-loading", value: 20 } });
  });
  it("is judged on the day of its report, else of the item's shots, else today, and never in the future", () => {
    const days = (test: Partial<OtherTest>, testDay: string | null) => {
      const leach = { ...wipe, kind: "leachate", unit: "µg/mL" } as const;
      const [one] = testsOf({ otherTests: [{ ...leach, ...test }], testDay })!;
      return [...new Set(one!.decisions.map((decision) => decision.day))].sort();
    };
    expect(days({ reportedOn: "2020-06-01" }, "2022-06-01")).toContain("2020-06-01");
    expect(days({}, "2022-06-01")).toContain("2022-06-01");
    expect(days({}, null)).toEqual(["2026-11-24"]);
    expect(days({ reportedOn: "2031-01-01" }, null)).toEqual(["2026-11-24"]);
  });
  it("an object without any has no such key, and a figure that cannot be read does not stand", () => {
    expect(testsOf({})).toBeUndefined();
    expect(testsOf({ otherTests: [{ ...wipe, value: null }] })).toBeUndefined();
  });
  it("a part without readings may stand on the page for the sake of its test alone", () => {
    const codes = (otherTests: OtherTest[]) => {
      const record = input({ otherTests });
      const working = workingItemOf(
        { item: { slug: "invented-mug", photos: [] }, instruments: [], files: [], assess: record },
        assessItem(record, sha256),
        {
          ...{
            registry: { name: "Shelf", address: null, licence: "CC-BY-4.0" },
            revision: 1,
            kind: "first",
            reason: null,
          },
          ...{ publishedAt: "2026-11-24T10:00:00Z", testers: [] },
          review: { reviewed: false, reviewers: [], reviewedOn: null, inputsDigest: null },
        } as unknown as Parameters<typeof workingItemOf>[2],
      );
      expect("otherTests" in working.specimens[0]!).toBe(otherTests.length > 0);
      const built = buildSnapshot(working);
      return built.ok ? [] : built.problems.map((p) => p.code);
    };
    expect(codes([])).toContain("part-without-result");
    expect(codes([{ ...wipe, componentId: "c1" }])).not.toContain("part-without-result");
  });
});

describe("an item's sessions", () => {
  const inSession = (reading: AssessReading, change: Partial<AssessReading> = {}): AssessReading => ({
    ...{ ...reading, sessionId: "s", serial: "X-1", takenAt: null, ...change },
  });
  const resultOf = (readings: AssessReading[], sessions = [session("s")]) =>
    assessItem(input({ readings, sessions, testDay: "2026-11-01" }), sha256).specimens[0]!.parts[0]!.results[0]!;
  it("say of a shot without a time that the instrument's fitness was not shown", () => {
    const result = resultOf([inSession(readingOf("Pb", "bulk-mass-fraction", "mg/kg"))]);
    expect(result.fitness).toBe("not-shown");
    expect(result.instruments).toEqual({ "X-1": "not-shown" });
    expect(result.readings[0]).toMatchObject({ session: "s" });
    expect("factor" in result.readings[0]!).toBe(false);
  });
  it("correct a shot where a standard of the part's material asked for it, and an analyser nobody used shows nothing", () => {
    const corrected = { factor: 1.1, contributions: [{ code: "recovery", relative: 0.02, type: "A", source: "x" }] };
    const standards = [
      {
        ...{ standard: { id: "std", name: "Invented glaze", material: "glaze" }, recovery: { recovery: 0.9, u: 0.02 } },
        ...{ certified: 100, uCertified: 1, contributions: [], corrected, state: "fit-with-correction", checks: [] },
      },
    ];
    const element = {
      element: "Pb",
      quantity: "bulk-mass-fraction",
      mode: null,
      standards,
      inDoubt: [],
      drifts: false,
    };
    const fitness = { elements: [{ ...element, state: "fit-with-correction" }], uncounted: [] };
    const readings = [inSession(readingOf("Pb", "bulk-mass-fraction", "mg/kg"), { takenAt: "2026-10-31T09:30:00Z" })];
    const sessions = [session("s", { fitness: fitness as unknown as AssessSession["fitness"] })];
    expect(resultOf(readings, sessions)).toMatchObject({
      fitness: "fit-with-correction",
      readings: [{ factor: 1.1 }],
      instruments: { "X-1": "fit-with-correction" },
    });
    const record = input({ readings, sessions, testDay: "2026-11-01" });
    const analyser = (serial: string) => ({ name: "Bench", kind: "XRF", serial, windowMm: null, errorK: null });
    const working = workingItemOf(
      {
        ...{ item: { slug: "invented-mug", photos: [] }, files: [], assess: record },
        instruments: [analyser("X-1"), analyser("X-2")] as never,
      },
      assessItem(record, sha256),
      { publishedAt: "2026-11-24T10:00:00Z" } as never,
    );
    expect(working.instruments.map((one) => [one.serial, one.fitness])).toEqual([
      ["X-1", "fit-with-correction"],
      ["X-2", worst([])],
    ]);
    expect(working.sessions?.map((one) => one.id)).toEqual(["s"]);
  });
  it("say nothing of what no analyser read in the part", () => {
    const result = resultOf([inSession(readingOf("Pb", "leachate", "µg/mL"))]);
    expect("fitness" in result).toBe(false);
    expect(result.instruments).toEqual({});
  });
});
