import { allowableNamed } from '../../../core/design/allowables.ts';
import type { Bounds } from '../../../core/geometry/flatten.ts';
import type { Point } from '../../../core/geometry/outline.ts';
import type { LengthUnit } from '../../text/numbers.ts';
import { clearPaper } from '../clearPaper.ts';
import type { Grip } from '../handles.ts';
import { labelBox } from '../lettering.ts';
import { legendPlan, type LegendPlan } from '../legendPlan.ts';
import type { Marks } from '../marks.ts';
import { FRAME, onSheet, SCALES, type Sheet } from '../sheet.ts';
import { placeBlocks, type Block } from './blocks.ts';
import { captionedWidth, centrePathOf, CIRCLE, type CentrePath } from './centrePath.ts';
import { placeDimensions } from './dimensions.ts';
import { movedRoom } from './movedAmount.ts';
import { nearestUpTo } from './nearest.ts';
import { planesOf, type Planes } from './planes.ts';
import { keep, type Room } from '../room.ts';
import type { Scene } from './scene.ts';
import { boundsOf, coveredIn, edgesIn, looksAt, padCovers } from './swept.ts';
import type { Travelled } from './travelled.ts';

/** Everything on the sheet of a solved joint with its place; nothing here depends on how far it is moved. */
export interface SolvedLayout {
  readonly scene: Scene;
  readonly travelled: Travelled;
  readonly unit: LengthUnit;
  readonly sheet: Sheet;
  readonly marks: Marks;
  readonly grips: readonly Grip[];
  readonly legend: LegendPlan;
  readonly centre: CentrePath | undefined;
  readonly planes: Planes | undefined;
  /** Upper left corners of what stands beside the joint: `legend`, `centre`, `planes`, `near`. */
  readonly placed: Placed;
}

/** Upper left corners [px]; of what is not there, none. */
type Placed = { readonly legend: Point } & Readonly<Partial<Record<'centre' | 'planes' | 'near', Point>>>;

/** What is kept while a handle is dragged. */
export type HeldSheet = Pick<SolvedLayout, 'sheet' | 'placed' | 'legend'>;

/** Up to this height a drawing fits a screen with its scrubber above it [px]. */
const TALLEST = 600;
/** Room for dimensions above and below, and on either side [px]. */
const ROOM = { tall: 70, side: 56, smallSide: 10 };
/** A figure narrower than this is lettered like one on a phone [px]. */
const SMALL = 520;
/** Looks at the way for its extent, and for where words must not stand. */
const LOOKS = 8;
/** What stands beside the joint would rather have its middle so far off it [px]. */
const BESIDE = 90;
/** Points of the joint are this close together [px], well under the height of a letter. */
const STEP = 7;
const BEYOND = { above: 1000, below: 700 };

export function layOutSolved(
  scene: Scene,
  travelled: Travelled,
  width: number,
  nominalPxPerMm: number,
  unit: LengthUnit,
  held?: HeldSheet,
): SolvedLayout {
  const swept = boundsOf(looksAt(scene, travelled, LOOKS).flatMap((state) => edgesIn(scene, state)));
  if (held) return layOutAt(scene, travelled, held.sheet, swept, unit, held);
  const small = width < SMALL;
  const side = small ? ROOM.smallSide : ROOM.side;
  const fits = (scale: number) => {
    const px = scale * nominalPxPerMm;
    return (
      (swept.right - swept.left) * px <= width - FRAME - 2 * side &&
      (swept.top - swept.bottom) * px <= TALLEST - ROOM.tall
    );
  };
  const scale = SCALES.find(fits) ?? SCALES.at(-1) ?? 1;
  return layOutAt(scene, travelled, sheetAt(scene, travelled, swept, scale, width, nominalPxPerMm, small), swept, unit);
}

/** The sheet with the joint in its middle, or further left where the circle of its centre stands beside it. */
function sheetAt(
  scene: Scene,
  travelled: Travelled,
  { left, right }: Bounds,
  scale: number,
  width: number,
  nominal: number,
  small: boolean,
): Sheet {
  const pxPerMm = scale * nominal;
  const free = width - FRAME - (right - left) * pxPerMm;
  const beside = centrePathOf(scene, travelled, nominal) && !small ? 2 * CIRCLE + 60 : 0;
  const before = Math.max(free / 2 - Math.max(0, beside - free / 2), Math.min(free / 2, ROOM.side));
  return { scale, pxPerMm, width, rootX: Math.round(FRAME + before - left * pxPerMm), top: 0, bottom: 0, small };
}

