/** A closed outline as its corners in order, the first not repeated: what polygon work wants. */
import type { Mm } from '../units.ts';
import { flatten } from './flatten.ts';
import { SAME_PLACE } from './meet.ts';
import type { Path, Point } from './outline.ts';
import { cross, distance } from './vector.ts';

export type Loop = readonly Point[];

/**
 * A closed path of straight lines through corners.
 *
 * @param loop - corners [mm], at least three
 * @returns closed path [mm] that starts at the first corner
 *
 * @example loopPath([{ x: 0, y: 0 }, { x: 2, y: 0 }, { x: 0, y: 2 }]).start // → { x: 0, y: 0 }
 */
export function loopPath(loop: Loop): Path {
  const [start, ...rest] = loop;
  if (!start || rest.length < 2) throw new RangeError(`${loop.length} corners close no outline`);
  return { start, pieces: [...rest, start].map((to) => ({ kind: 'line', to })) };
}

/**
 * The corners of a closed path, its arcs as chords.
 *
 * @param path - closed path [mm]
 * @param tolerance - how far a chord may lie from its arc [mm], > 0
 * @returns corners [mm], the first not repeated
 *
 * @example pathLoop(loopPath([{ x: 0, y: 0 }, { x: 2, y: 0 }, { x: 0, y: 2 }]), 0.01).length // → 3
 */
export function pathLoop(path: Path, tolerance: Mm): Loop {
  const points = flatten(path, tolerance);
  const last = points.at(-1);
  return last && distance(last, path.start) < SAME_PLACE ? points.slice(0, -1) : points;
}

/**
 * Whether a place lies inside closed outlines of which holes run the other way round.
 *
 * @param loops - outlines [mm]
 * @param place - anywhere [mm]; on an outline itself either answer may come
 * @returns true where the outlines wind round it
 *
 * @example isInside([[{ x: 0, y: 0 }, { x: 2, y: 0 }, { x: 0, y: 2 }]], { x: 0.5, y: 0.5 }) // → true
 */
export function isInside(loops: readonly Loop[], { x, y }: Point): boolean {
  let winds = 0;
  for (const loop of loops) {
    let a = loop.at(-1);
    for (const b of loop) {
      if (a && a.y > y !== b.y > y) {
        const isLeft = x < a.x + ((y - a.y) / (b.y - a.y)) * (b.x - a.x);
        if (isLeft) winds += b.y > a.y ? 1 : -1;
      }
      a = b;
    }
  }
  return winds !== 0;
}

/**
 * Area inside a loop.
 *
 *     A = ½·Σ (x·Δy − y·Δx)
 *
 * @param loop - corners [mm]
 * @returns area [mm²], above 0 when it runs counter-clockwise
 *
 * @example loopArea([{ x: 0, y: 0 }, { x: 2, y: 0 }, { x: 0, y: 2 }]) // → 2
 */
export function loopArea(loop: Loop): number {
  return loop.reduce((sum, point, i) => sum + cross(loop.at(i - 1) ?? point, point) / 2, 0);
}
