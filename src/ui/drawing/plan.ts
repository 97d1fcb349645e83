import type { Assessment } from '../../core/design/assessment.ts';
import type { Point } from '../../core/geometry/outline.ts';
import type { LengthUnit } from '../text/numbers.ts';
import { clearPaper, type ClearPaper } from './clearPaper.ts';
import { bentPoint, movingPoints, sweptBox, travelSteps, type Figure } from './figure.ts';
import { landingOf, type Landing } from './landing.ts';
import { grown, labelBox, type Box, type Label } from './lettering.ts';
import { densified, gridInside } from './polygon.ts';
import { FRAME, onSheet, type Sheet } from './sheet.ts';

/** The sheet while it is being laid out: everything has its place except the top and bottom edges. */
export interface Plan {
  readonly a: Assessment;
  readonly figure: Figure;
  readonly landing: Landing;
  readonly sheet: Sheet;
  readonly unit: LengthUnit;
  /** Clear of the joint at rest and of everything it sweeps through. */
  readonly paper: ClearPaper;
  /** Clear of the joint at rest only: for words that move along with it. */
  readonly restPaper: ClearPaper;
  /** The moving part at so many fractions of its travel [px]. */
  readonly moved: readonly { readonly fraction: number; readonly points: readonly Point[] }[];
}

/** Nothing is laid out further from the leaf than this [px]. */
const ROOM = { above: 1600, below: 900 };
/** Points of the joint are this close together [px], well under the height of a letter. */
const STEP = 6;
const INSIDE_STEP = 12;
/** At so many angles a label that moves along is tested against the joint. */
const LOOKS = 16;
/** Clear paper round a word [px]. */
export const MARGIN = 4;

/** The sheet with the joint at rest and its travel inked in. */
export function startPlan(a: Assessment, figure: Figure, sheet: Sheet, unit: LengthUnit): Plan {
  const over = { x: 0, y: -ROOM.above, width: sheet.width, height: ROOM.above + ROOM.below };
  const [paper, restPaper] = [clearPaper(over), clearPaper(over)];
  const place = (point: Point) => onSheet(sheet, point);
  const rest = [
    ...densified([...figure.points, ...figure.points.slice(0, 1)], STEP / sheet.pxPerMm),
    ...gridInside(figure.points, INSIDE_STEP / sheet.pxPerMm, figure.box.left),
  ].map(place);
  const moving = movingPoints(figure, STEP / sheet.pxPerMm);
  const at = (fraction: number) => moving.map((point) => place(bentPoint(figure, point, fraction)));
  for (const kept of [paper, restPaper]) {
    kept.ink(rest);
    kept.inkBox({ x: 0, y: -ROOM.above, width: FRAME, height: over.height });
  }
  for (const fraction of travelSteps(figure, STEP / sheet.pxPerMm)) paper.ink(at(fraction));
  const moved = Array.from({ length: LOOKS + 1 }, (_, i) => ({ fraction: i / LOOKS, points: at(i / LOOKS) }));
  return { a, figure, landing: landingOf(a), sheet, unit, paper, restPaper, moved };
}

/** Keeps a place clear from now on. */
export function keep({ paper, restPaper }: Plan, box: Box): void {
  paper.inkBox(box);
  restPaper.inkBox(box);
}

/** Whether words and whatever belongs to them can go there. */
export function fits({ paper }: Plan, boxes: readonly Box[]): boolean {
  return boxes.every((box) => paper.isClear(grown(box, MARGIN)));
}

/** The first of several places for a word that is clear; it is taken. */
export function settle(plan: Plan, labels: readonly Label[]): Label | undefined {
  const label = labels.find((candidate) => fits(plan, [labelBox(candidate)]));
  if (label) keep(plan, labelBox(label));
  return label;
}

/** How high and low the joint itself reaches [px]. */
export function reachOf({ figure, sheet }: Pick<Plan, 'figure' | 'sheet'>): {
  readonly top: number;
  readonly bottom: number;
} {
  const swept = sweptBox(figure);
  return { top: -swept.top * sheet.pxPerMm, bottom: -swept.bottom * sheet.pxPerMm };
}
