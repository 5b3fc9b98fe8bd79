import { DomainError } from "../quantity/domain-error.ts";
import { fillNormals } from "./ziggurat.ts";

/** Uniform numbers in (0, 1) and standard normal ones, the same for the same seed on every machine. */
export type RandomStream = {
  uniform: () => number;
  normal: () => number;
  /** Fills a list with uniform numbers: many at once come several times faster than one by one. */
  uniforms: (into: Float64Array) => void;
  normals: (into: Float64Array) => void;
};

const pool = 4096;

/**
 * A seeded stream: xoshiro128** (Blackman and Vigna, ACM Trans. Math. Softw. 47 (2021) 36), its state filled from the seed by
 * splitmix32. Uniform numbers carry 52 bits and are never 0 or 1; normal ones by the ziggurat (`fillNormals`).
 * Refuses (DomainError) a seed that is not a whole number from 0 to 2⁵³ − 1.
 *
 * @example randomStream(1).uniform() === randomStream(1).uniform() // true
 */
export const randomStream = (seed: number): RandomStream => {
  if (!Number.isSafeInteger(seed) || seed < 0)
    throw new DomainError("bad-seed", "the seed must be a whole number of zero or more", seed);
  const state = stateFrom(seed);
  const words = new Uint32Array(pool);
  let used = pool;
  const word = (): number => {
    if (used === pool) {
      fillWords(state, words);
      used = 0;
    }
    return words[used++]!;
  };
  // The middle of one of 2⁵² equal cells: never 0, never 1, and the same distance from both.
  const uniform = (): number => ((word() >>> 6) * 2 ** 26 + (word() >>> 6) + 0.5) * 2 ** -52;
  const uniforms = (into: Float64Array): void => {
    for (let i = 0; i < into.length; i++) into[i] = uniform();
  };
  const normals = (into: Float64Array): void => fillNormals(into, word, uniform);
  const one = new Float64Array(1);
  const normal = (): number => {
    normals(one);
    return one[0]!;
  };
  return { uniform, normal, uniforms, normals };
};

/** Four words of state from one seed, by splitmix32. */
function stateFrom(seed: number): Int32Array {
  let mix = (seed ^ Math.imul(Math.floor(seed / 2 ** 32), 0x9e3779b1)) | 0;
  return new Int32Array(4).map(() => {
    mix = (mix + 0x9e3779b9) | 0;
    let z = mix ^ (mix >>> 16);
    z = Math.imul(z, 0x21f0aaad);
    z ^= z >>> 15;
    z = Math.imul(z, 0x735a2d97);
    return z ^ (z >>> 15);
  });
}

/** The generator's own step, over and over, with its state in local variables. */
function fillWords(state: Int32Array, into: Uint32Array): void {
  let [a, b, c, d] = state as unknown as [number, number, number, number];
  for (let i = 0; i < into.length; i++) {
    const times5 = Math.imul(b, 5);
    into[i] = Math.imul((times5 << 7) | (times5 >>> 25), 9);
    const t = b << 9;
    c ^= a;
    d ^= b;
    b ^= c;
    a ^= d;
    c ^= t;
    d = (d << 11) | (d >>> 21);
  }
  state.set([a, b, c, d]);
}
