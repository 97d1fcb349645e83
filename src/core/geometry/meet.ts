import type { Mm } from '../units.ts';
import type { Piece, Point } from './outline.ts';
import { along, cross, distance, dot, from, left, sweep, unit } from './vector.ts';

/** Two places closer than this are one [mm]: far above round-off, far below anything that can be cut. */
export const SAME_PLACE: Mm = 1e-9;

/** One piece of a path together with the point it starts from. */
export interface Span {
  readonly start: Point;
  readonly piece: Piece;
}

/** Where the endless lines or full circles that two pieces lie on meet: none, one or two places. */
export function meet(a: Span, b: Span): readonly Point[] {
  if (a.piece.kind === 'line') return b.piece.kind === 'line' ? linesMeet(a, b) : lineMeetsCircle(a, b);
  if (b.piece.kind === 'line') return lineMeetsCircle(b, a);
  return circlesMeet(
    a.piece.centre,
    distance(a.piece.centre, a.start),
    b.piece.centre,
    distance(b.piece.centre, b.start),
  );
}

function linesMeet(a: Span, b: Span): Point[] {
  const [p, q] = [unit(from(a.start, a.piece.to)), unit(from(b.start, b.piece.to))];
  const turn = cross(p, q);
  if (Math.abs(turn) < 1e-12) return [];
  return [along(a.start, p, cross(from(a.start, b.start), q) / turn)];
}

function lineMeetsCircle(line: Span, circle: Span): Point[] {
  if (circle.piece.kind !== 'arc') throw new RangeError('a circle is needed');
  const { centre } = circle.piece;
  const direction = unit(from(line.start, line.piece.to));
  const foot = along(line.start, direction, dot(from(line.start, centre), direction));
  return symmetric(foot, direction, distance(centre, circle.start) ** 2 - distance(centre, foot) ** 2);
}

function circlesMeet(a: Point, ra: Mm, b: Point, rb: Mm): Point[] {
  const apart = distance(a, b);
  if (apart < SAME_PLACE) return [];
  const direction = unit(from(a, b));
  const share = (apart ** 2 + ra ** 2 - rb ** 2) / (2 * apart);
  return symmetric(along(a, direction, share), left(direction), ra ** 2 - share ** 2);
}

/** The two points √(reach²) to either side of a foot; one when they only touch, none when they miss. */
function symmetric(foot: Point, direction: Point, reachSquared: number): Point[] {
  // A tangent may miss by round-off of lengths up to hundreds of mm, squared.
  if (reachSquared < -1e-12) return [];
  const reach = Math.sqrt(Math.max(0, reachSquared));
  return reach < SAME_PLACE ? [foot] : [along(foot, direction, reach), along(foot, direction, -reach)];
}

/** Whether a point of the line or circle a piece lies on is on the piece itself, its ends included. */
export function isOn(point: Point, { start, piece }: Span): boolean {
  if (distance(point, start) < SAME_PLACE || distance(point, piece.to) < SAME_PLACE) return true;
  if (piece.kind === 'line') {
    const length = distance(start, piece.to);
    const way = dot(from(start, point), unit(from(start, piece.to)));
    return way >= 0 && way <= length;
  }
  return Math.abs(sweep(start, { ...piece, to: point })) <= Math.abs(sweep(start, piece));
}
