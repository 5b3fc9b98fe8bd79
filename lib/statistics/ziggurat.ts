import { normalUpperTail } from "./distributions.ts";

// The normal density as 256 layers of equal area (Marsaglia and Tsang, J. Stat. Softw. 5 (2000) 8): layer 0 is the strip below
// f(r) with the tail beyond r; layer i reaches from f(edge[i]) up to f(edge[i + 1]) and out to edge[i]. The unnormalised f(x) = exp(−x²/2).
const layers = 256;
const tailFrom = 3.6541528853610088; // r, at which 256 layers of equal area close at the top of the density

const density = (x: number): number => Math.exp(-0.5 * x * x);

/** Right edges of the layers, from the widest (0: as wide as a rectangle of its area) to 0 at the top. */
const edge = new Float64Array(layers + 1);
const height = new Float64Array(layers + 1);
const area = tailFrom * density(tailFrom) + Math.sqrt(2 * Math.PI) * normalUpperTail(tailFrom);
edge[0] = area / density(tailFrom);
edge[1] = tailFrom;
for (let i = 1; i < layers - 1; i++) edge[i + 1] = Math.sqrt(-2 * Math.log(area / edge[i]! + density(edge[i]!)));
for (let i = 0; i <= layers; i++) height[i] = density(edge[i]!);

/**
 * Fills a list with standard normal numbers. `word` gives 32 random bits, `uniform` a number in (0, 1).
 *
 * One layer in 256 is chosen at random and a point across its width: within the next layer's width it lies under the density
 * for certain (98.8 % of the time); otherwise it is held against the density itself, or the tail beyond r is drawn by Marsaglia's method. Layer and
 * sign come from bits that the point does not use (Doornik, An improved ziggurat method, 2005).
 */
export function fillNormals(into: Float64Array, word: () => number, uniform: () => number): void {
  for (let i = 0; i < into.length; ) {
    const first = word();
    const layer = first & 255;
    const across = ((first >>> 9) * 2 ** 30 + (word() >>> 2)) * 2 ** -53 * edge[layer]!;
    let size = across;
    if (across >= edge[layer + 1]!) {
      if (layer === 0) size = tail(uniform);
      else if (height[layer]! + uniform() * (height[layer + 1]! - height[layer]!) >= density(across)) continue;
    }
    into[i++] = (1 - ((first >>> 7) & 2)) * size; // ± by bit 8, without a branch that no processor can foresee
  }
}

/** A normal number beyond r (Marsaglia, Technometrics 6 (1964) 101). */
function tail(uniform: () => number): number {
  for (;;) {
    const beyond = -Math.log(uniform()) / tailFrom;
    if (-2 * Math.log(uniform()) > beyond * beyond) return tailFrom + beyond;
  }
}
