/** How a thin section lies in the print, by which of its directions points away from the plate. */
import { dot3 } from '../geometry/mesh/vector3.ts';
import type { Lying } from '../print/profile.ts';
import { asRad, radians, type Rad } from '../units.ts';
import { upDirection } from './buildDirection.ts';
import type { Flexure } from './flexure.ts';
import type { PlateUp } from './judged.ts';

/** A lying and how far from it a section is turned. */
export interface Lies {
  readonly lying: Lying;
  readonly aslant: Rad;
}

const RIGHT_ANGLE = Math.PI / 2;
/** Half-way between standing up and lying down. */
const HALF_WAY: Rad = radians(45);

/**
 * How a thin section lies when the part stands with this direction up.
 *
 * Its axis up is `flat`, the thin way up `crease`, root to root up `upright`; the nearest of the three, and how far from it.
 * Square on three axes alike it is 54.7° from each; of a straight section no more.
 *
 * A curved one is flat by its axis alone, because its other two directions change along it. One that is not flat is laid in
 * steps; it is called `upright` as soon as any of it is steeper than 45°, since it is there that bending pulls layers apart,
 * and its steepest place tells how far it is from that.
 *
 * @param flexure - as found [mm], directions of length 1
 * @param up - which direction of the file points away from the plate [-]
 * @returns lying and the angle off it [rad], ≥ 0
 */
export function lyingOf(flexure: Flexure, up: PlateUp): Lies {
  const direction = upDirection(up);
  const off = (of: Flexure['axis']) => Math.acos(Math.min(1, Math.abs(dot3(of, direction))));
  const [flat, crease, upright] = [off(flexure.axis), off(flexure.across), off(flexure.along)];
  if (flexure.isCurved) return curvedLying(flexure, flat, upright);
  const least = Math.min(flat, crease, upright);
  const lying = least === flat ? 'flat' : least === crease ? 'crease' : 'upright';
  return { lying, aslant: asRad(least) };
}

function curvedLying(flexure: Flexure, flat: number, chord: number): Lies {
  if (flat <= HALF_WAY) return { lying: 'flat', aslant: asRad(flat) };
  // Which way it bulges is not asked: of the two the steeper counts.
  const steepest = Math.max(0, chord - mostOffChord(flexure));
  if (steepest < HALF_WAY) return { lying: 'upright', aslant: asRad(steepest) };
  return { lying: 'crease', aslant: asRad(RIGHT_ANGLE - steepest) };
}

/** The most by which its centre line runs in another direction than straight from root to root [rad]. */
function mostOffChord({ centreLine: { points } }: Flexure): number {
  const [first, last] = [points[0], points.at(-1)];
  if (!first || !last) return 0;
  const straight = { x: last.x - first.x, y: last.y - first.y };
  return points.slice(1).reduce((most, point, i) => {
    const [dx, dy] = [point.x - points[i]!.x, point.y - points[i]!.y];
    const off = Math.atan2(straight.x * dy - straight.y * dx, straight.x * dx + straight.y * dy);
    return Math.max(most, Math.abs(off));
  }, 0);
}
