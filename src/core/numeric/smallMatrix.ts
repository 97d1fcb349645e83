/** Symmetric matrices of a few rows, as arrays of rows: their square root, and what is solved with it. */

export type Matrix = readonly (readonly number[])[];

const at = (matrix: Matrix, i: number, j: number): number => matrix[i]?.[j] ?? 0;

/**
 * The lower square root of a symmetric matrix (Cholesky).
 *
 *     M = L·Lᵀ
 *
 * @param matrix - M [any unit], of which the lower half is read
 * @returns L [square root of that unit]; undefined where M is not positive in every direction
 *
 * @example choleskyRoot([[4, 2], [2, 5]]) // → [[2, 0], [1, 2]]
 */
export function choleskyRoot(matrix: Matrix): Matrix | undefined {
  const low: number[][] = matrix.map((row) => row.map(() => 0));
  for (const [i, row] of low.entries()) {
    for (let j = 0; j <= i; j += 1) {
      let sum = at(matrix, i, j);
      for (let k = 0; k < j; k += 1) sum -= (row[k] ?? 0) * at(low, j, k);
      if (j < i) row[j] = sum / at(low, j, j);
      else if (sum > 0) row[j] = Math.sqrt(sum);
      else return undefined;
    }
  }
  return low;
}

/**
 * What a symmetric matrix takes to a given vector, by its lower square root.
 *
 *     L·Lᵀ·x = r
 *
 * @param root - L [any unit]
 * @param right - r [any unit]
 * @returns x [-]
 *
 * @example solvedWith([[2, 0], [1, 2]], [8, 14]) // → [0.75, 2.5]
 */
export function solvedWith(root: Matrix, right: readonly number[]): readonly number[] {
  const x = [...right];
  for (let i = 0; i < x.length; i += 1) {
    for (let k = 0; k < i; k += 1) x[i] = (x[i] ?? 0) - at(root, i, k) * (x[k] ?? 0);
    x[i] = (x[i] ?? 0) / at(root, i, i);
  }
  for (let i = x.length - 1; i >= 0; i -= 1) {
    for (let k = i + 1; k < x.length; k += 1) x[i] = (x[i] ?? 0) - at(root, k, i) * (x[k] ?? 0);
    x[i] = (x[i] ?? 0) / at(root, i, i);
  }
  return x;
}

/**
 * The inverse of a symmetric matrix, by its lower square root.
 *
 * @param root - L of L·Lᵀ [any unit]
 * @returns inverse [1/unit²]
 *
 * @example inverseBy([[2, 0], [0, 4]]) // → [[0.25, 0], [0, 0.0625]]
 */
export function inverseBy(root: Matrix): Matrix {
  return root.map((_, i) =>
    solvedWith(
      root,
      root.map((__, j) => (i === j ? 1 : 0)),
    ),
  );
}
