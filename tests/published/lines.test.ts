import { describe, expect, it } from "vitest";
import { inversePrediction } from "@/lib/statistics/inverse-prediction.ts";
import { weightedLine } from "@/lib/statistics/weighted-line.ts";
import { york } from "@/lib/statistics/york.ts";
import { printed } from "./printed.ts";

const x = [0, 0.9, 1.8, 2.6, 3.3, 4.4, 5.2, 6.1, 6.5, 7.4];
const y = [5.9, 5.4, 4.4, 4.6, 3.5, 3.7, 2.8, 2.8, 2.4, 1.5];
const fromWeights = (weights: number[]) => weights.map((weight) => 1 / Math.sqrt(weight));
const ux = fromWeights([1000, 1000, 500, 800, 200, 80, 60, 20, 1.8, 1]);
const uy = fromWeights([1, 1.8, 4, 8, 20, 20, 70, 70, 100, 500]);
const ones = x.map(() => 1);

describe("Pearson's points with York's weights", () => {
  it("York et al., Am. J. Phys. 2004, 72, 367, Table II: a = 5.47991022403, b = -0.48053340745", () => {
    const r = york(x, y, ux, uy);
    printed("a", r.intercept, "5.47991022403");
    printed("b", r.slope, "-0.48053340745");
  });
  it("York et al. 2004: sigma_a = 0.294970735, sigma_b = 0.0579850090, S/(n - 2) = 1.483294149", () => {
    const r = york(x, y, ux, uy);
    printed("sigma_a", r.seIntercept, "0.294970735", 1);
    printed("sigma_b", r.seSlope, "0.0579850090");
    printed("S/(n - 2)", r.s / 8, "1.483294149");
    printed("covariance, recomputed", r.cov, "-0.016472545");
    printed("r, recomputed (one public test lists another quantity)", r.cov / r.seIntercept / r.seSlope, "-0.963088");
  });
  it("Cantrell 2008: errors scaled by the fit, 0.359 and 0.0706", () => {
    const r = york(x, y, ux, uy);
    const scale = Math.sqrt(r.s / 8);
    printed("sigma_a", r.seIntercept * scale, "0.359");
    printed("sigma_b", r.seSlope * scale, "0.0706");
  });
  it("Kalantar 1992 and Mahon 1996 state other errors for the same line (0.0576): the formulas differ from York's 0.0580", () => {
    const { seSlope } = york(x, y, ux, uy);
    expect(Math.abs(seSlope - 0.057617)).toBeGreaterThan(3e-4);
    expect(Math.abs(seSlope - 0.05760009)).toBeGreaterThan(3e-4);
  });
});

describe("Pearson's points, equal weights", () => {
  it("Pearson 1901; Fuller: orthogonal line, a = 5.784, b = -0.5456 [from memory]", () => {
    const r = york(x, y, ones, ones);
    printed("a", r.intercept, "5.784");
    printed("b", r.slope, "-0.5456");
    printed("a, recomputed", r.intercept, "5.784043775");
    printed("b, recomputed", r.slope, "-0.545561198");
    printed("a through (3.82, 3.70) with the rounded slope is 5.7857", 3.7 + 0.546 * 3.82, "5.7857");
  });
  it("ordinary least squares of the same points: 5.76118519 (0.18948520), -0.53957727 (0.04212655), s 0.31635888, recomputed", () => {
    const unit = weightedLine(x, y, ones);
    const s = Math.sqrt(unit.chi2 / unit.df);
    printed("s", s, "0.31635888");
    const r = weightedLine(
      x,
      y,
      x.map(() => s),
    );
    printed("intercept", r.intercept, "5.76118519");
    printed("slope", r.slope, "-0.53957727");
    printed("se intercept", r.seIntercept, "0.18948520");
    printed("se slope", r.seSlope, "0.04212655");
  });
  it("York with no error in x is the weighted line of ISO/TS 28037 clause 6", () => {
    const none = x.map(() => 0);
    const line = weightedLine(x, y, uy);
    const r = york(x, y, none, uy);
    expect(r.slope).toBeCloseTo(line.slope, 12);
    expect(r.intercept).toBeCloseTo(line.intercept, 12);
    expect(r.s).toBeCloseTo(line.chi2, 10);
  });
});

describe("JCGM GUM-5:2026", () => {
  it("example 1: pH by two-point interpolation, 7.0002 (the line through the two standards read backwards)", () => {
    const line = weightedLine([6.864, 7.4157], [6.15, -26.35], [0.0289, 0.0289]);
    const r = inversePrediction(line, { y0: -1.875, uY0: 0.025 });
    printed("pH", r.x, "7.0002");
    printed("pH, recomputed", r.x, "7.00022746");
  });
  it("example 1: u = 0.0041, with the uncertainty of the standards' pH carried in by York's errors in x", () => {
    const line = york([6.864, 7.4157], [6.15, -26.35], [0.0051, 0.0051], [0.0289, 0.0289]);
    const r = inversePrediction(line, { y0: -1.875, uY0: 0.025 });
    printed("u", r.u, "0.0041");
    printed("u, recomputed", r.u, "0.00408265");
  });
});
