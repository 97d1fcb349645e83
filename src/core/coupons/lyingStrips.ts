/** Strips that lie on the plate along y, flat or as a crease, between pads. */
import type { Point } from '../geometry/outline.ts';
import type { Mm } from '../units.ts';
import { draftOf, type Draft } from './draft.ts';
import { gripWidth, lyingSizes, type Making } from './making.ts';
import { numberCuts, widestNumber } from './marks.ts';
import type { Strip } from './piece.ts';
import { filletLoop, rectangle, type Part } from './slabs.ts';

/** How far strips reach into pads, so that they are one with them [mm]. */
const INTO: Mm = 1;

/** Larger fillets would leave a short thick strip no even length [mm]. */
export const MOST_FILLET: Mm = 2;

/** What is asked of one strip. */
export interface StripAsked {
  readonly number: number;
  /** Free length. */
  readonly length: Mm;
  readonly strain?: number;
}

/** Length of a grip along its strip [mm]: room for its notches. */
export function gripLength(making: Making): Mm {
  return Math.max(12, widestNumber(making) + 3);
}

/**
 * The thin part itself, from the edge of one pad to that of the next; flat ones with fillets of about one thickness. One that lies
 * as a crease meets its pads in a step up from the plate, which no outline can round.
 *
 * @param making - sizes [mm]
 * @param from - middle of its lower end [mm]
 * @param asked - number and free length [mm]
 */
export function lyingStrip(
  making: Making,
  from: Point,
  asked: StripAsked,
): { readonly parts: Part[]; readonly strip: Strip } {
  const { wide, high } = lyingSizes(making);
  const { thickness, depth, count, countOf } = making;
  const { length } = asked;
  const to = { x: from.x, y: from.y + length };
  const loops = [rectangle(from.x - wide / 2, from.y - INTO, wide, length + 2 * INTO)];
  if (making.lying !== 'crease') {
    const radius = Math.min(thickness, length / 4, MOST_FILLET);
    for (const x of [1, -1] as const) {
      const side = from.x + (x * wide) / 2;
      loops.push(filletLoop({ x: side, y: from.y }, x, 1, radius), filletLoop({ x: side, y: to.y }, x, -1, radius));
    }
  }
  const strip: Strip = { ...asked, count, countOf, thickness, depth, from, to };
  return { parts: loops.map((loop) => ({ loop, from: 0, to: high })), strip };
}

/** A grip that begins at the end of a strip and goes on along y, with the number of the strip in its right side. */
export function lyingGrip(making: Making, end: Point, number: number): { readonly part: Part; readonly cuts: Part[] } {
  const [wide, long] = [gripWidth(making), gripLength(making)];
  const side = { x: end.x + wide / 2, y: end.y + long / 2 };
  return {
    part: { loop: rectangle(end.x - wide / 2, end.y, wide, long), from: 0, to: lyingSizes(making).padHigh },
    cuts: numberCuts(number, side, { x: -1, y: 0 }, making),
  };
}

/** A strip on its own, with a grip at either end; its number is in the upper one. */
export function looseStrip(making: Making, asked: StripAsked): Draft {
  const [wide, long] = [gripWidth(making), gripLength(making)];
  const { parts, strip } = lyingStrip(making, { x: 0, y: 0 }, asked);
  const lower: Part = { loop: rectangle(-wide / 2, -long, wide, long), from: 0, to: lyingSizes(making).padHigh };
  const upper = lyingGrip(making, strip.to, asked.number);
  return draftOf({ parts: [...parts, lower, upper.part], cuts: upper.cuts }, [strip]);
}
