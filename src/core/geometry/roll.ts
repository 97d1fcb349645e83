import type { Mm, Rad } from '../units.ts';
import type { Point } from './outline.ts';

/**
 * Where a point of the undeformed joint goes when its flexure is rolled to a circular arc.
 *
 *     R = L/θ; a point at (x, y), 0 ≤ x ≤ L, goes to ((R − y)·sin(x/R), R − (R − y)·cos(x/R))
 *
 * Left of the flexure nothing moves; right of it the pad turns as a rigid body by θ.
 *
 * @param point - point of the undeformed joint [mm], flexure from x = 0 to L on y = 0
 * @param length - flexing length L [mm], > 0
 * @param angle - end rotation θ [rad], either sign
 * @returns the point after bending [mm]
 *
 * Source: plane-bending.
 * @example rollPoint({ x: 12, y: 0 }, 12, radians(90)) // → { x: 7.639437, y: 7.639437 }
 */
export function rollPoint(point: Point, length: Mm, angle: Rad): Point {
  if (point.x <= 0 || angle === 0) return point;
  const bent = Math.min(point.x, length);
  const radius = length / angle;
  const turn = bent / radius;
  const beyond = point.x - bent;
  // 1 − cos is taken as 2·sin², which keeps its digits at small angles, where R is huge.
  const rise = 2 * radius * Math.sin(turn / 2) ** 2;
  return {
    x: radius * Math.sin(turn) - point.y * Math.sin(turn) + beyond * Math.cos(turn),
    y: rise + point.y * Math.cos(turn) + beyond * Math.sin(turn),
  };
}
