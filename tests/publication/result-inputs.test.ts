import { describe, expect, it } from "vitest";
import { inputsOfResult, keptInputs } from "@/lib/publication/result-inputs.ts";
import type { ReconcileInput } from "@/lib/reconcile/types.ts";
import { samplePart } from "../support/sample-snapshot.ts";

const input: ReconcileInput = {
  ...{ element: "Pb", quantity: "bulk-mass-fraction", form: "bulk", contributions: [] },
  shots: ["r1", "r2"].map((id) => ({
    ...{ id, spot: "A", mode: null, secondsCounted: 30, takenAt: null, setAside: null, quantity: "bulk-mass-fraction" },
    ...{ unit: "mg/kg", belowDetection: true, value: null, error: null, k: null },
    detectionLimit: { text: "5", value: 5, decimals: 0 },
  })),
};

describe("what a snapshot keeps of single shots", () => {
  it("a setting aside that its row does not say, and nothing where the row says the same", () => {
    const aside = { ...input, shots: input.shots.map((shot) => ({ ...shot, setAside: { reason: "a chip" } })) };
    const rows = [
      { id: "r1", setAside: { reason: "a chip" } },
      { id: "r2", setAside: null },
    ];
    expect(keptInputs(aside, rows).readings).toEqual([{ id: "r2", setAside: { reason: "a chip" } }]);
    // A shot without a row is told apart as well: there is nothing beside it to say it.
    expect(keptInputs(aside, rows.slice(0, 1)).readings).toEqual([{ id: "r2", setAside: { reason: "a chip" } }]);
    expect(keptInputs(input, rows).readings).toEqual([{ id: "r1", setAside: null }]);
  });
  it("and it goes before the row when the input is put together again", () => {
    const [result] = samplePart("above").results;
    const [first, second] = result!.readings;
    const inputs = {
      ...keptInputs({ ...input, shots: [] }, []),
      readings: [{ id: first!.id, setAside: { reason: "session-check-failed" } }],
    };
    const { input: again, whole } = inputsOfResult({ ...result!, inputs }, "coating");
    expect(whole).toBe(true);
    expect(again.shots.slice(0, 2).map((shot) => [shot.id, shot.setAside])).toEqual([
      [first!.id, { reason: "session-check-failed" }],
      [second!.id, second!.setAside],
    ]);
  });
});

describe("contributions out of a budget", () => {
  it("are relative to the value, and absolute where there is none", () => {
    const [result] = samplePart("above").results;
    const line = { code: "calibration", u: 12, nu: null, type: "B" as const, source: "policy" };
    const budget = [{ ...result!.budget[0]!, ...line }];
    const contributions = (value: number | null) =>
      inputsOfResult({ ...result!, value, budget }, "coating").input.contributions;
    expect(contributions(240)).toMatchObject([{ code: "calibration", relative: 0.05 }]);
    expect(contributions(null)).toMatchObject([{ code: "calibration", absolute: 12 }]);
  });
});
