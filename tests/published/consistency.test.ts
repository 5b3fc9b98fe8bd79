import { describe, expect, it } from "vitest";
import { checkChart } from "@/lib/consistency/check-chart.ts";
import type { LocatedReading } from "@/lib/consistency/located-reading.ts";
import { recoveryLine } from "@/lib/consistency/recovery-line.ts";
import { sessionPrecision } from "@/lib/consistency/session-precision.ts";
import { varianceComponents } from "@/lib/consistency/variance-components.ts";
import { mandelHCritical } from "@/lib/statistics/mandel-h-critical.ts";
import { mandelKCritical } from "@/lib/statistics/mandel-k-critical.ts";
import { printed, printedList, worked } from "./printed.ts";

const located = (value: number, at: Partial<LocatedReading>): LocatedReading => ({
  id: "",
  value,
  specimen: null,
  instrument: null,
  operator: null,
  session: null,
  spot: null,
  ...at,
});

describe("ISO 5725-2:1994 Tables 6 and 7, Mandel's critical values", () => {
  const { columns, rows } = worked.criticalValues;
  it.each(rows.map((row) => [row[0] as number, row] as const))("%d laboratories, recomputed table", (p, row) => {
    const cell = (column: string) => (row[columns.indexOf(column)] as number).toFixed(2);
    printed("h 1 %", mandelHCritical(p, { alpha: 0.01 }), cell("h1"));
    printed("h 5 %", mandelHCritical(p), cell("h5"));
    for (const n of [2, 3, 4, 5]) {
      printed(`k 1 %, n = ${n}`, mandelKCritical(n - 1, (p - 1) * (n - 1), { alpha: 0.01 }), cell(`k1n${n}`));
      printed(`k 5 %, n = ${n}`, mandelKCritical(n - 1, (p - 1) * (n - 1)), cell(`k5n${n}`));
    }
  });
  it("spot checks, h: 1 % 1.15 to 2.18 and 5 % 1.15 to 1.80 for 3 to 10 laboratories [from memory; h(4) is printed 1.49 and 1.42]", () => {
    const labs = [3, 4, 5, 6, 7, 8, 9, 10];
    printedList(
      "1 %",
      labs.map((p) => mandelHCritical(p, { alpha: 0.01 })),
      "1.15 1.49 1.72 1.87 1.98 2.06 2.13 2.18",
      1,
    );
    printedList(
      "5 %",
      labs.map((p) => mandelHCritical(p)),
      "1.15 1.42 1.57 1.66 1.71 1.75 1.78 1.80",
      1,
    );
  });
  it("ASTM E691-99: h 2.15 and k 2.06 at 0.5 %, 8 laboratories, 3 results", () => {
    printed("h", mandelHCritical(8, { alpha: 0.005 }), "2.15");
    printed("k", mandelKCritical(2, 14, { alpha: 0.005 }), "2.06");
    printed("h recomputed", mandelHCritical(8, { alpha: 0.005 }), "2.152492");
    printed("k recomputed", mandelKCritical(2, 14, { alpha: 0.005 }), "2.060840");
  });
});

describe("ASTM E691-99, glucose in serum, laboratories in the place of sessions", () => {
  const of = (material: "A" | "B" | "C" | "D" | "E") => {
    const r = sessionPrecision(
      worked.glucose[material].flatMap((values, lab) =>
        values.map((value) => located(value, { session: `lab ${lab + 1}` })),
      ),
    );
    if (r.status !== "ok") throw new Error(r.status);
    return r;
  };
  it("material C as listed (148.30): laboratory 4 stands apart by its mean and its spread", () => {
    const r = of("C");
    const lab = r.sessions[3];
    printed("h", lab?.h, "2.1413");
    printed("k", lab?.k, "2.4088");
    expect([lab?.hMark, lab?.kMark]).toEqual(["outlier", "outlier"]);
    expect(r.sessions.filter(({ kMark }) => kMark === "outlier").map(({ session }) => session)).toEqual(["lab 4"]);
    expect(r.cochran?.session).toBe("lab 4");
    expect(r.grubbs?.session).toBe("lab 4");
  });
  it("material A: laboratory 4's spread, k = 1.7040, lies between the 5 % value 1.68 and the 1 % value 1.96: a straggler", () => {
    const { sessions } = of("A");
    printed("k", sessions[3]?.k, "1.7040");
    expect(sessions.map(({ kMark }) => kMark)).toEqual([
      ...Array(3).fill("none"),
      "straggler",
      ...Array(4).fill("none"),
    ]);
    // h(7) = -1.7516 and h(8) = 1.7461 on either side of the 5 % value, 1.7491.
    expect(sessions.map(({ hMark }) => hMark).slice(6)).toEqual(["straggler", "none"]);
  });
  it("material D: r = 7.35 and R = 9.42 by the factor 2.8 [precision table from memory]", () => {
    const { limits } = of("D");
    printed("r", limits.repeatability, "7.35");
    printed("R", limits.reproducibility, "9.42");
  });
  it("material E: laboratory 2's spread, k = 2.33, is an outlier", () => {
    const lab = of("E").sessions[1];
    printed("k", lab?.k, "2.33");
    expect(lab?.kMark).toBe("outlier");
  });
});

