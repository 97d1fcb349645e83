import type { Point } from '../../core/geometry/outline.ts';
import type { ClearPaper } from './clearPaper.ts';
import { grown, overlap, type Box } from './lettering.ts';
import { FRAME } from './sheet.ts';

/** What stands beside the joint on the sheet, by its size [px]. */
export interface Furniture {
  readonly section: Size;
  readonly legend: Size;
  readonly lifeSize: Size | undefined;
}

export interface Size {
  readonly width: number;
  readonly height: number;
}

/** Where each stands: its upper left corner [px]. */
export interface Placed {
  readonly section: Point;
  readonly legend: Point;
  readonly lifeSize: Point | undefined;
  /** Top of the sheet: it grows upwards until everything has clear paper. */
  readonly top: number;
}

type IsClear = (box: Box) => boolean;

const APART = 12;
const CLEARANCE = 8;
const STEP_X = 10;
const STEP_Y = 10;
const FROM_EDGE = 12;
/** What is given for a better arrangement, in px by which the sheet may grow. */
const WORTH = { lifeSize: 50, leftward: 0.12 };
/** The sheet never grows by more than this for furniture [px]. */
const MOST = 420;

/**
 * Finds clear paper for all furniture in a row at the head of the sheet, the section at the left. The sheet grows
 * until there is some, and a little more where that brings the section further left or finds room for life size.
 */
export function placeFurniture(paper: ClearPaper, furniture: Furniture, width: number, lowestTop: number): Placed {
  const isClear = paper.asItIs();
  let best: { readonly placed: Placed; readonly cost: number } | undefined;
  for (let growth = 0; growth <= Math.min(MOST, best?.cost ?? MOST); growth += STEP_Y) {
    const placed = rowAt(isClear, furniture, width, lowestTop - growth);
    if (!placed) continue;
    const without = furniture.lifeSize && !placed.lifeSize ? WORTH.lifeSize : 0;
    const cost = growth + without + WORTH.leftward * placed.section.x;
    if (!best || cost < best.cost) best = { placed, cost };
  }
  const top = lowestTop - MOST;
  const y = top + FROM_EDGE;
  const left = FRAME + FROM_EDGE;
  const legend = { x: left + furniture.section.width + APART, y };
  return best?.placed ?? { section: { x: left, y }, legend, lifeSize: undefined, top };
}

/** Everything in a row under this top edge, or nothing where there is no room. */
function rowAt(
  isClear: IsClear,
  { section, legend, lifeSize }: Furniture,
  width: number,
  top: number,
): Placed | undefined {
  const y = top + FROM_EDGE;
  const first = along(isClear, section, width, y, []);
  const second = first && along(isClear, legend, width, y, [first], first.x + first.width + APART);
  if (!first || !second) return undefined;
  const third = lifeSize && lifeSizePlace(isClear, lifeSize, width, y, [first, second]);
  return { section: first, legend: second, lifeSize: third, top };
}

/** Under the legend, where the eye already is, else anywhere in the row. */
function lifeSizePlace(
  isClear: IsClear,
  size: Size,
  width: number,
  y: number,
  taken: readonly [Box, Box],
): Box | undefined {
  const [, legend] = taken;
  for (const drop of [14, 24, 36]) {
    const under: Box = { ...size, x: legend.x, y: legend.y + legend.height + drop };
    if (isFree(isClear, under, taken) && under.x + under.width < width - FROM_EDGE) return under;
  }
  return along(isClear, size, width, y, taken);
}

/** The first clear place in a row of the sheet. */
function along(
  isClear: IsClear,
  size: Size,
  width: number,
  y: number,
  taken: readonly Box[],
  from = FRAME + FROM_EDGE,
): Box | undefined {
  for (let x = from; x + size.width <= width - FROM_EDGE; x += STEP_X) {
    const box = { ...size, x, y };
    if (isFree(isClear, box, taken)) return box;
  }
  return undefined;
}

function isFree(isClear: IsClear, box: Box, taken: readonly Box[]): boolean {
  return !taken.some((other) => overlap(grown(box, APART), other)) && isClear(grown(box, CLEARANCE));
}
