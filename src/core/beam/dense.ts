/** Small dense systems: the reduced equations of a network have a dozen unknowns, seldom over a hundred. */

/**
 * Solves A·x = b by elimination with row exchange.
 *
 * @param matrix - full square, row by row [-]; destroyed
 * @param right - b [-]; replaced by x
 * @returns false when the matrix is singular to the last digit
 */
export function solveInPlace(matrix: Float64Array, right: Float64Array): boolean {
  const rows = factorInPlace(matrix, right.length);
  if (!rows) return false;
  solveFactored(matrix, rows, right);
  return true;
}

/**
 * Splits a square into a lower and an upper triangle, by elimination with row exchange. Zeros to the right of what a
 * row holds are passed over: the equations of a long chain, numbered along it, are all but empty.
 *
 * @param matrix - full square, row by row [-]; replaced by both triangles
 * @param n - side [-]
 * @returns which row stands where, or undefined when the matrix is singular to the last digit
 */
export function factorInPlace(matrix: Float64Array, n: number): Int32Array | undefined {
  const rows = new Int32Array(n);
  const ends = rowEnds(matrix, n);
  for (let k = 0; k < n; k += 1) {
    let best = k;
    for (let i = k + 1; i < n; i += 1) {
      if (Math.abs(matrix[i * n + k]!) > Math.abs(matrix[best * n + k]!)) best = i;
    }
    rows[k] = best;
    const pivot = matrix[best * n + k]!;
    if (!(Math.abs(pivot) > 0)) return undefined;
    if (best !== k) exchange(matrix, ends, k, best);
    const end = ends[k]!;
    for (let i = k + 1; i < n; i += 1) {
      const below = matrix[i * n + k]!;
      if (below === 0) continue;
      const share = below / pivot;
      matrix[i * n + k] = share;
      for (let j = k + 1; j < end; j += 1) matrix[i * n + j] = matrix[i * n + j]! - share * matrix[k * n + j]!;
      if (end > ends[i]!) ends[i] = end;
    }
  }
  return rows;
}

/** One past the last entry of every row that is not zero. */
export function rowEnds(matrix: Float64Array, n: number): Int32Array {
  const ends = new Int32Array(n);
  for (let i = 0; i < n; i += 1) {
    let end = n;
    while (end > 0 && matrix[i * n + end - 1] === 0) end -= 1;
    ends[i] = end;
  }
  return ends;
}

/**
 * Solves with a square that has been split by `factorInPlace`.
 *
 * @param matrix - both triangles [-]
 * @param rows - which row stands where [-]
 * @param right - b [-]; replaced by x
 */
export function solveFactored(matrix: Float64Array, rows: Int32Array, right: Float64Array): void {
  const n = right.length;
  for (let k = 0; k < n; k += 1) {
    const from = rows[k]!;
    const kept = right[from]!;
    right[from] = right[k]!;
    right[k] = kept;
  }
  for (let k = 0; k < n; k += 1) {
    for (let i = k + 1; i < n; i += 1) right[i] = right[i]! - matrix[i * n + k]! * right[k]!;
  }
  for (let k = n - 1; k >= 0; k -= 1) {
    let sum = right[k]!;
    for (let j = k + 1; j < n; j += 1) sum -= matrix[k * n + j]! * right[j]!;
    right[k] = sum / matrix[k * n + k]!;
  }
}

function exchange(matrix: Float64Array, ends: Int32Array, i: number, j: number): void {
  const n = ends.length;
  for (let k = 0; k < n; k += 1) {
    const kept = matrix[i * n + k]!;
    matrix[i * n + k] = matrix[j * n + k]!;
    matrix[j * n + k] = kept;
  }
  const end = ends[i]!;
  ends[i] = ends[j]!;
  ends[j] = end;
}
