import { describe, expect, it } from "vitest";
import { guardBand } from "@/lib/limits/guard-band.ts";
import { probabilityAbove } from "@/lib/limits/probability-above.ts";
import { printed, printedList } from "./printed.ts";

const below = (value: number, u: number, limit: number) =>
  probabilityAbove({ value: -value, u, shape: "normal" }, -limit);
const above = (value: number, u: number, limit: number) => probabilityAbove({ value, u, shape: "normal" }, limit);

describe("JCGM 106:2012", () => {
  it("7.3: metal container, lower limit 490 kPa, 509.7 ± 8.6 kPa: conformance probability 0.99 [from memory]", () => {
    printed("p", above(509.7, 8.6, 490), "0.99");
    printed("p, recomputed", above(509.7, 8.6, 490), "0.98901");
  });
  it("7.3: Zener breakdown voltage, upper limit -5.40 V, -5.47 ± 0.05 V: 0.92 [from memory]", () => {
    printed("p", below(-5.47, 0.05, -5.4), "0.92");
    printed("p, recomputed", 1 - above(-5.47, 0.05, -5.4), "0.9192433");
  });
  it("7.4: motor oil viscosity, 12.5 to 16.3 mm²/s, 13.6 ± 1.8: 0.66 [from memory]", () => {
    const p = 1 - below(13.6, 1.8, 12.5) - above(13.6, 1.8, 16.3);
    printed("p", p, "0.66");
    printed("p, recomputed", p, "0.6626298");
  });
  it("Table 1: z = 0.84, 1.28, 1.64, 2.33, 3.09 for conformance 0.80 to 0.999 [from memory]", () => {
    const z = [0.8, 0.9, 0.95, 0.99, 0.999].map((p) => guardBand({ risk: 1 - p, u: 1 }));
    printedList("z", z, "0.84 1.28 1.64 2.33 3.09");
    printedList("recomputed", z, "0.841621 1.281552 1.644854 2.326348 3.090232");
  });
  it("clause 9: precision resistors, process N(1500, 0.12), limits 1499.80 and 1500.20: conforming share 0.9044193, recomputed", () => {
    printed("p", 1 - above(1500, 0.12, 1500.2) - below(1500, 0.12, 1499.8), "0.9044193");
  });
});

describe("ILAC-G8:09/2019", () => {
  it.each([
    [0, 0.5, "5.0000e-1"],
    [1, 0.025, "2.2750e-2"],
    [0.83, 0.05, "4.8457e-2"],
    [1.5, 0.0016, "1.3499e-3"],
    [3, 1e-6, "9.866e-10"],
  ])(
    "Table 1: guard band %d U, risk at the acceptance limit at most %d (exact %s) [0, 1 U read; the rest from memory]",
    (r, bound, exact) => {
      const risk = above(-r * 2, 1, 0);
      expect(risk).toBeLessThanOrEqual(bound);
      printed("exact", risk, exact);
    },
  );
});

describe("EURACHEM/CITAC, Use of uncertainty information in compliance assessment", () => {
  it("g = 1.64 u for 5 % [from memory]; 1.645 to three decimals", () => {
    printed("g", guardBand({ risk: 0.05, u: 1 }), "1.64", 0.5001);
    printed("g, recomputed", guardBand({ risk: 0.05, u: 1 }), "1.644854");
    printed("risk at 1.64 u", above(-1.64, 1, 0), "0.050503");
  });
  it("few degrees of freedom: one-sided t, 2.131847 (4) and 1.833113 (9), recomputed", () => {
    printed("ν = 4", guardBand({ risk: 0.05, u: 1, nu: 4 }), "2.131847");
    printed("ν = 9", guardBand({ risk: 0.05, u: 1, nu: 9 }), "1.833113");
  });
});
