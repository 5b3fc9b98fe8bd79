import { describe, expect, it } from "vitest";
import { compareNames } from "@/lib/reconcile/canonical-order.ts";
import { emptyFit } from "@/lib/reconcile/fit.ts";
import { statement } from "@/lib/reconcile/statement.ts";
import { missed, resultOf, seen } from "./shots.ts";

describe("step 7: the digits as printed", () => {
  it("rounds U to two significant digits and the value to match", () => {
    const stated = resultOf([seen(0.1234, 0.01, { spot: "a" })]).stated;
    expect(stated).toEqual({ value: "0.123", U: "0.020", interval: ["0.104", "0.143"], below: null });
  });
  it("rounds to tens where U is in the hundreds", () => {
    expect(resultOf([seen(12345, 100, { spot: "a" })]).stated).toMatchObject({ value: "12340", U: "200" });
  });
  it("states an asymmetric interval by its ends, to the place of its shorter arm", () => {
    const { stated, interval, value } = resultOf([seen(120, 4), seen(60, 3), seen(210, 6), seen(95, 3), seen(150, 5)]);
    expect(stated.U).toBeNull();
    expect(stated.value).toBe(String(Math.round(value ?? 0)));
    expect(stated.interval).toEqual((interval ?? []).map((end) => String(Math.round(end))));
  });
  it("prints a detection limit without binary noise", () => {
    expect(resultOf([missed(0.0012, { unit: "%" })]).stated.below).toBe("12");
    expect(
      resultOf([missed(0.00005, { quantity: "leachate", unit: "µg/mL" })], { quantity: "leachate" }).stated.below,
    ).toBe("0.00005");
    expect(resultOf([missed(1250)]).stated.below).toBe("1250");
  });
  it("prints a value without uncertainty to three significant digits", () => {
    expect(resultOf([seen(1234.5, null)]).stated.value).toBe("1230");
    expect(resultOf([seen(-0.01234, null)]).stated.value).toBe("-0.0123");
  });
  it("takes the interval as value ± U where none is stated, and a difference below zero as it stands", () => {
    const combined = { lines: [], u: 5.5, nuEff: null, k: 2, U: 11.1, interval: null, asymmetric: false, notes: [] };
    expect(statement({ ...emptyFit, value: 409.92 }, combined)).toMatchObject({
      value: "410",
      U: "11",
      interval: ["399", "421"],
    });
    expect(statement({ ...emptyFit, below: -0.5 }, { ...combined, u: null, U: null }).below).toBe("-0.5");
  });
  it("orders names: numerals by size, then the others; a name beside itself is equal", () => {
    expect(["b", "10", "a", "2"].sort(compareNames)).toEqual(["2", "10", "a", "b"]);
    expect(compareNames("a", "a")).toBe(0);
  });
});
