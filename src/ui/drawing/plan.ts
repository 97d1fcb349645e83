import type { Assessment } from '../../core/design/assessment.ts';
import type { Point } from '../../core/geometry/outline.ts';
import type { LengthUnit } from '../text/numbers.ts';
import { clearPaper } from './clearPaper.ts';
import type { Figure } from './figure.ts';
import { landingOf, type Landing } from './landing.ts';
import { labelBox, type Box, type Label } from './lettering.ts';
import { bentPoints, movingPoints, sweptBox, travelSteps } from './motion.ts';
import { densified, gridInside } from './polygon.ts';
import { isFree, keepLabel, type Room } from './room.ts';
import { FRAME, onSheet, type Sheet } from './sheet.ts';

/** The sheet while it is being laid out: everything has its place except the top and bottom edges. */
export interface Plan extends Required<Omit<Room, 'figures'>> {
  readonly a: Assessment;
  readonly figure: Figure;
  readonly landing: Landing;
  readonly sheet: Sheet;
  readonly unit: LengthUnit;
  /** The moving part at so many fractions of its travel [px]. */
  readonly moved: readonly { readonly fraction: number; readonly points: readonly Point[] }[];
}

/** Nothing is laid out further from the leaf than this [px]. */
const ROOM = { above: 1100, below: 600 };
/** Points of the joint are this close together [px], well under the height of a letter. */
const STEP = 8;
const INSIDE_STEP = 14;
/** At so many angles a label that moves along is tested against the joint. */
const LOOKS = 16;

/** The sheet with the joint at rest and its travel inked in. */
export function startPlan(a: Assessment, figure: Figure, sheet: Sheet, unit: LengthUnit): Plan {
  const over = { x: 0, y: -ROOM.above, width: sheet.width, height: ROOM.above + ROOM.below };
  const [paper, rest, words] = [clearPaper(over), clearPaper(over), clearPaper(over)];
  const place = (point: Point) => onSheet(sheet, point);
  const inked = [
    ...densified([...figure.points, ...figure.points.slice(0, 1)], STEP / sheet.pxPerMm),
    ...gridInside(figure.points, INSIDE_STEP / sheet.pxPerMm, figure.box.left),
  ].map(place);
  const moving = movingPoints(figure, STEP / sheet.pxPerMm, INSIDE_STEP / sheet.pxPerMm);
  const at = (fraction: number) => bentPoints(figure, moving, fraction).map(place);
  for (const kept of [paper, rest]) {
    kept.ink(inked);
    kept.inkBox({ x: 0, y: -ROOM.above, width: FRAME, height: over.height });
  }
  for (const fraction of travelSteps(figure, STEP / sheet.pxPerMm)) paper.ink(at(fraction));
  if (figure.otherEnd !== 0) paper.ink(ghostOf(figure, sheet));
  const moved = Array.from({ length: LOOKS + 1 }, (_, i) => ({ fraction: i / LOOKS, points: at(i / LOOKS) }));
  return { a, figure, landing: landingOf(a), sheet, unit, paper, rest, words, moved };
}

/** The outline drawn where the joint comes back to: words may stand inside it, but not on it. */
function ghostOf(figure: Figure, sheet: Sheet): Point[] {
  const edge = densified([...figure.points, ...figure.points.slice(0, 1)], STEP / sheet.pxPerMm);
  return bentPoints(
    figure,
    edge.filter(({ x }) => x > 0),
    figure.otherEnd,
  ).map((point) => onSheet(sheet, point));
}

/** Whether words and whatever belongs to them can go there. */
export function fits(room: Room, boxes: readonly Box[]): boolean {
  return boxes.every((box) => isFree(room, box));
}

/** The first of several places for a word that is clear; it is taken. */
export function settle(plan: Plan, labels: readonly Label[]): Label | undefined {
  const label = labels.find((candidate) => fits(plan, [labelBox(candidate)]));
  if (label) keepLabel(plan, label);
  return label;
}

/** Half the thickness of the leaf [px]. */
export function halfLeaf({ figure, sheet }: Plan): number {
  return (figure.thickness / 2) * sheet.pxPerMm;
}

/** The keep-out line keeps off the surface by two thirds of a line, and always far enough to be told from the outline. */
export function keepOutOffset({ sheet }: Plan): number {
  return Math.max(0.28 * sheet.pxPerMm, 6);
}

/** Where words under the leaf may begin: below the keep-out line, or below the plate [px]. */
export function underLeaf(plan: Plan): number {
  return halfLeaf(plan) + (plan.figure.padBelow ? keepOutOffset(plan) : 8);
}

/** How high and low the joint itself reaches [px]. */
export function reachOf({ figure, sheet }: Pick<Plan, 'figure' | 'sheet'>): {
  readonly top: number;
  readonly bottom: number;
} {
  const swept = sweptBox(figure);
  return { top: -swept.top * sheet.pxPerMm, bottom: -swept.bottom * sheet.pxPerMm };
}
