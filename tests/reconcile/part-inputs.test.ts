import { describe, expect, it } from "vitest";
import { type PartReading, partInputs, type ShotFitness, type ShotInstrument } from "@/lib/reconcile/part-inputs.ts";
import { written } from "./shots.ts";

// Invented readings, instruments and sessions.
const part = { form: "bulk" as const, thicknessMm: null };
const analyser: ShotInstrument = { calibrationRel: 0.05, windowMm: 8, minimumSeconds: 10 };
const reading = (id: string, more: Partial<PartReading> = {}): PartReading => ({
  ...{ id, spot: "a", mode: null, secondsCounted: 30, takenAt: null, setAside: null, instrument: analyser },
  results: [
    {
      ...{ element: "Pb", quantity: "bulk-mass-fraction", unit: "mg/kg", unitText: "mg/kg", column: "Pb" },
      ...{ belowDetection: false, value: written(100), error: written(5), k: 1, detectionLimit: null },
    },
  ],
  ...more,
});
const fitness = (more: Partial<ShotFitness> = {}): ShotFitness => ({
  ...{ session: "s", state: "fit", factor: null, contributions: [], unsaidCertificate: false },
  ...{ drifts: false, inDoubt: false, allowed: false, ...more },
});
const leadOf = (readings: PartReading[], fit: (reading: PartReading) => ShotFitness | null = () => null) =>
  partInputs(part, readings, undefined, fit)[0]!.input;

describe("where several analysers are calibrated", () => {
  const range = (mode: string | null, low: number, high: number, unit = "mg/kg", element = "Pb") => ({
    mode,
    element,
    low,
    high,
    unit,
  });
  const withRanges = (...calibratedRanges: ShotInstrument["calibratedRanges"] & object) => ({
    instrument: { ...analyser, calibratedRanges },
  });
  it("is where all of them are, in one unit, the mode's own range before that of any mode", () => {
    const one = reading("1", {
      mode: "glaze",
      ...withRanges(range(null, 1, 9000), range("glaze", 20, 2000), range("glaze", 1, 2, "mg/kg", "Cd")),
    });
    const two = reading("2", {
      mode: "glaze",
      ...withRanges(range(null, 0.001, 0.1, "%"), range(null, 1, 2, "µg/cm²")),
    });
    expect(leadOf([one]).calibratedRange).toEqual([20, 2000]);
    // 0.1 % is 1000 mg/kg, and 0.001 % is 10 mg/kg.
    expect(leadOf([one, two]).calibratedRange?.map((end) => Number(end.toPrecision(12)))).toEqual([20, 1000]);
  });
  it("is not known where one of them does not say", () => {
    const one = reading("1", withRanges(range(null, 1, 9000)));
    expect(leadOf([one, reading("2")]).calibratedRange).toBeUndefined();
    expect(leadOf([reading("1", withRanges(range("metal", 1, 9000)))]).calibratedRange).toBeUndefined();
  });
});

describe("what sessions bring", () => {
  const recovery = { code: "recovery" as const, relative: 0.1, type: "B" as const, source: "check standard" };
  it("the widest contributions count, a contribution by its relative size", () => {
    const wide = fitness({ contributions: [recovery] });
    const absolute = fitness({
      contributions: [{ code: "recovery", absolute: 3, type: "B", source: "check standard" }],
    });
    const both = [reading("1"), reading("2")];
    const found = leadOf(both, ({ id }) => (id === "1" ? absolute : wide)).contributions;
    expect(found).toEqual([recovery]);
  });
  it("shots in doubt are set aside and flagged; where all are, their contributions stand all the same", () => {
    const doubted = fitness({ state: "not-fit", inDoubt: true, contributions: [recovery] });
    const input = leadOf([reading("1")], () => doubted);
    expect(input.shots[0]?.setAside).not.toBeNull();
    expect(input).toMatchObject({ sessionFlags: ["check-failed"], contributions: [recovery] });
    const allowed = leadOf([reading("1")], () => fitness({ ...doubted, allowed: true }));
    expect(allowed.shots[0]?.setAside).toBeNull();
    expect(allowed.sessionFlags).toEqual(["check-failed"]);
  });
  it("drift and a lacking check are flagged of the readings that are used", () => {
    const drifting = () => fitness({ drifts: true, state: "not-shown" });
    expect(leadOf([reading("1")], drifting).sessionFlags).toEqual(["drift-in-session", "check-missing"]);
    const aside = reading("1", { setAside: { reason: "slipped" } });
    expect(leadOf([aside], drifting).sessionFlags).toBeUndefined();
  });
});
