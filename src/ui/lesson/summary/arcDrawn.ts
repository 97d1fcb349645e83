import type { Assessment } from '../../../core/design/assessment.ts';
import type { Bounds } from '../../../core/geometry/flatten.ts';
import { asRad } from '../../../core/units.ts';
import { angleMarks, centreLines } from '../../drawing/angleDimension.ts';
import {
  filletLeader,
  keepExtensions,
  lengthDimension,
  lengthLine,
  thicknessDimension,
} from '../../drawing/dimensions.ts';
import { figureOf, type Figure } from '../../drawing/figure.ts';
import { labelBox, overlap, type Box, type Label } from '../../drawing/lettering.ts';
import { leader, together, type Marks } from '../../drawing/marks.ts';
import { sweptBox } from '../../drawing/motion.ts';
import { planAngle } from '../../drawing/movingPlan.ts';
import { keepOutLine } from '../../drawing/keepOut.ts';
import { keepOutOffset, startPlan, type Plan } from '../../drawing/plan.ts';
import { densified } from '../../drawing/polygon.ts';
import { keep } from '../../drawing/room.ts';
import { through, type Sheet } from '../../drawing/sheet.ts';
import { thicknessFigure } from '../../text/drawingText.ts';
import { boxRound, extentOn, sheetFor, type Asked } from './drawn.ts';

/** A joint that rolls to an arc, drawn: as printed, and dashed where it goes. */
export interface ArcDrawn {
  readonly is: 'arc';
  readonly figure: Figure;
  readonly sheet: Sheet;
  readonly marks: Marks;
  readonly box: Box;
  /** Where no start point may lie; nothing where it would be lost between the marks. */
  readonly keepOut: string;
  /** Centre lines as printed and as bent. */
  readonly centre: string;
  readonly isMoved: boolean;
}

function figureFor(a: Assessment, isMoved: boolean): Figure {
  const figure = figureOf(a, 0);
  return isMoved ? figure : { ...figure, angle: asRad(0), otherEnd: 0 };
}

/** How far it reaches as drawn [mm]. */
export function arcExtent(a: Assessment, isMoved: boolean): Bounds {
  return sweptBox(figureFor(a, isMoved));
}

/** A leaf shorter than this has no room under it for its thickness beside its length [px]. */
const SHORT = 130;
/** How high over the pads its thickness is lettered then [px]. */
const OVER = 14;
const RISES = [0, 18, 36, 54];
/** Words are kept off a line by points this close together [px]. */
const KEEP_STEP = 4;

/** The thickness from above, as low over the pads as other words let it stand. */
function thicknessFromAbove(plan: Plan, others: Marks): Marks {
  const { figure, sheet, a, unit } = plan;
  const x = sheet.rootX + (figure.length / 2) * sheet.pxPerMm;
  const tip = { x, y: (-figure.thickness / 2) * sheet.pxPerMm };
  const text = thicknessFigure(a, unit);
  const found = RISES.map((rise) => {
    const elbow = { x: x + 12, y: -figure.box.top * sheet.pxPerMm - OVER - rise };
    const label: Label = { text, x: elbow.x + 10, y: elbow.y + 4, anchor: 'start', tone: 'pencil', size: 13 };
    return { elbow, label };
  });
  const isFree = ({ label }: { readonly label: Label }) =>
    !others.labels.some((other) => overlap(labelBox(label), labelBox(other)));
  const { elbow, label } = found.find(isFree) ?? found[0]!;
  keep(plan, labelBox(label));
  return leader(tip, elbow, 6, label);
}

const isShort = ({ figure, sheet }: Plan) => figure.length * sheet.pxPerMm < SHORT;

/** The line along which no start point may lie, kept clear of words. */
function keepOutOn(plan: Plan): string {
  if (isShort(plan)) return '';
  const points = keepOutLine(plan.figure, plan.sheet, keepOutOffset(plan));
  const along = densified(points, KEEP_STEP);
  plan.paper.ink(along);
  plan.rest.ink(along);
  return through(points);
}

/** Length and thickness, and the fillets where there is room to point at one. */
function sizesOn(plan: Plan): Marks {
  const line = lengthLine(plan);
  if (isShort(plan)) {
    const length = lengthDimension(plan, line).marks;
    return together(length, thicknessFromAbove(plan, length));
  }
  const count = thicknessDimension(plan, line);
  const length = lengthDimension(plan, line);
  const fillet = filletLeader(plan, line);
  keepExtensions(plan, line);
  // Figures in inches are longer, and may find no place beside each other under the leaf.
  const isOver = count.marks.labels.some((one) =>
    length.marks.labels.some((other) => overlap(labelBox(one), labelBox(other))),
  );
  const others = together(length.marks, fillet?.marks);
  return together(others, isOver ? thicknessFromAbove(plan, others) : count.marks);
}

export function arcDrawn({ a, unit, scale, isMoved }: Asked): ArcDrawn {
  const figure = figureFor(a, isMoved);
  const sheet = sheetFor(sweptBox(figure), scale);
  const plan = startPlan(a, figure, sheet, unit);
  const keepOut = keepOutOn(plan);
  const sizes = sizesOn(plan);
  const angle = isMoved ? planAngle(plan) : undefined;
  const turned = angle && angleMarks(figure, sheet, angle, 1);
  const marks = together(sizes, turned);
  const centre = angle ? centreLines(figure, sheet, angle, 1) : '';
  const box = boxRound(extentOn(sheet, sweptBox(figure)), marks);
  return { is: 'arc', figure, sheet, marks, box, keepOut, centre, isMoved };
}