function layOutAt(
  scene: Scene,
  travelled: Travelled,
  blank: Sheet,
  swept: Bounds,
  unit: LengthUnit,
  held?: HeldSheet,
): SolvedLayout {
  const corner = onSheet(blank, { x: swept.left, y: swept.top });
  const far = onSheet(blank, { x: swept.right, y: swept.bottom });
  const reach = { left: corner.x, right: far.x, top: corner.y, bottom: far.y };
  const room = inkedRoom(scene, travelled, blank, reach);
  const moved = movedRoom(scene, travelled, blank, unit);
  for (const box of moved) keep(room, box);
  const { marks, grips } = placeDimensions({ scene, sheet: blank, room, unit, swept: reach });

  const legends = legendsOf(scene, blank.small);
  const nominal = blank.pxPerMm / blank.scale;
  const centre = centrePathOf(scene, travelled, nominal);
  const planes = blank.small ? undefined : planesOf(scene, nominal, blank.scale);
  const blocks = blocksOf(scene, travelled, blank, reach, { centre, planes });
  const boxes = [
    ...moved,
    ...marks.labels.map(labelBox),
    ...[...grips.map(({ at }) => at), ...marks.arrows].map(({ x, y }) => ({ x, y: y - 10, width: 0, height: 20 })),
  ];
  const top = Math.floor(Math.min(reach.top - 14, ...boxes.map(({ y }) => y - 10)));
  const bottom = Math.ceil(Math.max(reach.bottom + 14, ...boxes.map(({ y, height }) => y + height + 8)));
  const common = { scene, travelled, unit, marks, grips, centre, planes };
  if (held)
    return { ...common, sheet: held.sheet, placed: held.placed, legend: legends.find(isLike(held)) ?? legends[0] };
  return { ...common, ...placeOn(room, legends, blocks, blank, { ...reach, top, bottom }) };
}

/** The legend in full and brief; on a phone only brief. */
function legendsOf({ a }: Scene, small: boolean): readonly [LegendPlan, ...LegendPlan[]] {
  const limit = (kind: 'repeated' | 'yield') => allowableNamed(a.allowables, kind).limit;
  const brief = legendPlan(limit('repeated'), limit('yield'), true);
  return small ? [brief] : [legendPlan(limit('repeated'), limit('yield'), false), headed(brief)];
}

/** What stands beside the joint, apart from the legend. */
function blocksOf(
  scene: Scene,
  { from, to }: Travelled,
  sheet: Sheet,
  { left, right, top }: Bounds,
  { centre, planes }: Pick<SolvedLayout, 'centre' | 'planes'>,
): readonly Block[] {
  const near = nearestUpTo(scene, Math.max(-from, to));
  const blocks: Block[] = [];
  if (centre) {
    const [width, height] = [captionedWidth(centre), 2 * CIRCLE + 26];
    blocks.push({ key: 'centre', by: { x: right + BESIDE, y: top }, width, height });
  }
  if (planes) blocks.push(planesBlock(planes, sheet.pxPerMm / sheet.scale, { x: left - BESIDE, y: top }));
  if (near) blocks.push({ key: 'near', by: onSheet(sheet, near.a.at), width: 130, height: 46 });
  return blocks;
}

/** The legend that was there before. */
const isLike =
  ({ legend }: HeldSheet) =>
  (plan: LegendPlan) =>
    plan.height === legend.height;

/** Furniture on the sheet: with the legend in full unless the sheet would have to grow for it. */
function placeOn(
  room: Room,
  legends: readonly LegendPlan[],
  blocks: readonly Block[],
  blank: Sheet,
  { right, top, bottom }: Bounds,
): Pick<SolvedLayout, 'sheet' | 'placed' | 'legend'> {
  const tried = legends.map((legend) => {
    const all: readonly Block[] = [
      { key: 'legend', by: { x: right + 2 * BESIDE, y: top }, ...sizeOf(legend) },
      ...blocks,
    ];
    return { legend, ...placeBlocks(room.paper, all, blank.width, top, bottom) };
  });
  const [full, brief = full] = tried;
  if (!full || !brief) throw new RangeError('a sheet has a legend');
  const { at, top: head, legend } = full.top - brief.top < -GROWTH ? brief : full;
  const { legend: corner = { x: FRAME, y: head } } = at;
  return { legend, placed: { ...at, legend: corner }, sheet: { ...blank, top: head, bottom: bottom + FRAME + 18 } };
}

/** The small legend with its heading, where it stands alone on a wide sheet. */
function headed(plan: LegendPlan): LegendPlan {
  return { ...plan, heading: 'strain at the skin', bar: { ...plan.bar, y: plan.bar.y + 14 }, height: plan.height + 14 };
}

const sizeOf = ({ width, height }: LegendPlan) => ({ width, height });

/** The sheet may grow by so much for a legend in full [px]. */
const GROWTH = 40;

function planesBlock({ scale, total, top, bottom }: Planes, nominal: number, by: Point): Block {
  const width = Math.max(128, total * scale * nominal + 20);
  return { key: 'planes', by, width, height: (top - bottom) * scale * nominal + 70 };
}

/** The joint and everything it sweeps through up to the wanted amount, inked in. */
export function inkedRoom(
  scene: Scene,
  { from, wanted }: Pick<Travelled, 'from' | 'wanted'>,
  sheet: Sheet,
  reach: Bounds,
): Room {
  const height = reach.bottom - reach.top;
  const over = { x: 0, y: reach.top - BEYOND.above, width: sheet.width, height: height + BEYOND.above + BEYOND.below };
  const room: Room = { paper: clearPaper(over), words: clearPaper(over), figures: [] };
  room.paper.inkBox({ ...over, width: FRAME + 1 });
  const step = STEP / sheet.pxPerMm;
  const covers = padCovers(scene, step);
  const ink = (points: readonly Point[]) => room.paper.ink(points.map((point) => onSheet(sheet, point)));
  ink(covers.flat());
  for (const state of looksAt(scene, { from, to: wanted }, LOOKS)) ink(coveredIn(scene, state, covers, step));
  return room;
}
