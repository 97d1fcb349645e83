import { factorInPlace, solveFactored } from './dense.ts';

/** The eigenvalue of a symmetric matrix that is nearest to zero, and its vector of unit length. */
export interface Softest {
  readonly value: number;
  readonly vector: Float64Array;
}

/**
 * Where a network gives way most easily, by inverse iteration. Rows and columns are first weighed so that turns and
 * movements are on one footing.
 *
 * @param tangent - full symmetric square, row by row [N/mm, N, N·mm]
 * @param weights - 1 for a turn, 1/scale² for a movement [-, 1/mm²]
 * @returns stiffness of the softest way [N·mm], and its movements [mm, rad]
 */
export function softestWay(tangent: Float64Array, weights: Float64Array): Softest {
  const n = weights.length;
  const roots = weights.map((w) => Math.sqrt(w));
  const scaled = tangent.slice();
  for (let i = 0; i < n; i += 1) {
    for (let j = 0; j < n; j += 1) scaled[i * n + j] = scaled[i * n + j]! / (roots[i]! * roots[j]!);
  }
  const rows = factorInPlace(scaled, n);
  if (!rows) return { value: 0, vector: new Float64Array(n).fill(1) };
  let vector = Float64Array.from({ length: n }, (_, i) => 1 + 0.37 * Math.sin(1 + 2.1 * i));
  let value = 0;
  for (let round = 0; round < 12; round += 1) {
    const next = vector.slice();
    solveFactored(scaled, rows, next);
    const length = Math.sqrt(next.reduce((sum, v) => sum + v * v, 0));
    const overlap = next.reduce((sum, v, i) => sum + v * vector[i]!, 0);
    const before = value;
    value = vector.reduce((sum, v) => sum + v * v, 0) / overlap;
    vector = next.map((v) => v / length);
    if (round > 1 && Math.abs(value - before) <= 1e-9 * Math.abs(value)) break;
  }
  return { value, vector: vector.map((v, i) => v / roots[i]!) };
}
