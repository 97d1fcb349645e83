/** The ways across a section from wall to wall: sides that two triangles share. */
import type { Mm } from '../../units.ts';
import type { Point } from '../../geometry/outline.ts';
import type { Triangles } from './triangles.ts';

/** One way across, as met when going on into a triangle: its ends on the left and on the right wall. */
export interface Chord {
  readonly left: number;
  readonly right: number;
  readonly width: Mm;
  readonly middle: Point;
}

/** Length of a side of a triangle [mm]. */
export function widthOf({ boundary, corners }: Triangles, side: number): Mm {
  const a = corners[side]!;
  const b = corners[side % 3 === 2 ? side - 2 : side + 1]!;
  return Math.hypot(boundary.x[b]! - boundary.x[a]!, boundary.y[b]! - boundary.y[a]!);
}

/** A side as a chord, for one who comes through it into its own triangle. */
export function chordInto(triangles: Triangles, side: number): Chord {
  const { boundary, corners } = triangles;
  const left = corners[side]!;
  const right = corners[side % 3 === 2 ? side - 2 : side + 1]!;
  const middle = {
    x: (boundary.x[left]! + boundary.x[right]!) / 2,
    y: (boundary.y[left]! + boundary.y[right]!) / 2,
  };
  return { left, right, width: widthOf(triangles, side), middle };
}

/** The side of the neighbour that lies on a side; the side must have a neighbour. */
export function otherSide({ corners, across }: Triangles, side: number): number {
  const neighbour = across[side]!;
  const start = corners[side % 3 === 2 ? side - 2 : side + 1]!;
  for (let k = 0; k < 3; k += 1) if (corners[3 * neighbour + k] === start) return 3 * neighbour + k;
  throw new RangeError('two triangles that share a side do not share its corners');
}

/** Area of a triangle [mm²]. */
export function areaOf({ boundary: { x, y }, corners }: Triangles, triangle: number): number {
  const a = corners[3 * triangle]!;
  const b = corners[3 * triangle + 1]!;
  const c = corners[3 * triangle + 2]!;
  return ((x[b]! - x[a]!) * (y[c]! - y[a]!) - (y[b]! - y[a]!) * (x[c]! - x[a]!)) / 2;
}
