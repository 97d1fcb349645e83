/** Where the joints of a demonstration stand: under each other on one root line, at one scale on one grid. */
import type { Bounds } from '../../../core/geometry/flatten.ts';
import type { Sheet } from '../../drawing/sheet.ts';

/** Scales that a class can say aloud, largest first. */
const SCALES: readonly number[] = [10, 8, 6, 5, 4, 3, 2, 1.5, 1, 0.5, 0.2];
/** Left of the joints stands the balloon with the letter, right of them the angle [px]. */
const MARGIN = { left: 44, right: 52, smallLeft: 34, smallRight: 30 } as const;
/** Under each joint stands its dimension, over it nothing [px]. */
const OVER = 10;
const UNDER = 40;
/** Less than this is no room for what is read beside it [px]. */
const LEAST = 128;
const SMALL = 520;

export interface RowsPlan {
  readonly scale: number;
  readonly sheets: readonly Sheet[];
}

/** The largest scale at which all rows fit a width and a height [px]; their roots stand under each other, with so much room
 * more at the right [px]. */
export function rowsPlan(
  rooms: readonly Bounds[],
  width: number,
  tallest: number,
  nominal: number,
  inset = 0,
): RowsPlan {
  const small = width < SMALL;
  const [before, beyond] = small ? [MARGIN.smallLeft, MARGIN.smallRight] : [MARGIN.left, MARGIN.right];
  const after = beyond + inset;
  const left = Math.min(...rooms.map((room) => room.left));
  const right = Math.max(...rooms.map((room) => room.right));
  const heights = (pxPerMm: number) => rooms.map((room) => heightOf(room, pxPerMm));
  const fits = (scale: number) => {
    const pxPerMm = scale * nominal;
    const high = heights(pxPerMm).reduce((sum, { top, bottom }) => sum + bottom - top, 0);
    return (right - left) * pxPerMm + before + after <= width && high <= tallest;
  };
  const scale = SCALES.find(fits) ?? SCALES.at(-1)!;
  const pxPerMm = scale * nominal;
  const free = Math.max(0, width - before - after - (right - left) * pxPerMm);
  const rootX = Math.round(before + Math.min(free / 2, 40) - left * pxPerMm);
  const sheets = heights(pxPerMm).map(({ top, bottom }): Sheet => {
    return { scale, pxPerMm, width, rootX, top, bottom, small };
  });
  return { scale, sheets };
}

/** Whole millimetres above and below the root line, so that the grid runs on from row to row. */
function heightOf({ top, bottom }: Bounds, pxPerMm: number) {
  const whole = (px: number) => Math.ceil(px / pxPerMm) * pxPerMm;
  const up = whole(top * pxPerMm + OVER);
  const down = whole(-bottom * pxPerMm + UNDER);
  return { top: -Math.max(up, whole(LEAST - down)), bottom: down };
}
