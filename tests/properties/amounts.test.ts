import fc from "fast-check";
import { expect, test } from "vitest";
import { alloyDensity } from "@/lib/amounts/alloy-density.ts";
import { amountsSchema, parseAmounts, serialiseAmounts } from "@/lib/amounts/amounts-form.ts";
import { contentOfCoat, loadingOfCoat } from "@/lib/amounts/coating.ts";
import { computeAmounts } from "@/lib/amounts/compute-amounts.ts";
import { geometries, geometryShapes } from "@/lib/amounts/geometry.ts";
import { halvingLadder, halvingsTo } from "@/lib/amounts/halving.ts";
import { elementMass } from "@/lib/amounts/mass.ts";
import { areaAtLoading, loadingOnArea, massOnArea } from "@/lib/amounts/spread.ts";
import type { UncertainInput } from "@/lib/amounts/types.ts";
import type { Outcome } from "@/lib/quantity/problem.ts";

const run = { seed: 1, draws: 500 };
const exact = (value: number): UncertainInput => ({ value, u: 0 });
const get = <T>(outcome: Outcome<T>): T => {
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
};
const size = fc.double({ min: 0.01, max: 1000, noNaN: true });
const ppm = fc.double({ min: 0.1, max: 1e6, noNaN: true });
const anyInput: fc.Arbitrary<UncertainInput> = fc.oneof(
  fc.record({ value: size, relative: fc.double({ min: 0, max: 3, noNaN: true }) }).map(({ value, relative }) => ({
    value,
    u: value * relative,
  })),
  fc
    .record({
      min: size,
      width: fc.double({ min: 1, max: 100, noNaN: true }),
      shape: fc.constantFrom("rectangular" as const, "triangular" as const, "normal" as const, "lognormal" as const),
    })
    .map(({ min, width, shape }) => ({ min, max: min * width, shape })),
  fc
    .record({
      value: size,
      low: fc.double({ min: 0, max: 1, noNaN: true }),
      high: fc.double({ min: 1, max: 20, noNaN: true }),
    })
    .filter(({ low }) => low === 0 || low > 1e-6)
    .map(({ value, low, high }) => ({ value, interval: [value * low, value * high] as const })),
);
const close = (a: number, b: number) => expect(Math.abs(a - b)).toBeLessThanOrEqual(1e-9 * Math.abs(b));

test("a shape twice as large in every length holds eight times as much", () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...geometryShapes),
      fc.array(size, { minLength: 3, maxLength: 3 }),
      (shape, numbers) => {
        const { dimensions, flaw, volume } = geometries[shape];
        const names = Object.keys(dimensions);
        const sizes = Object.fromEntries(names.map((name, i) => [name, numbers[i] as number]));
        fc.pre(flaw(sizes) === null);
        const doubled = Object.fromEntries(
          names.map((name) => [name, (sizes[name] as number) * (dimensions[name] === "area" ? 4 : 2)]),
        );
        close(volume(doubled), 8 * volume(sizes));
      },
    ),
  );
});

test("mass grows in proportion to weight and to content", () => {
  fc.assert(
    fc.property(size, ppm, fc.double({ min: 0.01, max: 1, noNaN: true }), (weight, content, factor) => {
      const mass = (w: number, c: number) =>
        get(elementMass({ by: "weighed", weight: exact(w), content: exact(c) }, run)).mass.value;
      close(mass(weight * factor, content), factor * mass(weight, content));
      close(mass(weight, content * factor), factor * mass(weight, content));
    }),
  );
});

test("whatever is uncertain, intervals lie above zero, in order, and shares sum to one", () => {
  fc.assert(
    fc.property(anyInput, anyInput, (area, loading) => {
      const { mass, shares } = get(elementMass({ by: "coat", area, loading }, run));
      expect(mass.interval[0]).toBeGreaterThanOrEqual(0);
      expect(mass.shortest[0]).toBeGreaterThanOrEqual(0);
      expect(mass.interval[1]).toBeGreaterThanOrEqual(mass.interval[0]);
      const sum = shares.reduce((total, one) => total + one.share, 0);
      expect(mass.u === 0 ? sum : sum - 1).toBeCloseTo(0, 9);
    }),
    { numRuns: 60 },
  );
});

