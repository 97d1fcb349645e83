import type { Mm } from '../units.ts';
import type { Point } from './outline.ts';

/**
 * How far a point is from a straight line between two others.
 *
 * @param point - anywhere [mm]
 * @param a - one end [mm]
 * @param b - other end [mm], may be the same
 * @returns distance [mm], ≥ 0
 *
 * @example fromSegment({ x: 5, y: 3 }, { x: 0, y: 0 }, { x: 1, y: 0 }) // → 5
 */
export function fromSegment(point: Point, a: Point, b: Point): Mm {
  const [ux, uy] = [b.x - a.x, b.y - a.y];
  const square = ux * ux + uy * uy;
  const share = square > 0 ? ((point.x - a.x) * ux + (point.y - a.y) * uy) / square : 0;
  const on = Math.min(1, Math.max(0, share));
  return Math.hypot(point.x - a.x - on * ux, point.y - a.y - on * uy);
}
