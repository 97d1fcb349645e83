import { allowableNamed } from '../../core/design/allowables.ts';
import type { Assessment } from '../../core/design/assessment.ts';
import type { Point } from '../../core/geometry/outline.ts';
import { faultFigure } from '../text/drawingText.ts';
import type { LengthUnit } from '../text/numbers.ts';
import type { AnglePlan } from './angleDimension.ts';
import { contoursOf, type Contours } from './contours.ts';
import { filletLeader, keepExtensions, lengthDimension, lengthLine, thicknessDimension } from './dimensions.ts';
import { figureOf, sparePad, type Figure } from './figure.ts';
import { placeFurniture, type Placed, type Size } from './furniture.ts';
import { keepOutLine } from './keepOut.ts';
import type { Landing } from './landing.ts';
import { layersAcross, layersAlong, type Layers } from './layers.ts';
import { labelBox, type Label } from './lettering.ts';
import { legendPlan, type LegendPlan } from './legendPlan.ts';
import { together, type Marks } from './marks.ts';
import { sweptBox } from './motion.ts';
import { movingBoxes, planAngle, planRadius } from './movingPlan.ts';
import { cutMarks, faultLeader, keepOutLabel, plateLabel, startMark, type StartMark } from './notes.ts';
import { keepOutOffset, reachOf, startPlan, type Plan } from './plan.ts';
import { densified } from './polygon.ts';
import type { RadiusPlan } from './radiusLeader.ts';
import { sectionPlan, type SectionPlan } from './sectionPlan.ts';
import { FINEST, FRAME, SCALES, type Sheet } from './sheet.ts';

/** Everything on the sheet, with its place; nothing here depends on how far the joint is bent. */
export interface Layout {
  readonly a: Assessment;
  readonly unit: LengthUnit;
  readonly figure: Figure;
  readonly landing: Landing;
  readonly sheet: Sheet;
  readonly contours: Contours | undefined;
  readonly layers: Layers | 'too fine' | undefined;
  readonly keepOut: readonly Point[];
  readonly start: StartMark | undefined;
  readonly marks: Marks;
  readonly handles: { readonly length: Point; readonly count: Point; readonly fillet: Point | undefined };
  readonly angle: AnglePlan;
  readonly radius: RadiusPlan | undefined;
  readonly section: SectionPlan;
  readonly legend: LegendPlan;
  readonly lifeSize: Size | undefined;
  readonly placed: Placed;
}

/** What is kept while a handle is dragged, so that the drawing does not run away from the hand. */
export type HeldLayout = Pick<Layout, 'sheet' | 'placed'> & { readonly cut: number };

/** Up to this height a drawing fits a screen with the rest of the page [px]. */
const TALLEST = 580;
/** Room to the right of the joint for the dimension of its angle [px]. */
const ARC_ROOM = 44;
/** A figure narrower than this is lettered like one on a phone [px]. */
const SMALL = 520;

/** Lays out the sheet at the largest scale that fits `width` px and a screen's height. */
export function layOut(
  a: Assessment,
  width: number,
  nominalPxPerMm: number,
  unit: LengthUnit,
  held?: HeldLayout,
): Layout {
  if (held) return layOutAt(a, figureOf(a, held.cut), held.sheet, unit, held);
  const small = width < SMALL;
  const whole = figureOf(a, 0);
  const spare = sparePad(whole);
  // Pads as long as there is room for; shorter ones are better than no room for the angle beyond them.
  const figures = [whole, ...(spare > 0 ? [figureOf(a, spare / 2), figureOf(a, spare)] : [])];
  let last: { readonly figure: Figure; readonly sheet: Sheet } | undefined;
  for (const scale of SCALES) {
    const tried = figures.map((figure) => sheetAt(figure, scale, width, nominalPxPerMm, small));
    const found = tried.find(({ free }) => free >= (small ? 0 : ARC_ROOM)) ?? tried.find(({ free }) => free >= 0);
    if (!found) continue;
    last = found;
    const swept = sweptBox(found.figure);
    // Dimensions and margins take another 90 px or so.
    if ((swept.top - swept.bottom) * found.sheet.pxPerMm > TALLEST - 90) continue;
    const layout = layOutAt(a, found.figure, found.sheet, unit);
    if (layout.sheet.bottom - layout.sheet.top <= TALLEST) return layout;
  }
  const smallest = last ?? sheetAt(whole, SCALES.at(-1) ?? 1, width, nominalPxPerMm, small);
  return layOutAt(a, smallest.figure, smallest.sheet, unit);
}

