/**
 * So many of a list, spread over it: its first, its last, and what lies evenly between.
 *
 * @param all - in some order [-]
 * @param most - how many at most [-], ≥ 1
 * @returns these, in the same order
 *
 * @example spread([1, 2, 3, 4, 5], 3) // → [1, 3, 5]
 */
export function spread<T>(all: readonly T[], most: number): readonly T[] {
  if (all.length <= most) return all;
  const step = most > 1 ? (all.length - 1) / (most - 1) : 0;
  return Array.from({ length: most }, (_, i) => all[Math.round(i * step)] as T);
}
