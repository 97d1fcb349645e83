/** A place in a toolpath that the user draws as a box. */
import { outsideRange, type Problem, type Range } from '../../problems.ts';
import { failIfAny, ok, type Result } from '../../result.ts';
import type { Mm, Rad } from '../../units.ts';
import type { Place } from './place.ts';

/** A box round a thin section that bends in the plane of the plate. */
export interface DrawnBox {
  /** Its middle [mm], in the coordinates of the toolpath. */
  readonly x: Mm;
  readonly y: Mm;
  /** Direction from root to root, counter-clockwise from x. */
  readonly angle: Rad;
  readonly length: Mm;
  readonly thickness: Mm;
  readonly bottom: Mm;
  readonly top: Mm;
}

const PLATE: Range = { min: -2000, max: 2000, because: 'no desktop printer reaches further' };
const LENGTH: Range = {
  min: 0.2,
  max: 500,
  because: 'a thin section is longer than a line is wide, and fits on a plate',
};
const THICKNESS: Range = { min: 0.1, max: 20, because: 'nothing thinner is laid, and nothing thicker bends' };
const HEIGHT: Range = { min: 0, max: 2000, because: 'the plate is at 0, and no desktop printer reaches higher' };

const FIELDS = [
  ['x', 'A middle at x', PLATE, 'mm'],
  ['y', 'A middle at y', PLATE, 'mm'],
  ['length', 'A length from root to root of', LENGTH, 'mm'],
  ['thickness', 'A thickness of', THICKNESS, 'mm'],
  ['bottom', 'A bottom at', HEIGHT, 'mm'],
  ['top', 'A top at', HEIGHT, 'mm'],
] as const;

/**
 * What is wrong with a box.
 *
 * @param box - as typed or drawn [mm], angle [rad]
 * @returns problems [-], empty when it can be used
 *
 * Problems: `not-a-number`, `below-minimum`, `above-maximum`.
 *
 * @example checkBox({ x: 0, y: 0, angle: 0, length: 5, thickness: 0.84, bottom: 0, top: 6 }) // → []
 */
export function checkBox(box: Readonly<Record<keyof DrawnBox, number>>): readonly Problem[] {
  const found = FIELDS.flatMap(
    ([name, what, range, unit]) => outsideRange(`box.${name}`, what, box[name], range, unit) ?? [],
  );
  const angle = outsideRange('box.angle', 'A direction of', box.angle, TURN, '°');
  if (angle) found.push(angle);
  if (found.length === 0 && !(box.top > box.bottom)) {
    const message = `A top at ${box.top} mm is not above the bottom at ${box.bottom} mm; raise it`;
    found.push({ code: 'below-minimum', message, field: 'box.top', value: box.top, limit: box.bottom });
  }
  return found;
}

const TURN: Range = { min: -2 * Math.PI, max: 2 * Math.PI, because: 'a whole turn comes back to where it began' };

/**
 * The place that a box tells. It is taken to bend in the plane of the plate.
 *
 * @param box - as typed or drawn [mm], angle [rad]
 * @param number - of the place [-], from 1
 * @returns the place, or what is wrong with the box
 *
 * Problems: as `checkBox`.
 */
export function drawnPlace(box: DrawnBox, number: number): Result<Place> {
  const failed = failIfAny(checkBox(box));
  if (failed) return failed;
  const { x, y, angle, length, thickness, bottom, top } = box;
  const [dx, dy] = [(Math.cos(angle) * length) / 2, (Math.sin(angle) * length) / 2];
  const run = [
    { x: x - dx, y: y - dy },
    { x: x + dx, y: y + dy },
  ];
  return ok({ number, from: 'drawn', lying: 'flat', run, thickness, reach: thickness, bottom, top });
}