describe("NIST/SEMATECH e-Handbook 3.2.3.3", () => {
  it("five machines, two operators each: MS 0.0000758, 0.00000372, 0.0000087; the operator component is negative and set to 0 [from memory]", () => {
    const r = varianceComponents(
      worked.operators.flatMap((machine, i) =>
        machine.flatMap((values, j) =>
          values.map((value) => located(value / 1000, { instrument: `${i}`, operator: `${j}` })),
        ),
      ),
      { outer: "instrument", inner: "operator" },
    );
    if (r.status !== "ok") throw new Error(r.status);
    const [machines, operators, repeat] = r.components.map(({ anovaRaw }) => anovaRaw) as [number, number, number];
    // Mean squares from the components: error, error + 5·operator, and that + 10·machine. Printed as cut from unrounded data.
    printed("MS error", repeat * 1e6, "8.65");
    printed("MS operators", (repeat + 5 * operators) * 1e6, "3.72");
    printed("MS machines", (repeat + 5 * operators + 10 * machines) * 1e6, "75.83");
    expect(operators).toBeLessThan(0);
    expect(r.components[1]).toMatchObject({ anova: 0, reml: 0, share: 0 });
  });
});

describe("Montgomery, Introduction to Statistical Quality Control", () => {
  it("Example 9.1: the data as check readings of a standard of 10 about a known mean and sigma: the CUSUM speaks up at 29 and 30", () => {
    const r = checkChart(
      worked.montgomery.map((value, i) => ({
        id: `${i + 1}`,
        takenAt: new Date(Date.UTC(2026, 0, i + 1)).toISOString(),
        value,
        u: null,
        detectionLimit: null,
      })),
      { certified: 10, baseline: { mean: 1, sd: 0.1 } },
    );
    if (r.status !== "ok") throw new Error(r.status);
    expect(r.signals.cusum).toEqual(["29", "30"]);
    expect(r.signals.individuals).toEqual([]);
  });
});

describe("York et al., Am. J. Phys. 2004, 72, 367, Table II, as standards read", () => {
  it("S/(n - 2) = 1.483294149 is above 1, so the errors are widened: 0.359 and 0.0706 (Cantrell 2008)", () => {
    const x = [0, 0.9, 1.8, 2.6, 3.3, 4.4, 5.2, 6.1, 6.5, 7.4];
    const wx = [1000, 1000, 500, 800, 200, 80, 60, 20, 1.8, 1];
    const y = [5.9, 5.4, 4.4, 4.6, 3.5, 3.7, 2.8, 2.8, 2.4, 1.5];
    const wy = [1, 1.8, 4, 8, 20, 20, 70, 70, 100, 500];
    const r = recoveryLine(
      x.map((certified, i) => ({
        certified,
        uCertified: 1 / Math.sqrt(wx[i] as number),
        read: y[i] as number,
        uRead: 1 / Math.sqrt(wy[i] as number),
      })),
    );
    printed("slope", r.recovery, "-0.48053340745");
    printed("widened²", r.widened ** 2, "1.483294149");
    printed("u(slope)", r.uRecovery, "0.0706");
    printed("u(offset)", r.uOffset, "0.359");
    expect(r.recoveryDiffers).toBe(true);
  });
});
