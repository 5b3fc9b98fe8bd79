import { describe, expect, test } from "vitest";
import { iecScreening } from "@/lib/limits/iec-screening.ts";

describe("IEC 62321-3-1:2013 screening table (as reproduced in a test report); check value D10", () => {
  test("lead in a polymer, 3σ = 60: under to 640, over from 1360", () => {
    const at = (value: number) => iecScreening({ element: "Pb", matrix: "polymer", value, sigma: 20 });
    expect(at(640)).toEqual({ band: "under", underUpTo: 640, overFrom: 1360 });
    expect([at(641).band, at(1359).band, at(1360).band]).toEqual(["between", "between", "over"]);
  });
  test("lead in a composite: under to 440, over from 1560", () => {
    expect(iecScreening({ element: "Pb", matrix: "composite", value: 500, sigma: 20 })).toEqual({
      band: "between",
      underUpTo: 440,
      overFrom: 1560,
    });
  });
  test("cadmium in a polymer, 3σ = 30: under to 40, over from 160", () => {
    expect(iecScreening({ element: "Cd", matrix: "polymer", value: 40, sigma: 10 })).toEqual({
      band: "under",
      underUpTo: 40,
      overFrom: 160,
    });
  });
  test("at 3σ of 70 or more nothing can be under, not even a non-detect", () => {
    for (const sigma of [70 / 3, 40])
      expect(iecScreening({ element: "Cd", matrix: "polymer", value: null, below: 1, sigma })).toMatchObject({
        band: "between",
        underUpTo: null,
      });
  });
  test("cadmium in a composite: only a non-detect is under", () => {
    const composite = { element: "Cd", matrix: "composite", sigma: 10 } as const;
    expect(iecScreening({ ...composite, value: null, below: 60 }).band).toBe("under");
    expect(iecScreening({ ...composite, value: 1 }).band).toBe("between");
    expect(iecScreening({ ...composite, value: 180 }).band).toBe("over");
  });
  test("mercury as lead", () => {
    expect(iecScreening({ element: "Hg", matrix: "metal", value: 700, sigma: 0 })).toEqual({
      band: "under",
      underUpTo: 700,
      overFrom: 1300,
    });
  });
  test("bromine and chromium are never over; bromine in a metal has no row", () => {
    for (const element of ["Br", "Cr"] as const)
      expect(iecScreening({ element, matrix: "polymer", value: 1e6, sigma: 20 })).toMatchObject({
        band: "between",
        overFrom: null,
      });
    expect(iecScreening({ element: "Br", matrix: "composite", value: 220, sigma: 10 })).toMatchObject({
      band: "under",
    });
    expect(iecScreening({ element: "Br", matrix: "metal", value: 10, sigma: 1 }).band).toBe("none");
  });
  test("a non-detect with too high a limit is between", () => {
    expect(iecScreening({ element: "Pb", matrix: "polymer", value: null, below: 700, sigma: 20 }).band).toBe("between");
  });
  test("refused", () => {
    expect(() => iecScreening({ element: "Pb", matrix: "polymer", value: -1, sigma: 1 })).toThrow(/zero or more/);
    expect(() => iecScreening({ element: "Pb", matrix: "polymer", value: 1, sigma: Number.NaN })).toThrow(/finite/);
    expect(() => iecScreening({ element: "Pb", matrix: "polymer", value: null, sigma: 1 })).toThrow(/detection limit/);
  });
});
