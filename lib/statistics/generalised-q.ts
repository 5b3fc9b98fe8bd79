/** Q(τ²) = Σ wᵢ(xᵢ − μ)² with wᵢ = 1/(vᵢ + τ²) and μ the weighted mean, and what comes with it. */
export type GeneralisedQ = { mean: number; sumW: number; q: number; slope: number };

/**
 * Q and its slope −dQ/dτ² = Σ wᵢ²(xᵢ − μ)²: the mean is at its optimum, so its own change drops out.
 *
 * @example generalisedQ([100, 110], [9, 16], 37.5) // { mean: 104.65, q: 1 }
 */
export const generalisedQ = (x: ArrayLike<number>, v: ArrayLike<number>, tau2: number): GeneralisedQ => {
  let sumW = 0;
  let sumWx = 0;
  for (let i = 0; i < x.length; i++) {
    const w = 1 / (v[i]! + tau2);
    sumW += w;
    sumWx += w * x[i]!;
  }
  const mean = sumWx / sumW;
  let q = 0;
  let slope = 0;
  for (let i = 0; i < x.length; i++) {
    const w = 1 / (v[i]! + tau2);
    const residual = x[i]! - mean;
    const wr = w * residual;
    q += wr * residual;
    slope += wr * wr;
  }
  return { mean, sumW, q, slope };
};

/**
 * τ² ≥ 0 with Q(τ²) = target, or 0 where Q(0) is at or below it.
 *
 * With contrasts of the readings Q = Σ bᵢ²/(mᵢ + τ²), so 1/Q is concave and rising: Newton on 1/Q from τ² = 0 climbs to the
 * root without ever passing it, and takes one step where all u are equal. `atZero` is Q(0), where the caller has it.
 *
 * Source: Paule and Mandel, J. Res. NBS 87 (1982) 377; DerSimonian and Kacker (2007) for the Newton step (from memory).
 *
 * @example tau2AtQ([100, 110], [9, 16], 1) // 37.5
 */
export const tau2AtQ = (
  x: ArrayLike<number>,
  v: ArrayLike<number>,
  target: number,
  atZero: GeneralisedQ = generalisedQ(x, v, 0),
): number => {
  let tau2 = 0;
  let { q, slope } = atZero;
  for (let i = 0; i < 200 && q > target; i++) {
    const step = (q * (q / target - 1)) / slope;
    tau2 += step;
    if (step <= 4e-16 * tau2) break;
    ({ q, slope } = generalisedQ(x, v, tau2));
  }
  return tau2;
};

/**
 * C = Σw − Σw²/Σw = Σ wᵢ(W − wᵢ)/W with wᵢ = 1/(vᵢ + τ²), W = Σw: what DerSimonian and Laird divide by, and what the slope of the restricted
 * likelihood takes away. The first form cancels where one reading carries nearly all the weight, so W − wᵢ is summed over the others.
 *
 * @example sharedWeight([1, 0.5], 0) // 1.333333
 */
export const sharedWeight = (v: ArrayLike<number>, tau2: number): number => {
  const n = v.length;
  const after = new Float64Array(n + 1);
  for (let i = n - 1; i >= 0; i--) after[i] = after[i + 1]! + 1 / (v[i]! + tau2);
  const sumW = after[0]!;
  let before = 0;
  let c = 0;
  for (let i = 0; i < n; i++) {
    const w = 1 / (v[i]! + tau2);
    c += (w / sumW) * (before + after[i + 1]!);
    before += w;
  }
  return c;
};
