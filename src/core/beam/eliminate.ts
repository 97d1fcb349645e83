/**
 * Elimination of unknowns from a symmetric system that is kept as the upper triangle of a square, row by row. The rows
 * of what has been eliminated stay in place for the way back.
 */

/** A pivot smaller than this share of its column's start is taken as this small: an exact zero would stop everything. */
const LEAST_PIVOT = 1e-14;

/**
 * Eliminates the first unknowns of a system K·d = −f.
 *
 * @param matrix - upper triangle in a square of side `size` [-]; reduced in place
 * @param force - f [-]; reduced in place
 * @param size - side of the square [-]
 * @param count - how many unknowns go [-]
 * @returns how many pivots were negative [-]: ways in which this part is unstable by itself
 */
export function eliminate(matrix: Float64Array, force: Float64Array, size: number, count: number): number {
  let negative = 0;
  for (let k = 0; k < count; k += 1) {
    const row = k * size;
    let pivot = matrix[row + k]!;
    if (Math.abs(pivot) < LEAST_PIVOT) {
      pivot = pivot < 0 ? -LEAST_PIVOT : LEAST_PIVOT;
      matrix[row + k] = pivot;
    }
    if (pivot < 0) negative += 1;
    const per = 1 / pivot;
    const out = force[k]! * per;
    for (let i = k + 1; i < size; i += 1) {
      const coupling = matrix[row + i]!;
      if (coupling === 0) continue;
      const share = coupling * per;
      const target = i * size;
      for (let j = i; j < size; j += 1) matrix[target + j] = matrix[target + j]! - share * matrix[row + j]!;
      force[i] = force[i]! - coupling * out;
    }
  }
  return negative;
}

/**
 * The way back: the eliminated unknowns from those that were kept.
 *
 * @param matrix - as `eliminate` left it [-]
 * @param force - as `eliminate` left it [-]
 * @param size - side of the square [-]
 * @param count - how many unknowns went [-]
 * @param solution - the kept ones from `count` on [-]; the others are filled in
 * @param withForce - 1 for the step of −f, 0 for what follows from the kept unknowns alone [-]
 */
export function restore(
  matrix: Float64Array,
  force: Float64Array,
  size: number,
  count: number,
  solution: Float64Array,
  withForce: 0 | 1,
): void {
  for (let k = count - 1; k >= 0; k -= 1) {
    const row = k * size;
    let sum = withForce === 1 ? -force[k]! : 0;
    for (let j = k + 1; j < size; j += 1) sum -= matrix[row + j]! * solution[j]!;
    solution[k] = sum / matrix[row + k]!;
  }
}
