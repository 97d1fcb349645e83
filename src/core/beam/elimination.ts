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

/**
 * A pivot that takes from another diagonal entry more than this many times what stood there makes the order of
 * elimination matter. Of a square with no negative values none takes more than stood there, however small it is itself.
 */
const MOST_TAKEN = 1000;

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
  if (negative === undefined) return { ...eliminateByRows(matrix, n), negative: () => negativesByPairs(matrix, n) };
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

/** Leaves the pivots and what stands above them; undefined where a pivot takes too much to be trusted. */
function eliminateInOrder(upper: Float64Array, ends: Int32Array, n: number): number | undefined {
  const most = Float64Array.from({ length: n }, (_, i) => MOST_TAKEN * Math.abs(upper[i * n + i]!));
  let negative = 0;
  for (let k = 0; k < n; k += 1) {
    const pivot = upper[k * n + k]!;
    if (!(Math.abs(pivot) > 0)) return undefined;
    if (pivot < 0) negative += 1;
    const end = ends[k]!;
    for (let i = k + 1; i < end; i += 1) {
      const share = upper[k * n + i]! / pivot;
      if (share === 0) continue;
      if (!(Math.abs(share * upper[k * n + i]!) <= most[i]!)) return undefined;
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

/** A diagonal entry smaller than this share of the largest beside it gives way to a pair: (1 + √17)/8. */
const OWN_PIVOT = 0.64;

/**
 * By pivots of one or of a pair, which is negative in one of its two values (after J. R. Bunch and L. Kaufman 1977, from
 * memory). In the order of the diagonal but where a pair skips, so that a square that is all but empty stays so.
 */
function negativesByPairs(symmetric: Float64Array, n: number): number {
  const matrix = symmetric.slice();
  const isGone = new Uint8Array(n);
  let negative = 0;
  for (let k = 0; k < n; k += 1) {
    while (isGone[k] === 0) {
      const [p, q] = nextPivot(matrix, n, k);
      negative += p === q ? Number(matrix[p * n + p]! < 0) : 1;
      isGone[p] = 1;
      isGone[q] = 1;
      if (p === q) takeOut(matrix, n, p);
      else takeOutPair(matrix, n, p, q);
    }
  }
  return negative;
}

/** The entry of the diagonal that goes next, twice, or a pair: k itself, the largest beside it, or both. */
function nextPivot(matrix: Float64Array, n: number, k: number): readonly [number, number] {
  const size = (i: number, j: number) => Math.abs(matrix[i * n + j]!);
  const r = largestBeside(matrix, n, k);
  const beside = size(k, r);
  if (r === k || size(k, k) >= OWN_PIVOT * beside) return [k, k];
  const further = size(r, largestBeside(matrix, n, r));
  if (size(k, k) * further >= OWN_PIVOT * beside * beside) return [k, k];
  return size(r, r) >= OWN_PIVOT * further ? [r, r] : [k, r];
}

/** Where the largest entry of a row stands, off the diagonal; the row itself where there is none. */
function largestBeside(matrix: Float64Array, n: number, row: number): number {
  let best = row;
  let largest = 0;
  for (let j = 0; j < n; j += 1) {
    const size = Math.abs(matrix[row * n + j]!);
    if (size > largest && j !== row) [best, largest] = [j, size];
  }
  return best;
}

/** Those that a row holds something for, but for those that are being taken out. */
function besides(matrix: Float64Array, n: number, rows: readonly number[]): readonly number[] {
  const found: number[] = [];
  for (let i = 0; i < n; i += 1) if (!rows.includes(i) && rows.some((k) => matrix[k * n + i]! !== 0)) found.push(i);
  return found;
}

function takeOut(matrix: Float64Array, n: number, k: number): void {
  const pivot = matrix[k * n + k]!;
  const left = besides(matrix, n, [k]);
  for (const i of left) {
    const share = matrix[i * n + k]! / pivot;
    for (const j of left) matrix[i * n + j] = matrix[i * n + j]! - share * matrix[k * n + j]!;
    matrix[i * n + k] = 0;
  }
}

function takeOutPair(matrix: Float64Array, n: number, p: number, q: number): void {
  const [a, b, c] = [matrix[p * n + p]!, matrix[p * n + q]!, matrix[q * n + q]!];
  const whole = a * c - b * b;
  const left = besides(matrix, n, [p, q]);
  for (const i of left) {
    const [u, v] = [matrix[i * n + p]!, matrix[i * n + q]!];
    const [x, y] = [(c * u - b * v) / whole, (a * v - b * u) / whole];
    for (const j of left) matrix[i * n + j] = matrix[i * n + j]! - x * matrix[p * n + j]! - y * matrix[q * n + j]!;
    matrix[i * n + p] = 0;
    matrix[i * n + q] = 0;
  }
}
