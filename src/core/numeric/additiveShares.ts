/** How much of the variance of a figure each of its inputs makes by itself, where it is nearly a sum. */

/** Orthonormal polynomials of a normal variable (Hermite), without the constant. */
const HERMITE: readonly ((z: number) => number)[] = [
  (z) => z,
  (z) => (z * z - 1) / Math.SQRT2,
  (z) => (z ** 3 - 3 * z) / Math.sqrt(6),
  (z) => (z ** 4 - 6 * z * z + 3) / Math.sqrt(24),
];
/** Points for each polynomial, so that the fit is not led by chance. */
const POINTS_EACH = 12;
/** What varies less than this share of itself does not vary. */
const ROUND_OFF = 1e-9;

/** Variance, the share that each input makes alone, and what is left to several together and to leaps. */
export interface AdditiveShares {
  readonly variance: number;
  readonly alone: readonly number[];
  readonly together: number;
}

/**
 * Shares of the variance of a figure by inputs that vary independently, from any points at which it is known.
 *
 *     y ≈ c₀ + Σ_i Σ_k c_ik·He_k(z_i),   V_i = Σ_k c_ik²,   together = mean of what is left, squared
 *
 * Fitted by least squares. Where y is nearly a sum little is left, and so the shares carry little noise: far less than
 * those found by picking and freezing inputs, which also need many more points. What no sum of smooth functions makes counts
 * as made together.
 *
 * @param points - each with a standard normal number for every input [-]
 * @param values - the figure at each of them [any unit]
 * @returns variance in the square of that unit; shares [-], which add up to 1
 *
 * Source: additive-shares.
 * @example additiveShares([[-1], [1], [-1], [1]], [3, 5, 3, 5]).alone // → [1]
 */
export function additiveShares(points: readonly (readonly number[])[], values: readonly number[]): AdditiveShares {
  const inputs = points[0]?.length ?? 0;
  const degree = Math.min(HERMITE.length, Math.max(1, Math.floor(points.length / (POINTS_EACH * Math.max(1, inputs)))));
  const basis = HERMITE.slice(0, degree);
  const rows = points.map((point) => [1, ...point.flatMap((z) => basis.map((of) => of(z)))]);
  const fitted = leastSquares(rows, values);
  const squares = fitted.slice(1).map((c) => c * c);
  const left = rows.map((row, k) => (values[k] ?? 0) - row.reduce((sum, x, i) => sum + x * (fitted[i] ?? 0), 0));
  const rest = left.reduce((sum, off) => sum + off * off, 0) / points.length;
  const variance = squares.reduce((sum, square) => sum + square, rest);
  const size = values.reduce((most, value) => Math.max(most, Math.abs(value)), 0);
  const varies = variance > (ROUND_OFF * size) ** 2;
  const share = (of: number) => (varies ? of / variance : 0);
  const alone = Array.from({ length: inputs }, (_, i) =>
    share(squares.slice(i * degree, (i + 1) * degree).reduce((sum, square) => sum + square, 0)),
  );
  return { variance: varies ? variance : 0, alone, together: share(rest) };
}

/** By the normal equations, which are close to the identity for orthonormal columns. */
function leastSquares(rows: readonly (readonly number[])[], values: readonly number[]): readonly number[] {
  const size = rows[0]?.length ?? 0;
  const matrix = Array.from({ length: size }, () => new Float64Array(size));
  const right = new Float64Array(size);
  for (const [k, row] of rows.entries()) {
    const value = values[k] ?? 0;
    for (const [i, x] of row.entries()) {
      const into = matrix[i];
      if (!into) continue;
      right[i] = (right[i] ?? 0) + x * value;
      for (let j = 0; j <= i; j += 1) into[j] = (into[j] ?? 0) + x * (row[j] ?? 0);
    }
  }
  return solved(matrix, right);
}

/** A column that others stand for already gets nothing: its pivot is only round-off. */
const NO_PIVOT = 1e-9;

function over(top: number, pivot: number): number {
  return pivot > 0 ? top / pivot : 0;
}

/** By square roots (Cholesky), from the lower half: the matrix is symmetric and has no negative direction. */
function solved(matrix: readonly Float64Array[], right: Float64Array): readonly number[] {
  const size = right.length;
  const low = matrix.map(() => new Float64Array(size));
  const at = (i: number, k: number) => low[i]?.[k] ?? 0;
  const found = new Float64Array(size);
  for (let i = 0; i < size; i += 1) {
    let reached = right[i] ?? 0;
    for (let j = 0; j <= i; j += 1) {
      let sum = matrix[i]?.[j] ?? 0;
      for (let k = 0; k < j; k += 1) sum -= at(i, k) * at(j, k);
      const isPivot = sum > NO_PIVOT * (matrix[i]?.[i] ?? 0);
      low[i]?.fill(j < i ? over(sum, at(j, j)) : isPivot ? Math.sqrt(sum) : 0, j, j + 1);
    }
    for (let k = 0; k < i; k += 1) reached -= at(i, k) * (found[k] ?? 0);
    found[i] = over(reached, at(i, i));
  }
  for (let i = size - 1; i >= 0; i -= 1) {
    let reached = found[i] ?? 0;
    for (let k = i + 1; k < size; k += 1) reached -= at(k, i) * (found[k] ?? 0);
    found[i] = over(reached, at(i, i));
  }
  return [...found];
}
