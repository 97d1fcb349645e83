import type { Assessment } from '../../core/design/assessment.ts';
import type { Point } from '../../core/geometry/outline.ts';
import type { LengthUnit } from '../text/numbers.ts';
import { contoursOf, type Contours } from './contours.ts';
import { figureOf, sparePad, sweptBox, type Figure } from './figure.ts';
import { legendPlan, placeFurniture, type LegendPlan, type Placed } from './furniture.ts';
import { keepOutLine } from './keepOut.ts';
import type { Landing } from './landing.ts';
import { layersAcross, layersAlong, type Stadium } from './layers.ts';
import { labelBox, type Label } from './lettering.ts';
import { together, type Marks } from './marks.ts';
import { movingBoxes, planAngle, planRadius, type AnglePlan, type RadiusPlan } from './movingMarks.ts';
import { reachOf, startPlan, type Plan } from './plan.ts';
import { densified } from './polygon.ts';
import {
  cutMarks,
  faultLeader,
  filletLeader,
  keepOutLabel,
  keepOutOffset,
  lengthDimension,
  startMark,
  thicknessDimension,
} from './restMarks.ts';
import { sectionPlan, type SectionPlan } from './sectionPlan.ts';
import { FRAME, SCALES, type Sheet } from './sheet.ts';

/** Everything on the sheet, with its place; nothing here depends on how far the joint is bent. */
export interface Layout {
  readonly a: Assessment;
  readonly unit: LengthUnit;
  readonly figure: Figure;
  readonly landing: Landing;
  readonly sheet: Sheet;
  readonly contours: Contours | undefined;
  readonly layers: readonly Stadium[];
  readonly keepOut: readonly Point[];
  readonly start: { readonly circle: Point; readonly radius: number } | undefined;
  readonly marks: Marks;
  readonly handles: { readonly length: Point; readonly count: Point | undefined; readonly fillet: Point | undefined };
  readonly angle: AnglePlan;
  readonly radius: RadiusPlan | undefined;
  readonly section: SectionPlan;
  readonly legend: LegendPlan;
  readonly lifeSize: { readonly width: number; readonly height: number } | undefined;
  readonly placed: Placed;
}

/** What is kept while a handle is dragged, so that the drawing does not run away from the hand. */
export type HeldLayout = Pick<Layout, 'sheet' | 'placed'> & { readonly cut: number };

/** Up to this height a drawing fits a screen with the rest of the page [px]. */
const TALLEST = 580;
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
  const spare = sparePad(a);
  const small = width < SMALL;
  let last: { readonly figure: Figure; readonly sheet: Sheet } | undefined;
  for (const scale of SCALES) {
    const found = widest(a, scale, width, nominalPxPerMm, spare, small);
    if (!found) continue;
    last = found;
    const swept = sweptBox(found.figure);
    // Dimensions and margins take another 90 px or so.
    if ((swept.top - swept.bottom) * found.sheet.pxPerMm > TALLEST - 90) continue;
    const layout = layOutAt(a, found.figure, found.sheet, unit);
    if (layout.sheet.bottom - layout.sheet.top <= TALLEST) return layout;
  }
  const smallest = last ?? sheetAt(figureOf(a, spare), SCALES.at(-1) ?? 1, width, nominalPxPerMm, small);
  return layOutAt(a, smallest.figure, smallest.sheet, unit);
}

/** The figure at this scale with its pads as long as there is room for, or nothing where even short pads are too long. */
function widest(a: Assessment, scale: number, width: number, px: number, spare: number, small: boolean) {
  for (const share of [0, 0.5, 1]) {
    const found = sheetAt(figureOf(a, spare * share), scale, width, px, small);
    if (found.isRoom) return found;
  }
  return undefined;
}

function sheetAt(figure: Figure, scale: number, width: number, px: number, small: boolean) {
  const pxPerMm = scale * px;
  const { left, right } = sweptBox(figure);
  const margin = small ? { left: 8, right: 3 } : { left: 16, right: 12 };
  const room = width - FRAME - margin.left - margin.right;
  const taken = (right - left) * pxPerMm;
  // An arc beyond the far end of the pad needs some room more; it is taken from the left where there is any.
  const free = Math.max(0, room - taken);
  const arc = small ? 0 : Math.min(free, 46);
  const rootX = Math.round(FRAME + margin.left + (free - arc) / 2 - left * pxPerMm);
  return { figure, sheet: { scale, pxPerMm, width, rootX, top: 0, bottom: 0, small }, isRoom: taken <= room };
}

/** Handles, dimensions and words that stay, in the order of how hard they are to place. */
function restOf(plan: Plan) {
  const { a, figure, sheet } = plan;
  const contours = figure.laid === 'along' ? contoursOf(a, figure) : undefined;
  const keepOut = keepOutLine(figure, sheet, keepOutOffset(plan));
  const along = densified(keepOut, 4);
  plan.paper.ink(along);
  plan.restPaper.ink(along);
  const length = lengthDimension(plan);
  const count = thicknessDimension(plan);
  const start = contours && startMark(plan, contours.startPoint);
  const fillet = filletLeader(plan);
  const cut = cutMarks(plan);
  const fault = faultLeader(plan);
  const keepOutWords = keepOutLabel(plan);
  const words: Marks = { lines: '', heavy: '', arrows: [], labels: keepOutWords ? [keepOutWords] : [] };
  return {
    contours,
    keepOut,
    start,
    hasCut: cut !== undefined,
    marks: together(length.marks, count?.marks, start?.marks, fillet?.marks, cut, fault, words),
    handles: { length: length.handle, count: count?.handle, fillet: fillet?.handle },
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

  const section = sectionPlan(a, figure.laid, landing, blank, unit, rest.hasCut ? 'A–A' : 'section');
  const legend = legendPlan(limitOf(a, 'repeated'), limitOf(a, 'yield'), blank.small);
  const lifeSize = lifeSizeOf(figure, blank);
  const reach = reachOf(plan);
  const lowest = Math.min(reach.top - 14, ...[...boxes, ...rest.marks.labels.map(labelBox)].map(({ y }) => y - 10));
  const furniture = { section, legend, lifeSize };
  const placed =
    held?.placed ?? placeFurniture(plan.paper, furniture, blank.width, Math.floor(lowest), Math.floor(lowest) - 400);
  const bottom = Math.max(reach.bottom + 12, rest.dimensionY + 14, lowestOf(rest.marks.labels) + 8) + FRAME + 18;
  const sheet = held?.sheet ?? { ...blank, top: placed.top, bottom: Math.ceil(bottom) };
  return {
    a,
    unit,
    figure,
    landing,
    sheet,
    contours: rest.contours,
    layers: layersOf(a, figure, landing),
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

function layersOf(a: Assessment, figure: Figure, landing: Landing): readonly Stadium[] {
  if (figure.laid === 'along') return [];
  return figure.laid === 'layers' ? layersAlong(a, figure, landing) : layersAcross(a, figure, landing);
}

/** Room for the joint at 1 : 1 with its words, unless the sheet is at that scale anyway. */
function lifeSizeOf(figure: Figure, { scale, pxPerMm, small }: Sheet) {
  if (small || scale <= 1) return undefined;
  const { left, right, top, bottom } = sweptBox(figure);
  const px = pxPerMm / scale;
  return { width: Math.max(86, (right - left) * px), height: (top - bottom) * px + 22 };
}

/** A strain that the filament may see, for the colours of the legend. */
function limitOf(a: Assessment, name: 'repeated' | 'yield'): number {
  return a.allowables.find((allowable) => allowable.name === name)?.limit ?? a.filament.properties.yieldStrain.typical;
}
