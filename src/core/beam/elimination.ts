/**
 * One elimination of a tangent for all that is asked of it: how many of its values are negative, by Sylvester's law the
 * signs of the pivots of a symmetric elimination, and what answers any right side.
 */
import { factorInPlace, rowEnds, solveFactored } from './dense.ts';

export interface Eliminated {
  /** How many eigenvalues are negative [-]; of a lopsided square, those of its symmetric part. */
  readonly negative: () => number;
  /** Replaces b by x of A·x = b; false where A is singular to the last digit. */
  readonly solve: (right: Float64Array) => boolean;
}

/** A pivot smaller than this share of the largest so far makes the order of elimination matter. */
const SMALL_PIVOT = 1e-9;

/**
 * Eliminates a square, along its diagonal where it is symmetric and the pivots allow it. One that loads turning with what
 * they act on make lopsided has no signature; that of its symmetric part is the nearest thing and is on the safe side.
 *
 * @param matrix - full square, row by row [-]; left as it is
 * @param n - side [-]
 * @param isLopsided - whether it may not be symmetric [-]
 * @returns its count of negative values and its solutions
 */
export function eliminateOnce(matrix: Float64Array, n: number, isLopsided = false): Eliminated {
  if (isLopsided) {
    const negative = () => eliminateOnce(symmetricPart(matrix, n), n).negative();
    return { ...eliminateByRows(matrix, n), negative };
  }
  const upper = matrix.slice();
  const ends = rowEnds(upper, n);
  const negative = eliminateInOrder(upper, ends, n);
  if (negative === undefined) return { ...eliminateByRows(matrix, n), negative: () => negativesByLargest(matrix, n) };
  return {
    negative: () => negative,
    solve: (right) => {
      solveInOrder(upper, ends, right);
      return true;
    },
  };
}

function eliminateByRows(matrix: Float64Array, n: number): Pick<Eliminated, 'solve'> {
  const triangles = matrix.slice();
  const rows = factorInPlace(triangles, n);
  return {
    solve: (right) => {
      if (rows) solveFactored(triangles, rows, right);
      return rows !== undefined;
    },
  };
}

function symmetricPart(matrix: Float64Array, n: number): Float64Array {
  return matrix.map((value, at) => (value + matrix[(at % n) * n + Math.floor(at / n)]!) / 2);
}

/** Leaves the pivots and what stands above them; undefined where a pivot is too small to be trusted. */
function eliminateInOrder(upper: Float64Array, ends: Int32Array, n: number): number | undefined {
  let [negative, largest] = [0, 0];
  for (let k = 0; k < n; k += 1) {
    const pivot = upper[k * n + k]!;
    largest = Math.max(largest, Math.abs(pivot));
    if (!(Math.abs(pivot) > SMALL_PIVOT * largest)) return undefined;
    if (pivot < 0) negative += 1;
    const end = ends[k]!;
    for (let i = k + 1; i < end; i += 1) {
      const share = upper[k * n + i]! / pivot;
      if (share === 0) continue;
      for (let j = i; j < end; j += 1) upper[i * n + j] = upper[i * n + j]! - share * upper[k * n + j]!;
      if (end > ends[i]!) ends[i] = end;
    }
  }
  return negative;
}

function solveInOrder(upper: Float64Array, ends: Int32Array, right: Float64Array): void {
  const n = right.length;
  for (let k = 0; k < n; k += 1) {
    const part = right[k]! / upper[k * n + k]!;
    const end = ends[k]!;
    for (let i = k + 1; i < end; i += 1) right[i] = right[i]! - upper[k * n + i]! * part;
    right[k] = part;
  }
  for (let k = n - 1; k >= 0; k -= 1) {
    let sum = 0;
    const end = ends[k]!;
    for (let j = k + 1; j < end; j += 1) sum += upper[k * n + j]! * right[j]!;
    right[k] = right[k]! - sum / upper[k * n + k]!;
  }
}

/** A diagonal entry smaller than this share of the largest other one gives way to a pair: (1 + √17)/8. */
const OWN_PIVOT = 0.64;

/**
 * With the largest entry next, one of the diagonal or a pair beside it, which is negative in one of its two values
 * (after J. R. Bunch and B. N. Parlett 1971, from memory).
 */
function negativesByLargest(symmetric: Float64Array, n: number): number {
  const matrix = symmetric.slice();
  const left = Array.from({ length: n }, (_, i) => i);
  let negative = 0;
  while (left.length > 0) {
    const at = (i: number, j: number) => Math.abs(matrix[i * n + j]!);
    const k = left.reduce((best, i) => (at(i, i) > at(best, best) ? i : best));
    const [p, q] = largestBeside(left, at);
    const isOne = at(k, k) >= OWN_PIVOT * at(p, q) || p === q;
    if (at(k, k) === 0 && isOne) break;
    negative += isOne ? Number(matrix[k * n + k]! < 0) : 1;
    for (const gone of isOne ? [k] : [p, q]) left.splice(left.indexOf(gone), 1);
    if (isOne) takeOut(matrix, n, left, k);
    else takeOutPair(matrix, n, left, p, q);
  }
  return negative;
}

function largestBeside(left: readonly number[], at: (i: number, j: number) => number): readonly [number, number] {
  let [p, q] = [left[0]!, left[0]!];
  for (const i of left) for (const j of left) if (i < j && (p === q || at(i, j) > at(p, q))) [p, q] = [i, j];
  return [p, q];
}

function takeOut(matrix: Float64Array, n: number, left: readonly number[], k: number): void {
  const pivot = matrix[k * n + k]!;
  for (const i of left) {
    const share = matrix[i * n + k]! / pivot;
    for (const j of left) matrix[i * n + j] = matrix[i * n + j]! - share * matrix[k * n + j]!;
  }
}

function takeOutPair(matrix: Float64Array, n: number, left: readonly number[], p: number, q: number): void {
  const [a, b, c] = [matrix[p * n + p]!, matrix[p * n + q]!, matrix[q * n + q]!];
  const whole = a * c - b * b;
  for (const i of left) {
    const [u, v] = [matrix[i * n + p]!, matrix[i * n + q]!];
    const [x, y] = [(c * u - b * v) / whole, (a * v - b * u) / whole];
    for (const j of left) matrix[i * n + j] = matrix[i * n + j]! - x * matrix[p * n + j]! - y * matrix[q * n + j]!;
  }
}
