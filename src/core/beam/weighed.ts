/** Small dense symmetric systems whose rows have different units. */
import { solveInPlace } from './dense.ts';

export type Matrix = readonly (readonly number[])[];

/**
 * M⁻¹·B for a symmetric M with a diagonal above 0, weighed to 1 so that units do not choose the pivots.
 *
 * @param matrix - M, symmetric and positive definite, row by row [unit]
 * @param sides - B, as many rows as M [unit]
 * @returns M⁻¹·B, row by row
 *
 * @example solveWeighed([[4, 2], [2, 9]], [[8], [20]]) // → [[1], [2]]
 */
export function solveWeighed(matrix: Matrix, sides: Matrix): number[][] {
  const weight = matrix.map((row, i) => 1 / Math.sqrt(row[i]!));
  const weighed = matrix.flatMap((row, i) => row.map((m, j) => m * weight[i]! * weight[j]!));
  const columns = sides[0]!.map((_, c) => {
    const column = Float64Array.from(sides, (row, i) => row[c]! * weight[i]!);
    if (!solveInPlace(Float64Array.from(weighed), column)) throw new RangeError('a movement that nothing resists');
    return column;
  });
  return sides.map((_, i) => columns.map((column) => column[i]! * weight[i]!));
}
