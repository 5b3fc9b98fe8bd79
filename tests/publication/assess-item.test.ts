import { describe, expect, it } from "vitest";
import { readingDepth, shareOfThick } from "@/lib/attenuation/reading-depth.ts";
import { type AssessInput, type AssessReading, assessItem } from "@/lib/publication/assess-item.ts";
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
    item: {
      ...{ name: "Invented mug", aliases: [], marks: "", maker: null, gtin: null, category: "mug-or-cup" },
      ...{ ageGroup: "adult", foodContact: true, mouthable: false, description: "" },
    },
    specimens: [
      {
        ...{ id: "s1", label: "One", howGot: "", whoPaid: "", gotOn: null, dateCode: null, condition: null },
        parts: [whole],
      },
    ],
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
