/** Values that searches try of the sizes that many families have: fixed, so that a wider search holds a narrower one. */

/** A stretch of a ladder: up to where, and by how much from one rung to the next. */
type Stretch = readonly [to: number, by: number];

/** Sums such as 0.1 + 0.2 miss their last digit; no size is told more finely than to a millionth. */
const PARTS = 1e6;

/**
 * A ladder of values: fine where small, coarser where large.
 *
 * @param from - the lowest rung [mm], counts, angles [rad] or ratios [-]
 * @param stretches - each up to where and in what steps [mm], counts, angles [rad] or ratios [-], steps that end there
 * @returns values in rising order [mm], counts, angles [rad] or ratios [-]
 *
 * @example ladder(1, [2, 0.5], [4, 1]) // → [1, 1.5, 2, 3, 4]
 */
export function ladder(from: number, ...stretches: readonly Stretch[]): readonly number[] {
  return stretches.reduce<readonly number[]>(
    (rungs, [to, by]) => {
      const foot = rungs.at(-1) ?? from;
      const steps = Math.round((to - foot) / by);
      return [...rungs, ...Array.from({ length: steps }, (_, i) => Math.round((foot + (i + 1) * by) * PARTS) / PARTS)];
    },
    [from],
  );
}

/**
 * The rungs of a ladder that a family's limits let pass.
 *
 * @param values - in rising order [mm], counts, angles [rad] or ratios [-]
 * @param most - the largest that is tried [mm], counts, angles [rad] or ratios [-]
 * @returns those up to it [mm], counts, angles [rad] or ratios [-]
 *
 * @example upTo([1, 2, 3, 4, 6], 4) // → [1, 2, 3, 4]
 */
export function upTo(values: readonly number[], most: number): readonly number[] {
  return values.filter((value) => value <= most);
}

/** Even counts are whole contours; of odd ones only those are tried that are thin. */
export const LINES: readonly number[] = [1, 2, 3, 4, 6];

/** What bends, from short necks to what just fits a usual plate. */
export const LENGTHS = ladder(1, [20, 0.5], [60, 2], [200, 10]);

/** From just over one usual line, which cannot follow a tighter curve, to where a larger one hardly helps a usual leaf. */
export const FILLETS: readonly number[] = [0.5, 0.8, 1.2, 1.6, 2];

/** More in a row are rarely drawn by hand; a panel of cells is a kind of its own. */
export const IN_A_ROW: readonly number[] = [1, 2, 3, 4];
