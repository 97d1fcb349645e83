import type { Mm } from '../units.ts';
import type { Path, Point } from './outline.ts';

/**
 * A full circle as two half arcs.
 *
 * @param centre - its centre [mm]
 * @param radius - its radius [mm], > 0
 * @param counterClockwise - true round material [-], false round a hole
 * @returns closed path [mm], from its right-most point
 *
 * @example disc({ x: 1, y: 0 }, 2).start // → { x: 3, y: 0 }
 */
export function disc(centre: Point, radius: Mm, counterClockwise = true): Path {
  if (!(radius > 0)) throw new RangeError(`a circle needs a radius, not ${radius}`);
  const right = { x: centre.x + radius, y: centre.y };
  const left = { x: centre.x - radius, y: centre.y };
  return {
    start: right,
    pieces: [left, right].map((to) => ({ kind: 'arc', to, centre, counterClockwise })),
  };
}
