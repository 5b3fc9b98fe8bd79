/**
 * Nodes and weights of the Gauss–Legendre rule of n points on [−1, 1], by Newton's method on the Legendre polynomial.
 * Source: DLMF 3.5 (clause from memory).
 *
 * @example gaussLegendre(2).nodes[0] // 0.57735
 */
export function gaussLegendre(n: number): { nodes: number[]; weights: number[] } {
  const nodes: number[] = [];
  const weights: number[] = [];
  for (let i = 0; i < n; i++) {
    let x = Math.cos((Math.PI * (i + 0.75)) / (n + 0.5));
    let slope = 1;
    for (let round = 0; round < 20; round++) {
      let current = 1;
      let before = 0;
      for (let degree = 1; degree <= n; degree++)
        [current, before] = [((2 * degree - 1) * x * current - (degree - 1) * before) / degree, current];
      slope = (n * (x * current - before)) / (x * x - 1);
      const step = current / slope;
      x -= step;
      if (Math.abs(step) < 1e-15) break;
    }
    nodes.push(x);
    weights.push(2 / ((1 - x * x) * slope * slope));
  }
  return { nodes, weights };
}
