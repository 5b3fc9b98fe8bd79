import { DomainError } from "../quantity/domain-error.ts";

/** Uniform numbers in (0, 1) and standard normal ones, the same for the same seed on every machine. */
export type RandomStream = { uniform: () => number; normal: () => number };

/**
 * A seeded stream: xoshiro128** (Blackman and Vigna, ACM Trans. Math. Softw. 47 (2021) 36), its state filled from the seed by
 * splitmix32. Uniform numbers carry 53 bits and are never 0 or 1; normal ones by Marsaglia's polar method.
 * Refuses (DomainError) a seed that is not a whole number from 0 to 2⁵³ − 1.
 */
export const randomStream = (seed: number): RandomStream => {
  if (!Number.isSafeInteger(seed) || seed < 0)
    throw new DomainError("bad-seed", "the seed must be a whole number of zero or more", seed);
  let mix = (seed ^ Math.imul(Math.floor(seed / 2 ** 32), 0x9e3779b1)) | 0;
  const fill = (): number => {
    mix = (mix + 0x9e3779b9) | 0;
    let z = mix ^ (mix >>> 16);
    z = Math.imul(z, 0x21f0aaad);
    z ^= z >>> 15;
    z = Math.imul(z, 0x735a2d97);
    return z ^ (z >>> 15);
  };
  let [a, b, c, d] = [fill(), fill(), fill(), fill()];
  const next = (): number => {
    const times5 = Math.imul(b, 5);
    const result = Math.imul((times5 << 7) | (times5 >>> 25), 9) >>> 0;
    const t = b << 9;
    c ^= a;
    d ^= b;
    b ^= c;
    a ^= d;
    c ^= t;
    d = (d << 11) | (d >>> 21);
    return result;
  };
  const uniform = (): number => {
    const high = next() >>> 6; // 26 bits
    const low = next() >>> 5; // 27 bits
    const value = (high * 2 ** 27 + low) * 2 ** -53;
    return value === 0 ? 2 ** -54 : value;
  };
  let spare: number | null = null;
  const normal = (): number => {
    if (spare !== null) {
      const kept = spare;
      spare = null;
      return kept;
    }
    for (;;) {
      const x = 2 * uniform() - 1;
      const y = 2 * uniform() - 1;
      const s = x * x + y * y;
      if (s >= 1 || s === 0) continue;
      const f = Math.sqrt((-2 * Math.log(s)) / s);
      spare = y * f;
      return x * f;
    }
  };
  return { uniform, normal };
};
