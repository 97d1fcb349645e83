import type { Mm } from '../units.ts';
import type { Path, Piece, Point } from './outline.ts';
import { along, cross, distance, dot, from, left, unit } from './vector.ts';

/** Sides shorter and corners tighter than this are round-off [mm]. */
const TINY = 1e-9;

/** A corner of a closed outline and the radius it is rounded with; 0 leaves it sharp. */
export interface Corner extends Point {
  readonly radius: Mm;
}

/**
 * A closed outline through rounded corners. Corners that turn left round the material off, corners that turn right
 * become fillets; both are tangent to the sides they join.
 *
 * The outline starts halfway along its last side, so that a contour can begin there, away from any corner.
 *
 * @param corners - corners [mm], counter-clockwise, at least three, rounded no further than their sides reach
 * @returns closed path [mm] of lines and true arcs
 *
 * @example roundedOutline([{ x: 0, y: 0, radius: 0 }, { x: 2, y: 0, radius: 0 }, { x: 0, y: 2, radius: 0 }]).start // → { x: 0, y: 1 }
 */
export function roundedOutline(corners: readonly Corner[]): Path {
  const first = corners[0];
  const last = corners.at(-1);
  if (!first || !last || corners.length < 3) throw new RangeError('an outline needs at least three corners');
  const start = along(last, from(last, first), 0.5);
  const pieces: Piece[] = corners.flatMap((corner, i) =>
    roundCorner(corners.at(i - 1) ?? last, corner, corners[i + 1] ?? first),
  );
  return { start, pieces: withoutPoints(start, [...pieces, { kind: 'line', to: start }]) };
}

/** Drops sides that two roundings have used up entirely. */
function withoutPoints(start: Point, pieces: readonly Piece[]): Piece[] {
  return pieces.filter((piece, i) => piece.kind === 'arc' || distance(pieces[i - 1]?.to ?? start, piece.to) > TINY);
}

/** The side up to a corner and the arc round it. */
function roundCorner(before: Point, corner: Corner, after: Point): Piece[] {
  const here: Point = { x: corner.x, y: corner.y };
  if (corner.radius < TINY) return [{ kind: 'line', to: here }];
  const into = unit(from(before, corner));
  const out = unit(from(corner, after));
  const turn = cross(into, out);
  // tan(φ/2) = sin φ/(1 + cos φ): exactly 1 at a right angle, where Math.tan is not.
  const reach = (corner.radius * Math.abs(turn)) / (1 + dot(into, out));
  if (!(reach <= Math.min(distance(before, corner), distance(corner, after)) * (1 + 1e-9))) {
    throw new RangeError(`a corner of radius ${corner.radius} does not fit its sides`);
  }
  const begin = along(here, into, -reach);
  const counterClockwise = turn > 0;
  const centre = along(begin, left(into), counterClockwise ? corner.radius : -corner.radius);
  return [
    { kind: 'line', to: begin },
    { kind: 'arc', to: along(here, out, reach), centre, counterClockwise },
  ];
}
