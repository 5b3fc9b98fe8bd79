/** A log scale from a domain to fractions of a width, with a little room kept at both ends for what lies beyond. */
export type LogAxis = { domain: readonly [number, number]; at: (value: number) => number; off: (value: number) => Off };
export type Off = "left" | "right" | null;

const edge = 0.025;

/** `logAxis([1, 100]).at(10)` is 0.5. Values beyond the domain are put at its edge and `off` says which. */
export function logAxis(domain: readonly [number, number]): LogAxis {
  const [lo, hi] = [Math.log10(domain[0]), Math.log10(domain[1])];
  const off = (value: number): Off => (value < domain[0] ? "left" : value > domain[1] ? "right" : null);
  const at = (value: number): number => {
    if (!(value > domain[0])) return edge;
    if (value >= domain[1]) return 1 - edge;
    return edge + (1 - 2 * edge) * ((Math.log10(value) - lo) / (hi - lo));
  };
  return { domain, at, off };
}

/**
 * A domain that shows all the values with room to spare, at least one decade wide and at most six. Where they spread
 * further, `anchor` (the result) stays in view and what is left out is marked at the edge.
 */
export function logDomain(values: readonly number[], anchor: number | null): [number, number] {
  const usable = values.filter((value) => Number.isFinite(value) && value > 0);
  if (usable.length === 0) return [1, 1000];
  let lo = Math.log10(Math.min(...usable)) - 0.2;
  let hi = Math.log10(Math.max(...usable)) + 0.2;
  const short = 1 - (hi - lo);
  if (short > 0) {
    lo -= short / 2;
    hi += short / 2;
  }
  if (hi - lo > 6) {
    const middle = Math.log10(anchor !== null && anchor > 0 ? anchor : Math.min(...usable));
    lo = Math.max(lo, middle - 3);
    hi = Math.min(hi, lo + 6);
    lo = Math.max(Math.min(lo, hi - 1), hi - 6);
  }
  return [10 ** lo, 10 ** hi];
}

const steps = [1, 2, 5] as const;

/** Decades inside the domain, and, where there are fewer than three, the 2s and 5s between them. Coarse ones first. */
export function logTicks(domain: readonly [number, number]): { value: number; major: boolean }[] {
  const ticks: { value: number; major: boolean }[] = [];
  for (let power = Math.floor(Math.log10(domain[0])); power <= Math.ceil(Math.log10(domain[1])); power++)
    for (const step of steps) {
      const value = Number(`${step}e${power}`);
      if (value >= domain[0] && value <= domain[1]) ticks.push({ value, major: step === 1 });
    }
  const major = ticks.filter((tick) => tick.major);
  return major.length >= 3 ? major : [...major, ...ticks.filter((tick) => !tick.major)];
}
