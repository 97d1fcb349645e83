/** A joint drawn at a scale that is asked for, with what is lettered round it: what the drawings of the page share. */
import type { Assessment } from '../../../core/design/assessment.ts';
import type { Bounds } from '../../../core/geometry/flatten.ts';
import { labelBox, type Box } from '../../drawing/lettering.ts';
import type { Marks } from '../../drawing/marks.ts';
import { NOMINAL_PX_PER_MM, onSheet, type Sheet } from '../../drawing/sheet.ts';
import type { LengthUnit } from '../../text/numbers.ts';

export interface Asked {
  readonly a: Assessment;
  readonly unit: LengthUnit;
  readonly scale: number;
  /** With the joint as it is moved as far as wanted, dashed. */
  readonly isMoved: boolean;
}

/** Room round the joint while words look for their place [px]. */
const AROUND = 190;
/** Arrows may point from outside, with a tail of so much [px]. */
const TAIL = 24;
const EDGE = 3;

/** A sheet that is wide enough for a joint of this extent [mm] and all that is lettered round it. */
export function sheetFor({ left, right }: Bounds, scale: number): Sheet {
  const pxPerMm = scale * NOMINAL_PX_PER_MM;
  const width = Math.ceil((right - left) * pxPerMm) + 2 * AROUND;
  // On a whole px, so that what is level and upright is drawn sharp.
  return { scale, pxPerMm, width, rootX: Math.round(AROUND - left * pxPerMm), top: 0, bottom: 0, small: false };
}

/** The extent of a joint on its sheet [px], y down. */
export function extentOn(sheet: Sheet, { left, right, top, bottom }: Bounds): Bounds {
  const [corner, far] = [onSheet(sheet, { x: left, y: top }), onSheet(sheet, { x: right, y: bottom })];
  return { left: corner.x, right: far.x, top: corner.y, bottom: far.y };
}

/** What holds a joint and the marks round it [px]. */
export function boxRound({ left, right, top, bottom }: Bounds, { labels, arrows }: Marks): Box {
  const boxes = [
    { x: left, y: top, width: right - left, height: bottom - top },
    ...labels.map(labelBox),
    ...arrows.map(({ x, y }) => ({ x: x - TAIL, y: y - TAIL / 2, width: 2 * TAIL, height: TAIL })),
  ];
  const x = Math.floor(Math.min(...boxes.map((box) => box.x))) - EDGE;
  const y = Math.floor(Math.min(...boxes.map((box) => box.y))) - EDGE;
  const width = Math.ceil(Math.max(...boxes.map((box) => box.x + box.width))) + EDGE - x;
  const height = Math.ceil(Math.max(...boxes.map((box) => box.y + box.height))) + EDGE - y;
  return { x, y, width, height };
}
