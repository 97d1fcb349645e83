import type { MiddleLine } from '../geometry/band.ts';
import type { Point } from '../geometry/outline.ts';
import type { Mm } from '../units.ts';
import { centrelineOf, type Centreline } from './centreline.ts';
import type { Member } from './model.ts';

/** Where curvature and thickness are looked at before the line is cut up. */
const LOOKS = 64;
/** A member whose thickness changes is cut up at least so finely. */
const LEAST_CHANGING = 64;

/**
 * The middle line of a member as printed, without solving anything.
 *
 * @param member - checked member [-]
 * @param from - its first node [mm]
 * @param to - its second node [mm]
 * @param tolerance - how far a chord may lie from the line [mm], > 0
 * @returns samples from the first node to the second [mm] and [rad]
 */
export function printedLine(member: Member, from: Point, to: Point, tolerance: Mm): MiddleLine {
  const curve = centrelineOf(member, from, to);
  const count = piecesOf(curve, tolerance, typeof member.thickness !== 'number');
  const line = { x: [from.x], y: [from.y], angle: [curve.heading], thickness: [curve.thickness(0)] };
  let [x, y, angle] = [from.x, from.y, curve.heading];
  for (let i = 0; i < count; i++) {
    const [u, step] = [i / count, 1 / count];
    const turned = (share: number) => angle + simpson((at) => curve.curvature(at) * curve.speed(at), u, share * step);
    const [half, whole] = [turned(0.5), turned(1)];
    const moved = (way: (angle: number) => number) =>
      (step / 6) *
      (curve.speed(u) * way(angle) + 4 * curve.speed(u + step / 2) * way(half) + curve.speed(u + step) * way(whole));
    [x, y, angle] = [x + moved(Math.cos), y + moved(Math.sin), whole];
    line.x.push(x);
    line.y.push(y);
    line.angle.push(angle);
    line.thickness.push(curve.thickness(u + step));
  }
  // What summing up leaves open is closed, so that the end lies on its node.
  const [offX, offY] = [(to.x - x) / count, (to.y - y) / count];
  return { ...line, x: line.x.map((one, i) => one + i * offX), y: line.y.map((one, i) => one + i * offY) };
}

function simpson(of: (u: number) => number, from: number, by: number): number {
  return (by / 6) * (of(from) + 4 * of(from + by / 2) + of(from + by));
}

/** The sagitta κ·s²/8 of each piece stays within the tolerance. */
function piecesOf(curve: Centreline, tolerance: Mm, isChanging: boolean): number {
  const sharpest = Math.max(...Array.from({ length: LOOKS + 1 }, (_, i) => Math.abs(curve.curvature(i / LOOKS))));
  const pieces = Math.ceil(curve.length * Math.sqrt(sharpest / (8 * tolerance)));
  return Math.max(1, pieces, isChanging ? LEAST_CHANGING : 0);
}
