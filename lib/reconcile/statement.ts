import { roundToUncertainty } from "../quantity/round-to-uncertainty.ts";
import type { Combined } from "./budget.ts";
import type { Fit } from "./fit.ts";
import type { ReconcileResult } from "./types.ts";

/**
 * Step 7: the digits as printed. U to two significant digits and the value to the same place (GUM 7.2.6). An asymmetric interval
 * is printed by its ends, to the place that two digits of its shorter arm set; the value goes to the same
 * place. A value without uncertainty is printed to three significant digits, a detection limit as it stands.
 *
 * @example { value: 409.92, U: 11.1 } → { value: "410", U: "11" }
 * @example value 52.3, interval [31.2, 118.6] → { value: "52", interval: ["31", "119"] }
 */
export function statement(fit: Fit, combined: Combined): ReconcileResult["stated"] {
  const below = fit.below === null ? null : plainDecimal(fit.below);
  if (fit.value === null) return { value: "", U: null, interval: null, below };
  if (combined.U !== null && combined.U > 0) {
    const { value, U } = roundToUncertainty(fit.value, combined.U);
    const [lo, hi] = combined.interval ?? [fit.value - combined.U, fit.value + combined.U];
    const place = combined.U;
    return { value, U, interval: [atPlaceOf(lo, place), atPlaceOf(hi, place)], below };
  }
  if (combined.interval === null) return { value: threeDigits(fit.value), U: null, interval: null, below };
  const [lo, hi] = combined.interval;
  const arms = [fit.value - lo, hi - fit.value].filter((arm) => arm > 0);
  const place = arms.length > 0 ? Math.min(...arms) : Math.abs(fit.value) / 100;
  if (!(place > 0))
    return { value: threeDigits(fit.value), U: null, interval: [plainDecimal(lo), plainDecimal(hi)], below };
  return {
    value: atPlaceOf(fit.value, place),
    U: null,
    interval: [atPlaceOf(lo, place), atPlaceOf(hi, place)],
    below,
  };
}

const atPlaceOf = (value: number, place: number): string => roundToUncertainty(value, place).value;

function threeDigits(value: number): string {
  if (value === 0) return "0";
  return roundToUncertainty(value, 10 ** (Math.floor(Math.log10(Math.abs(value))) - 1)).value;
}

/** A number as plain decimal digits without the noise of binary conversion: at most twelve significant digits. */
function plainDecimal(value: number): string {
  const [mantissa = "0", exponent = "0"] = Number(value.toPrecision(12)).toExponential().split("e");
  const digits = mantissa.replace(/[-.]/g, "");
  const point = Number(exponent) + 1;
  const sign = value < 0 ? "-" : "";
  if (point <= 0) return `${sign}0.${"0".repeat(-point)}${digits}`.replace(/^(-?)0\.0*$/, "$10");
  const padded = digits.padEnd(point, "0");
  return sign + (padded.length > point ? `${padded.slice(0, point)}.${padded.slice(point)}` : padded);
}
