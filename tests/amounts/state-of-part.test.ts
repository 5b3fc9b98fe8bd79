import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { parseAmounts, serialiseAmounts } from "@/lib/amounts/amounts-form.ts";
import { computeAmounts } from "@/lib/amounts/compute-amounts.ts";
import { readQuantity } from "@/lib/amounts/read-quantity.ts";
import { quantityText, stateOfPart } from "@/lib/amounts/state-of-part.ts";

const lead = {
  element: "Pb",
  quantity: "bulk-mass-fraction",
  state: "quantified" as const,
  value: 412,
  u: 18,
  interval: [376, 448] as const,
  below: null,
  upperBound: null,
  range: null,
};

describe("the state of a published part", () => {
  test("weight times content: 350 g at 412 mg/kg is 144.2 mg", () => {
    const state = stateOfPart({ massG: 350, areaCm2: null }, lead, { loading: 5 });
    expect(state).toMatchObject({
      element: "Pb",
      from: "weight",
      weight: "350",
      content: "412 (376 to 448)",
      loading: "5",
    });
    if (state === null) throw new Error("no state");
    expect(computeAmounts(state, 1, { draws: 2000 }).mass?.mass.value).toBeCloseTo(144.2, 9);
    expect(parseAmounts(new URLSearchParams(serialiseAmounts(state)))).toEqual(state);
  });
  test("area times areal loading: 25 cm² at 1.0 mg/cm² is 25 mg (limits.md part D5)", () => {
    const coat = { ...lead, quantity: "coating-areal", value: 1, u: 0.1, interval: [0.8, 1.2] as const };
    const state = stateOfPart({ massG: 12, areaCm2: 25 }, coat);
    if (state === null) throw new Error("no state");
    expect(computeAmounts(state, 1, { draws: 2000 }).mass?.mass.value).toBeCloseTo(25, 9);
  });
  test("not detected becomes at most", () => {
    const state = stateOfPart({ massG: 100, areaCm2: null }, { ...lead, state: "not-detected", value: null, below: 5 });
    if (state === null) throw new Error("no state");
    expect(state.content).toBe("< 5");
    expect(computeAmounts(state, 1, { draws: 2000 }).mass?.mass).toMatchObject({ atMost: true });
  });
  test("null where the weight, the area or the content is not known", () => {
    expect(stateOfPart({ massG: null, areaCm2: 25 }, lead)).toBeNull();
    expect(stateOfPart({ massG: 12, areaCm2: null }, { ...lead, quantity: "coating-areal" })).toBeNull();
    expect(stateOfPart({ massG: 12, areaCm2: null }, { ...lead, quantity: "leachate" })).toBeNull();
    expect(stateOfPart({ massG: 12, areaCm2: null }, { ...lead, state: "no-readings" })).toBeNull();
  });
});

test("what is written is read back", () => {
  const number = fc.double({ min: -6, max: 6, noNaN: true }).map((p) => Number((10 ** p).toPrecision(6)));
  fc.assert(
    fc.property(number, number, number, (a, b, c) => {
      const [low, value, high] = [a, b, c].sort((x, y) => x - y) as [number, number, number];
      for (const input of [
        { below: value },
        { value, u: 0 },
        { min: low, max: high, shape: "rectangular" as const },
        { min: low, max: high, shape: "lognormal" as const },
        { value, interval: [low, high] as const },
      ]) {
        const read = readQuantity(quantityText(input), { field: "content" });
        expect(read.ok && read.value).toEqual(input);
      }
    }),
  );
});
