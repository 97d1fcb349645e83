/** Names at the ends of curves, kept apart without leaving their order. */

export interface EndName {
  readonly key: string;
  /** Height of the end that it names, and where the name stands [px]. */
  readonly end: number;
  readonly stands: number;
}

/**
 * Moves names apart so that none lies nearer to the next than `gap`, as little as that takes from the top down, and up
 * again where they would leave the paper.
 *
 * @param ends - heights of ends [px]
 * @param gap - least distance between names [px]
 * @param span - first and last height that a name may stand at [px]
 * @returns names in the order of their ends, from the top
 */
export function spreadNames(
  ends: readonly { readonly key: string; readonly end: number }[],
  gap: number,
  [top, bottom]: readonly [number, number],
): readonly EndName[] {
  const sorted = ends.toSorted((one, other) => one.end - other.end);
  let last = top - gap;
  const down = sorted.map(({ end }) => (last = Math.max(end, last + gap)));
  let next = bottom + gap;
  const up = down.toReversed().map((at) => (next = Math.min(at, next - gap)));
  const places = up.toReversed();
  return sorted.map(({ key, end }, i) => ({ key, end, stands: places[i] ?? end }));
}
