import type { Piece, Point } from './outline.ts';

export type Arc = Extract<Piece, { kind: 'arc' }>;

/** The vector from a to b. */
export function from(a: Point, b: Point): Point {
  return { x: b.x - a.x, y: b.y - a.y };
}

/** The point `scale` times a direction away from a point. */
export function along(point: Point, direction: Point, scale: number): Point {
  return { x: point.x + scale * direction.x, y: point.y + scale * direction.y };
}

export function cross(a: Point, b: Point): number {
  return a.x * b.y - a.y * b.x;
}

export function dot(a: Point, b: Point): number {
  return a.x * b.x + a.y * b.y;
}

export function distance(a: Point, b: Point): number {
  return Math.hypot(b.x - a.x, b.y - a.y);
}

/** Same direction, length 1; the vector must have a length. */
export function unit(v: Point): Point {
  const length = Math.hypot(v.x, v.y);
  if (!(length > 0)) throw new RangeError('a direction needs a length');
  return { x: v.x / length, y: v.y / length };
}

/** A quarter turn counter-clockwise: the left side of a direction. */
export function left(v: Point): Point {
  return { x: -v.y, y: v.x };
}

/** Angle of a point seen from a centre [rad]. */
export function bearing(centre: Point, point: Point): number {
  return Math.atan2(point.y - centre.y, point.x - centre.x);
}

/** How far an arc turns from a start [rad]: above 0 counter-clockwise, below 0 clockwise; back to its start is a full turn. */
export function sweep(start: Point, arc: Arc): number {
  const turn = bearing(arc.centre, arc.to) - bearing(arc.centre, start);
  const full = 2 * Math.PI;
  if (arc.counterClockwise) return turn > 0 ? turn : turn + full;
  return turn < 0 ? turn : turn - full;
}
