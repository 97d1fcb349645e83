import type { Point } from '../../core/geometry/outline.ts';
import { filletFigure, thicknessFigure } from '../text/drawingText.ts';
import { lengthFigure } from '../text/numbers.ts';
import { besideElbow } from './elbow.ts';
import { grown, labelBox, letteringWidth, type Anchor, type Box, type Label } from './lettering.ts';
import { boxAround, levelDimension, measured, type Marks } from './marks.ts';
import { fits, halfLeaf, underLeaf, type Plan } from './plan.ts';
import { isClearWay, keep, MARGIN } from './room.ts';
import { through } from './sheet.ts';

/** A dimension that can be dragged: its marks, and where its handle is. */
export interface Held {
  readonly marks: Marks;
  readonly handle: Point;
}

/** A leaf shorter than this on the sheet [px]. */
const SHORT = 130;

/** Half of what a handle needs round it [px]. */
const handleReach = (small: boolean) => (small ? 16 : 12);

/** Where the length is dimensioned; its line, handle and extension lines keep words away before its own are placed. */
export interface LengthLine {
  readonly x0: number;
  readonly x1: number;
  readonly y: number;
  readonly isTight: boolean;
  readonly text: string;
}

/** Keeps the place of the flexing length, under pads and leaf. */
export function lengthLine(plan: Plan): LengthLine {
  const { figure, sheet, unit } = plan;
  const padBottom = -figure.box.bottom * sheet.pxPerMm;
  const y = Math.max(padBottom + (sheet.small ? 32 : 28), underLeaf(plan) + (sheet.small ? 72 : 50));
  const [x0, x1] = [sheet.rootX, sheet.rootX + figure.length * sheet.pxPerMm];
  const text = lengthFigure(figure.length, unit);
  const isTight = x1 - x0 < letteringWidth(text, 13) + 26;
  keep(plan, boxAround({ x: x1, y }, handleReach(sheet.small)));
  return { x0, x1, y, isTight, text };
}

/** From now on words keep off the extension lines. */
export function keepExtensions(plan: Plan, { x0, x1, y }: LengthLine): void {
  const from = underLeaf(plan) + 6;
  for (const x of [x0, x1]) keep(plan, { x, y: from, width: 1, height: Math.max(1, y - from) });
}

/** Whether words would lie over an extension line; under a short leaf there is no room beside them. */
function isOverExtension({ x0, x1 }: LengthLine, { x, width }: Box): boolean {
  return x1 - x0 > SHORT && [x0, x1].some((line) => line > x - MARGIN && line < x + width + MARGIN);
}

/** The flexing length; its handle is the end that moves. */
export function lengthDimension(plan: Plan, { x0, x1, y, isTight, text }: LengthLine): Held {
  const at = (share: number): Label => ({
    text,
    x: x0 + share * (x1 - x0),
    y: y - 5,
    anchor: 'middle',
    tone: 'pencil',
    size: 13,
  });
  const isClear = (label: Label) => plan.paper.isClear(labelBox(label));
  const label = [0.5, 0.36, 0.64, 0.25, 0.75, 0.15, 0.85].map(at).find(isClear) ?? at(0.5);
  keep(plan, labelBox(label));
  const overrun = isTight ? 26 : 6;
  keep(plan, { x: x0 - overrun, y: y - 2, width: x1 - x0 + 2 * overrun, height: 4 });
  return { marks: levelDimension(x0, x1, y, underLeaf(plan) + 4, label, isTight), handle: { x: x1, y } };
}

