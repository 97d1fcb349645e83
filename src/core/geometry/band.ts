import type { Mm } from '../units.ts';
import { loopPath } from './loop.ts';
import type { Path, Point } from './outline.ts';

/** The middle line of a member in one state, as samples from its first end to its second; two at least. */
export interface MiddleLine {
  readonly x: ArrayLike<Mm>;
  readonly y: ArrayLike<Mm>;
  /** Direction of the middle line [rad]. */
  readonly angle: ArrayLike<number>;
  /** Thickness in the plane [mm], half of it to either side. */
  readonly thickness: ArrayLike<Mm>;
}

/**
 * The place of one sample, moved to the left of the middle line.
 *
 * @param line - middle line [mm] and [rad]
 * @param i - which sample [-]
 * @param share - of the thickness to move by [-], 0.5 for the left surface, −0.5 for the right
 * @returns the place [mm]
 *
 * @example sideOf({ x: [0, 4], y: [0, 0], angle: [0, 0], thickness: [0.8, 0.8] }, 1, 0.5) // → { x: 4, y: 0.4 }
 */
export function sideOf({ x, y, angle, thickness }: MiddleLine, i: number, share: number): Point {
  const [px, py, turn, deep] = [x[i], y[i], angle[i], thickness[i]];
  if (px === undefined || py === undefined || turn === undefined || deep === undefined) {
    throw new RangeError(`a middle line has no sample ${i}`);
  }
  return { x: px - share * deep * Math.sin(turn), y: py + share * deep * Math.cos(turn) };
}

/**
 * A member drawn at its thickness: its left side from the far end back to the near one, then its right side.
 *
 * @param line - middle line [mm] and [rad]
 * @returns corners of the band [mm], counter-clockwise, the first not repeated
 */
export function bandLoop(line: MiddleLine): readonly Point[] {
  const samples = Array.from({ length: line.x.length }, (_, i) => i);
  if (samples.length < 2) throw new RangeError(`a middle line of ${samples.length} samples has no length`);
  return [...samples.toReversed().map((i) => sideOf(line, i, 0.5)), ...samples.map((i) => sideOf(line, i, -0.5))];
}

/**
 * A member drawn at its thickness, as a closed outline of lines.
 *
 * @param line - middle line [mm] and [rad]
 * @returns closed path [mm], counter-clockwise
 *
 * @example bandOutline({ x: [0, 4], y: [0, 0], angle: [0, 0], thickness: [0.8, 0.8] }).start // → { x: 4, y: 0.4 }
 */
export function bandOutline(line: MiddleLine): Path {
  return loopPath(bandLoop(line));
}
