/** Marks by which pieces and strips are told apart: numbers are cut, the kind of a piece is raised. */
import type { Point } from '../geometry/outline.ts';
import { along, left } from '../geometry/vector.ts';
import type { Mm } from '../units.ts';
import type { Making } from './making.ts';
import { PIECE_IDS, type PieceId } from './piece.ts';
import { barAt, type Part } from './slabs.ts';

/** How far in short and long notches go [mm]. Ours. */
const SHORT: Mm = 1.2;
const LONG: Mm = 3;
/** Raised bars are as long [mm]. Ours. */
const RAISED: Mm = 4;
/** As many bars or notches stand in a row at most: four short ones, or one long and three short; six for the kind. */
const MOST = 4;

type Mark = Making['mark'];

const rowOf = (count: number, { width, between }: Mark): Mm => count * width + (count - 1) * between;

/** How wide the notches of any number up to 8 are in all [mm]. */
export const widestNumber = ({ mark }: Making): Mm => rowOf(MOST, mark);
/** How wide those of one number are [mm]. */
export const numberWidth = (number: number, { mark }: Making): Mm => rowOf(Math.floor(number / 5) + (number % 5), mark);
/** How wide the raised bars of any kind are in all, and how long [mm]. */
export const kindSize = ({ mark }: Making): { readonly x: Mm; readonly y: Mm } => ({
  x: rowOf(PIECE_IDS.length, mark),
  y: RAISED,
});

/** Places of a row about its middle. */
function places(middle: Point, direction: Point, count: number, { width, between }: Mark): readonly Point[] {
  return Array.from({ length: count }, (_, i) => along(middle, direction, (i - (count - 1) / 2) * (width + between)));
}

/**
 * A number as notches: one long one for each five, a short one for each that is left.
 *
 * @param number - from 1 [-]
 * @param middle - of the row, on an edge [mm]
 * @param inward - direction into the material, of length 1 [-]
 * @param making - widths of marks [mm]
 * @param above - height from which up it is cut [mm]
 * @returns cuts
 */
export function numberCuts(number: number, middle: Point, inward: Point, making: Making, above: Mm = 0): Part[] {
  const fives = Math.floor(number / 5);
  return places(middle, left(inward), fives + (number % 5), making.mark).map((at, i) => ({
    // Begun outside the edge, so that none is left standing there.
    loop: barAt(at, inward, making.mark.width, above > 0 ? 0 : -1, i < fives ? LONG : SHORT),
    from: above,
    to: Infinity,
  }));
}

/**
 * The kind of a piece as raised bars: as many as its place in the list of pieces.
 *
 * @param id - kind of piece [-]
 * @param middle - of the row [mm]
 * @param top - what they stand on [mm]
 * @param making - widths and height of marks [mm]
 * @param isAlongX - whether the row runs along x, else along y [-]
 * @returns parts that go down into what they stand on
 */
export function kindBars(id: PieceId, middle: Point, top: Mm, making: Making, isAlongX = true): Part[] {
  const direction = isAlongX ? { x: 1, y: 0 } : { x: 0, y: 1 };
  return places(middle, direction, PIECE_IDS.indexOf(id) + 1, making.mark).map((at) => ({
    loop: barAt(at, left(direction), making.mark.width, -RAISED / 2, RAISED / 2),
    from: top,
    to: top + making.rise,
  }));
}
