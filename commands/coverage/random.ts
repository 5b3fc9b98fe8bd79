/** Seeded random numbers for simulation: the same seed gives the same parts on every machine. */
export type Random = { uniform: () => number; normal: () => number; gamma: (shape: number) => number };

/** Generator sfc32 (C. Doty-Humphrey's small fast counting generator, PractRand), seeded by one whole number. */
export function randomFrom(seed: number): Random {
  let [a, b, c, counter] = [0x9e3779b9 ^ seed, 0x243f6a88, 0xb7e15162 ^ (seed << 7), 1];
  const next = (): number => {
    const t = (((a + b) | 0) + counter) | 0;
    counter = (counter + 1) | 0;
    a = b ^ (b >>> 9);
    b = (c + (c << 3)) | 0;
    c = ((c << 21) | (c >>> 11)) + t;
    return t >>> 0;
  };
  for (let i = 0; i < 20; i++) next();
  const uniform = (): number => (next() + 0.5) / 4294967296;
  /** Box and Muller (1958), one of the pair. */
  const normal = (): number => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
  /** Marsaglia and Tsang (2000); below shape 1 by their power of a uniform. */
  const gamma = (shape: number): number => {
    if (shape < 1) return gamma(shape + 1) * uniform() ** (1 / shape);
    const d = shape - 1 / 3;
    const scale = 1 / Math.sqrt(9 * d);
    for (;;) {
      const z = normal();
      const v = (1 + scale * z) ** 3;
      if (v > 0 && Math.log(uniform()) < 0.5 * z * z + d - d * v + d * Math.log(v)) return d * v;
    }
  };
  return { uniform, normal, gamma };
}