/** The thickness and what makes it, beside its handle under the middle of the leaf. */
export function thicknessDimension(plan: Plan, line: LengthLine): Held {
  const { a, figure, sheet, unit } = plan;
  const half = halfLeaf(plan);
  const y = underLeaf(plan) + (sheet.small ? 20 : 15);
  const reach = handleReach(sheet.small);
  const words = (x: number, dx: number, dy: number, anchor: Anchor): Label => ({
    text: thicknessFigure(a, unit),
    x: x + dx,
    y: y + dy,
    anchor,
    tone: 'pencil',
    size: 13,
  });
  const places = [0.5, 0.42, 0.58, 0.34, 0.66, 0.26, 0.2, 0.14].flatMap((share) => {
    const x = sheet.rootX + share * figure.length * sheet.pxPerMm;
    const beside = [words(x, 13, 5, 'start'), words(x, -13, 5, 'end')];
    const below = words(x, 0, 23, 'middle');
    return (sheet.small ? [below, ...beside] : [...beside, below]).map((label) => ({ x, label }));
  });
  const isClear = ({ x, label }: (typeof places)[number]) =>
    !isOverExtension(line, labelBox(label)) &&
    fits(plan, [labelBox(label), grown(boxAround({ x, y }, reach), -MARGIN)]);
  const middle = sheet.rootX + (figure.length / 2) * sheet.pxPerMm;
  // Under the handle there is never a pad, whatever else is crowded there.
  const { x, label } = places.find(isClear) ?? { x: middle, label: words(middle, 0, 23, 'middle') };
  keep(plan, labelBox(label));
  keep(plan, boxAround({ x, y }, reach));
  const across = measured({ x, y: -half }, { x, y: half }, true);
  const down = through([
    { x, y: half },
    { x, y },
  ]);
  return { marks: { ...across, lines: across.lines + down, labels: [label] }, handle: { x, y } };
}

/** One of the roots' fillets on the sheet: its centre, and the quadrant of its arc as seen from there. */
interface Corner {
  readonly centre: Point;
  readonly towards: Point;
}

/** Fillets in the order in which a leader would rather point at them. */
function corners({ figure, sheet }: Plan): Corner[] {
  const { fillet, thickness, length, padBelow } = figure;
  const at = (side: 1 | -1, up: 1 | -1): Corner => ({
    centre: {
      x: sheet.rootX + (side === 1 ? length : 0) * sheet.pxPerMm,
      y: -up * (thickness / 2 + fillet) * sheet.pxPerMm,
    },
    towards: { x: side, y: up },
  });
  return padBelow ? [at(1, -1), at(-1, -1), at(-1, 1)] : [at(-1, 1), at(1, 1)];
}

/** Lengths of a leader [px], and the places along the arc where it may end [rad from level], best first. */
const REACHES: readonly number[] = [44, 34, 58, 74, 94, 118];
const BEARINGS: readonly number[] = [45, 60, 30, 72].map((deg) => (deg * Math.PI) / 180);

/** A leader to a fillet before it has words; `isOutside` where it comes from the clear side and not through material. */
interface Lead {
  readonly tip: Point;
  readonly elbow: Point;
  readonly out: Point;
  readonly isOutside: boolean;
}

/** Leaders in line with the centre of a fillet: from the clear side first, the shortest first. */
function* leadsTo({ figure, sheet }: Plan, fillets: readonly Corner[]): Generator<Lead> {
  const radius = figure.fillet * sheet.pxPerMm;
  for (const way of [-1, 1]) {
    for (const reach of REACHES) {
      for (const { centre, towards } of fillets) {
        for (const bearing of BEARINGS) {
          const [x, y] = [towards.x * Math.cos(bearing), towards.y * Math.sin(bearing)];
          const tip = { x: centre.x + x * radius, y: centre.y + y * radius };
          const out = { x: way * x, y: way * y };
          yield { tip, out, elbow: { x: tip.x + out.x * reach, y: tip.y + out.y * reach }, isOutside: way < 0 };
        }
      }
    }
  }
}

/**
 * A leader to a fillet, always in line with its centre: from the clear side, or across the material where there is
 * no clear paper outside.
 */
export function filletLeader(plan: Plan, line: LengthLine): Held | undefined {
  const { figure, sheet, unit } = plan;
  const text = filletFigure(figure.fillet, unit);
  for (const lead of leadsTo(plan, corners(plan))) {
    // Out of the material the line itself must be clear too, past where it leaves the surface and the keep-out line.
    if (lead.isOutside && !isClearWay(plan.paper, lead.tip, lead.elbow, 18)) continue;
    const found = besideElbow(plan, lead, text, handleReach(sheet.small), (box) => isOverExtension(line, box));
    if (found) return { marks: found.marks, handle: found.elbow };
  }
  return undefined;
}
