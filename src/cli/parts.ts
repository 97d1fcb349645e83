/** Equal parts of a way: which of the points that were solved are told. */

/** Fewer parts would pass over a snap: points between those asked for are solved but not told. */
const FEWEST = 24;

/** In how many parts the way is solved, so that the parts asked for are among them. */
export function solvedParts(parts: number): number {
  return parts * Math.ceil(FEWEST / parts);
}

/** A point that is told: its number among the parts, if it has one, and which of the solved it is. */
export interface Told<P> {
  readonly part: number | null;
  readonly point: P;
  readonly index: number;
}

/**
 * Points of the equal parts with their number, and those where the way leaves the even one or turns back, with none.
 *
 * @param points - as solved
 * @param parts - equal parts that were asked for
 * @param shareOf - how much of the way a point has behind it, from 0 to 1
 */
export function toldOf<P>(points: readonly P[], parts: number, shareOf: (point: P) => number): readonly Told<P>[] {
  const solved = solvedParts(parts);
  return points.flatMap((point, index): Told<P>[] => {
    const at = shareOf(point) * solved;
    const isOnGrid = Math.abs(at - Math.round(at)) < 1e-6 && at > -1e-6;
    if (!isOnGrid) return [{ part: null, point, index }];
    const part = (Math.round(at) * parts) / solved;
    return Number.isInteger(part) ? [{ part, point, index }] : [];
  });
}
