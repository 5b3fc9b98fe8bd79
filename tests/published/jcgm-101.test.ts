import { describe, it } from "vitest";
import { combine } from "@/lib/statistics/combine.ts";
import { moments } from "@/lib/statistics/moments.ts";
import { printed } from "./printed.ts";

describe("JCGM GUM-5:2026, linear propagation", () => {
  it("example 3: relative molecular mass of glucose, 180.1557, u 0.0038", () => {
    printed("M", 12 * 1.00798 + 6 * 12.0106 + 6 * 15.9994, "180.1557", 1);
    const { u } = combine([{ u: 12 * 0.00008 }, { u: 6 * 0.00058 }, { u: 6 * 0.00021 }]);
    printed("u", u, "0.0038");
    printed("u, recomputed", u, "0.00382356");
  });
  it("example 14: decay correction, 10.810 kBq, u 0.054", () => {
    const rate = Math.LN2 / 32.9;
    const left = Math.exp(-rate * 2.73);
    printed("A", 11.45 * left, "10.810");
    const { u } = combine([{ u: 0.05 * left }, { u: (11.45 * left * rate * 2.73 * 1.4) / 32.9 }]);
    printed("u", u, "0.054");
    printed("u, recomputed", u, "0.0541142");
  });
  it("example 15: breaking force, mean 10005.7 kN, u(mean) 0.7, uc 9.9, U95 19.4", () => {
    const { mean, sd, n } = moments([10006, 10007, 10005, 10008, 10003, 10005]);
    printed("mean", mean, "10005.7");
    printed("u(mean)", sd / Math.sqrt(n), "0.7");
    const { u, U } = combine([
      { u: sd / Math.sqrt(n) },
      ...[6.8, 8.2, 8.7, 10.2].map((halfWidth) => ({ u: halfWidth / Math.sqrt(3) })),
    ]);
    printed("uc", u, "9.9");
    printed("U95", U, "19.4");
    printed("uc, recomputed", u, "9.9120");
  });
  it("example 7 (JCGM 101:2008 9.3): mass calibration, first order u = 0.0539 mg", () => {
    const { u } = combine([{ u: 0.05 }, { u: 0.02 }]);
    printed("u", u, "0.0539");
    printed("u, recomputed", u, "0.0538516");
  });
});

describe("NIST TN 1900 (2015)", () => {
  it("E13: thermal expansion coefficient, first order u = 1.76e-6", () => {
    const slope = 1 / (1.4999 * 84.95);
    const estimate = (1.5021 - 1.4999) * slope;
    const { u } = combine([
      { u: 0.0002 * slope, nu: 3 },
      { u: (0.0001 * slope * 1.5021) / 1.4999, nu: 3 },
      { u: (0.02 * estimate) / 84.95, nu: 3 },
      { u: (0.05 * estimate) / 84.95, nu: 3 },
    ]);
    printed("estimate", estimate, "1.7266e-5");
    printed("u", u, "1.76e-6");
  });
});

describe("JCGM 101:2008, exact values", () => {
  it("9.2.2: four standard normals, u = 2.00, 95 % interval ±3.92", () => {
    const { u, U } = combine([{ u: 1 }, { u: 1 }, { u: 1 }, { u: 1 }]);
    printed("u", u, "2.00");
    printed("U", U, "3.92");
    printed("U, recomputed", U, "3.919928");
  });
  it("9.2.4: one dominant rectangular, u = 10.1; the framework's ±19.9 (the true interval is ±17.0)", () => {
    const { u, U } = combine([{ u: 1 }, { u: 1 }, { u: 1 }, { u: 10 }]);
    printed("u", u, "10.1");
    printed("U", U, "19.9");
  });
});