test("mass → area → mass and mass → loading → mass come back", () => {
  fc.assert(
    fc.property(size, size, (mass, other) => {
      const area = get(areaAtLoading({ mass: exact(mass), loading: exact(other) }, run)).value;
      close(get(massOnArea({ area: exact(area), loading: exact(other) }, run)).value, mass);
      const loading = get(loadingOnArea({ mass: exact(mass), area: exact(other) }, run)).value;
      close(get(massOnArea({ area: exact(other), loading: exact(loading) }, run)).value, mass);
    }),
  );
});

test("content → areal loading → content comes back", () => {
  fc.assert(
    fc.property(ppm, size, size, (content, thickness, density) => {
      const coat = { thickness: exact(thickness), density: { from: "entered" as const, density: exact(density) } };
      const loading = get(loadingOfCoat(exact(content), coat, run)).value;
      const back = contentOfCoat(exact(loading), coat, run);
      // All lead, worked out and back, may come to a hair over all lead.
      if (!back.ok) expect(content).toBeGreaterThan(999_999.99);
      else close(back.value.value, content);
    }),
  );
});

test("halving a mass halves the loading; the ladder ends at the first step at or below its target", () => {
  fc.assert(
    fc.property(size, size, size, (mass, loading, target) => {
      const n = halvingsTo(loading, target);
      expect(loading / 2 ** n).toBeLessThanOrEqual(target * (1 + 1e-12));
      if (n > 0) expect(loading / 2 ** (n - 1)).toBeGreaterThan(target);
      const ladder = halvingLadder({ mass, loading }, target);
      expect(ladder).toHaveLength(Math.max(1, n) + 1);
      for (const [i, step] of ladder.entries()) {
        expect(step.mass).toBe(mass / 2 ** i);
        expect(step.loading).toBe(loading / 2 ** i);
      }
    }),
  );
});

test("an alloy lies between its metals and below their linear mean", () => {
  fc.assert(
    fc.property(fc.double({ min: 0, max: 1, noNaN: true }), size, size, (w, first, second) => {
      const rho = alloyDensity([
        { w, density: first },
        { w: 1 - w, density: second },
      ]);
      expect(rho).toBeGreaterThanOrEqual(Math.min(first, second) * (1 - 1e-12));
      expect(rho).toBeLessThanOrEqual((w * first + (1 - w) * second) * (1 + 1e-12));
    }),
  );
});

const keys = Object.keys(amountsSchema.shape);
const written = fc.oneof(
  fc.constantFrom(
    "",
    "5",
    "1 to 2",
    "2 to 1",
    "0",
    "-3",
    "< 4",
    "7 ± 1",
    "9 (8 to 12)",
    "1e300",
    "1,5",
    "1,500",
    "2,5 a 3,7",
    "2020-01-01",
    "Pb",
    "Sn",
    "%",
    "coat",
    "tube",
    "weight",
    "amount",
    "alloy",
    "entered",
    "paint",
    "yes",
  ),
  fc.string({ maxLength: 12 }),
);
test("any address is read, and what it means survives being written and read again", () => {
  fc.assert(
    fc.property(fc.dictionary(fc.constantFrom(...keys), written), (search) => {
      const state = parseAmounts(search);
      expect(parseAmounts(new URLSearchParams(serialiseAmounts(state)))).toEqual(state);
    }),
  );
});
test("whatever was typed, the calculator answers and never throws", () => {
  fc.assert(
    fc.property(fc.dictionary(fc.constantFrom(...keys), written, { minKeys: 8 }), (search) => {
      const result = computeAmounts(parseAmounts(search), 1, { draws: 200 });
      if (result.amount !== null) expect(result.amount.interval[0]).toBeGreaterThanOrEqual(0);
      for (const problem of result.problems) expect(problem.code).toMatch(/^[a-z0-9-]+$/);
    }),
    { numRuns: 400 },
  );
});