function sheetAt(figure: Figure, scale: number, width: number, px: number, small: boolean) {
  const pxPerMm = scale * px;
  const { left, right } = sweptBox(figure);
  const margin = small ? { left: 4, right: 2 } : { left: 16, right: 12 };
  const free = width - FRAME - margin.left - margin.right - (right - left) * pxPerMm;
  // An arc beyond the far end of the pad needs some room more; it is taken from the left where there is any.
  const arc = small ? 0 : Math.min(Math.max(0, free), ARC_ROOM);
  const rootX = Math.round(FRAME + margin.left + Math.max(0, free - arc) / 2 - left * pxPerMm);
  return { figure, sheet: { scale, pxPerMm, width, rootX, top: 0, bottom: 0, small }, free };
}

/** Handles, dimensions and words that stay, in the order of how hard they are to place. */
function restOf(plan: Plan) {
  const { a, figure, sheet } = plan;
  const contours = figure.laid === 'along' ? contoursOf(a, figure) : undefined;
  const keepOut = keepOutLine(figure, sheet, keepOutOffset(plan));
  const along = densified(keepOut, 4);
  plan.paper.ink(along);
  plan.rest.ink(along);
  const line = lengthLine(plan);
  const count = thicknessDimension(plan, line);
  const length = lengthDimension(plan, line);
  const cut = cutMarks(plan);
  const fillet = filletLeader(plan, line);
  keepExtensions(plan, line);
  const start = contours && startMark(plan, contours.starts);
  const fault = faultLeader(plan);
  const words = [keepOutLabel(plan), plateLabel(plan)];
  return {
    contours,
    keepOut,
    start,
    hasCut: cut !== undefined,
    faultUnsaid: fault || plan.landing.faults.length === 0 ? undefined : faultFigure(a, plan.unit),
    marks: together(length.marks, count.marks, start?.marks, fillet?.marks, cut, fault, ...words),
    handles: { length: length.handle, count: count.handle, fillet: fillet?.handle },
    dimensionY: length.handle.y,
  };
}

function layOutAt(a: Assessment, figure: Figure, blank: Sheet, unit: LengthUnit, held?: HeldLayout): Layout {
  const plan = startPlan(a, figure, blank, unit);
  const { landing } = plan;
  const rest = restOf(plan);
  const angle = planAngle(plan);
  const radius = planRadius(plan, angle);
  const boxes = movingBoxes(plan, angle, radius);
  for (const box of boxes) plan.paper.inkBox(box);

  const name = rest.hasCut ? 'A–A' : 'section';
  const section = sectionPlan({ a, laid: figure.laid, landing, sheet: blank, unit, name, fault: rest.faultUnsaid });
  const limit = (kind: 'repeated' | 'yield') => allowableNamed(a.allowables, kind).limit;
  const legend = legendPlan(limit('repeated'), limit('yield'), blank.small);
  const lifeSize = lifeSizeOf(figure, blank);
  const reach = reachOf(plan);
  const lowest = Math.min(reach.top - 14, ...[...boxes, ...rest.marks.labels.map(labelBox)].map(({ y }) => y - 10));
  const furniture = { section, legend, lifeSize };
  const placed = held?.placed ?? placeFurniture(plan.paper, furniture, blank.width, Math.floor(lowest));
  const bottom = Math.max(reach.bottom + 12, rest.dimensionY + 14, lowestOf(rest.marks.labels) + 8) + FRAME + 18;
  const sheet = held?.sheet ?? { ...blank, top: placed.top, bottom: Math.ceil(bottom) };
  return {
    a,
    unit,
    figure,
    landing,
    sheet,
    contours: rest.contours,
    layers: layersOf(a, figure, landing, blank),
    keepOut: rest.keepOut,
    start: rest.start,
    marks: rest.marks,
    handles: rest.handles,
    angle,
    radius,
    section,
    legend,
    lifeSize: placed.lifeSize ? lifeSize : undefined,
    placed,
  };
}

const lowestOf = (labels: readonly Label[]) => Math.max(0, ...labels.map(({ y }) => y));

function layersOf(a: Assessment, figure: Figure, landing: Landing, { pxPerMm }: Sheet): Layout['layers'] {
  if (figure.laid === 'along') return undefined;
  if (a.joint.profile.layerHeight * pxPerMm < FINEST) return 'too fine';
  return figure.laid === 'layers' ? layersAlong(a, figure, landing) : layersAcross(a, figure, landing);
}

/** Room for the joint at 1 : 1 with its words, unless the sheet is at that scale anyway. */
function lifeSizeOf(figure: Figure, { scale, pxPerMm, small }: Sheet) {
  if (small || scale <= 1) return undefined;
  const { left, right, top, bottom } = sweptBox(figure, 'oneWay');
  const px = pxPerMm / scale;
  return { width: Math.max(86, (right - left) * px), height: (top - bottom) * px + 22 };
}
