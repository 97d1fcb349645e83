/**
 * What is left of what resisted at first when this little of it remains: rounding, not stiffness. Slender members side
 * by side leave a millionth or so, a hundred in a row a little less; rounding leaves some 1e-15.
 */
const NOTHING_LEFT = 1e-12;

/**
 * Stiffness that is felt at the last movements when the first ones are left free to follow.
 *
 *     S = K₂₂ − K₂₁·K₁₁⁻¹·K₁₂
 *
 * For a symmetric stiffness that never pushes by itself (positive semi-definite). A movement that nothing resists takes
 * nothing with it and is passed over, so a mechanism ends as a zero, never as a number made by rounding.
 *
 * @param stiffness - K, symmetric, row by row [unit]
 * @param gone - how many of its first movements are left free [-], 0 to its size
 * @returns S, symmetric, row by row; rows of movements that nothing resists are exactly 0
 *
 * @example condense([[2, -1], [-1, 3]], 1) // → [[2.5]]
 */
export function condense(stiffness: readonly (readonly number[])[], gone: number): number[][] {
  const rows = stiffness.map((row) => [...row]);
  const size = rows.length;
  const least = rows.map((row, i) => NOTHING_LEFT * row[i]!);
  for (let k = 0; k < gone; k += 1) {
    const row = rows[k]!;
    const pivot = row[k]!;
    if (!(pivot > least[k]!)) continue;
    for (let i = k + 1; i < size; i += 1) {
      if (row[i] === 0) continue;
      const share = row[i]! / pivot;
      const target = rows[i]!;
      for (let j = i; j < size; j += 1) target[j] = target[j]! - share * row[j]!;
    }
  }
  const resists = (i: number) => rows[i]![i]! > least[i]!;
  const felt = (i: number, j: number) => (resists(i) && resists(j) ? rows[Math.min(i, j)]![Math.max(i, j)]! : 0);
  const kept = Array.from({ length: size - gone }, (_, i) => gone + i);
  return kept.map((i) => kept.map((j) => felt(i, j)));
}
