import type { Mm, Rad } from '../units.ts';
import { flatten } from './flatten.ts';
import type { Path, Point } from './outline.ts';

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

/**
 * A path after its flexure has been rolled to an arc, as points joined by straight lines.
 *
 * @param path - path of the undeformed joint [mm]
 * @param length - flexing length L [mm], > 0
 * @param angle - end rotation θ [rad], either sign
 * @param tolerance - how far a chord may lie from the true curve [mm], > 0
 * @returns points [mm], the start first
 *
 * Source: plane-bending.
 */
export function rollPath(path: Path, length: Mm, angle: Rad, tolerance: Mm): readonly Point[] {
  const flat = flatten(path, tolerance);
  const fine = flat.flatMap((point, i) => {
    const before = flat[i - 1];
    return before ? divide(before, point, length, angle, tolerance) : [point];
  });
  return fine.map((point) => rollPoint(point, length, angle));
}

/** Points after `a` up to `b` along a straight line, cut at both roots and finely enough between them. */
function divide(a: Point, b: Point, length: Mm, angle: Rad, tolerance: Mm): Point[] {
  const at = (share: number): Point => ({ x: a.x + (b.x - a.x) * share, y: a.y + (b.y - a.y) * share });
  const roots = [0, length]
    .map((x) => (x - a.x) / (b.x - a.x))
    .filter((share) => share > 0 && share < 1)
    .toSorted((p, q) => p - q);
  const shares = [0, ...roots, 1];
  return shares.slice(1).flatMap((end, i) => {
    const start = shares[i] ?? 0;
    const middle = at((start + end) / 2).x;
    const bends = middle > 0 && middle < length;
    const chords = bends ? chordsFor(at(start), at(end), length, angle, tolerance) : 1;
    return Array.from({ length: chords }, (_, k) =>
      k === chords - 1 && end === 1 ? b : at(start + ((end - start) * (k + 1)) / chords),
    );
  });
}

/** Chords whose sagitta on the outermost fibre they touch stays within the tolerance. */
function chordsFor(a: Point, b: Point, length: Mm, angle: Rad, tolerance: Mm): number {
  if (angle === 0) return 1;
  const outermost = length / Math.abs(angle) + Math.max(Math.abs(a.y), Math.abs(b.y));
  const most = 2 * Math.acos(Math.max(0, 1 - tolerance / outermost));
  const turn = (Math.abs(b.x - a.x) / length) * Math.abs(angle);
  return Math.max(1, Math.ceil(turn / most));
}
