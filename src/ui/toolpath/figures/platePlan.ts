/** Where everything of the layer from above lies, as it is on the plate: x to the right, y up [px]. */
import { isInside, type Loop } from '../../../core/geometry/loop.ts';
import type { Point } from '../../../core/geometry/outline.ts';
import type { PassedOver } from '../../../core/inspect/flexure.ts';
import type { LayerPlan } from '../../../core/inspect/toolpath/checkedToolpath.ts';
import type { Place } from '../../../core/inspect/toolpath/place.ts';
import type { Mm } from '../../../core/units.ts';
import { FRAME, onSheet, through, type Sheet } from '../../drawing/sheet.ts';
import { placeBalloons, type PlacedBalloon, type Spot } from '../../mesh/placeBalloons.ts';
import { extentOf, wider, type Extent } from './extent.ts';

export interface PlatePlan {
  readonly sheet: Sheet;
  /** The layers that are shown: of all those that are alike [mm]. */
  readonly outlines: readonly Loop[];
  readonly z: Mm;
  readonly d: string;
  readonly runs: readonly { readonly number: number; readonly d: string; readonly dots: readonly Point[] }[];
  readonly balloons: readonly PlacedBalloon[];
  /** Place in the list of what was passed over, with its balloon. */
  readonly passed: readonly { readonly index: number; readonly balloon: PlacedBalloon; readonly at: Point }[];
}

const SCALES = [2, 1, 0.5, 0.2, 0.1, 0.05, 0.02];
const TALLEST = 380;
/** Paper round the part, where balloons stand [px]. */
const BESIDE = 34;
const ABOVE = 34;
const BELOW = 50;
/** More than this of what was passed over would hide the part. */
const MOST_PASSED = 12;
/** Numbers of what was passed over, beside those of sections. */
const PASSED = 100_000;

/** The layers that stand at a height, or nearest to it. */
export function planAt(plans: readonly LayerPlan[], z: Mm): LayerPlan | undefined {
  const off = ({ bottom, z: top }: LayerPlan) => Math.max(0, bottom - z + 1e-6, z - top - 1e-6);
  return plans.toSorted((a, b) => off(a) - off(b))[0];
}

/** All that is laid, at any height. */
export function plateExtent(plans: readonly LayerPlan[]): Extent {
  const corners = plans.flatMap(({ outlines }) => outlines.flatMap((loop) => extentCorners(loop)));
  return extentOf(corners) ?? { left: 0, right: 1, low: 0, high: 1 };
}

function extentCorners(loop: Loop): readonly Point[] {
  const extent = extentOf(loop);
  if (!extent) return [];
  return [
    { x: extent.left, y: extent.low },
    { x: extent.right, y: extent.high },
  ];
}

function sheetOf({ left, right, low, high }: Extent, width: number, screenPxPerMm: number): Sheet {
  const fits = (scale: number) =>
    (right - left) * scale * screenPxPerMm <= width - FRAME - 2 * BESIDE &&
    (high - low) * scale * screenPxPerMm <= TALLEST;
  const scale = SCALES.find(fits) ?? 0.01;
  const by = scale * screenPxPerMm;
  const start = FRAME + (width - FRAME - (right - left) * by) / 2;
  return {
    scale,
    pxPerMm: by,
    width,
    // The frame is the scale of the plate itself: its figures are x of the toolpath.
    rootX: start - left * by,
    top: Math.floor(-high * by) - ABOVE,
    bottom: Math.ceil(-low * by) + BELOW,
    small: width < 520,
  };
}

interface Asked {
  readonly plans: readonly LayerPlan[];
  readonly extent: Extent;
  readonly z: Mm;
  readonly places: readonly Place[];
  readonly passedOver: readonly PassedOver[];
}

function spotOf({ number, run, reach }: Place, sheet: Sheet): Spot {
  const box = wider(extentOf(run) ?? { left: 0, right: 0, low: 0, high: 0 }, reach / 2);
  const from = onSheet(sheet, { x: box.left, y: box.high });
  const to = onSheet(sheet, { x: box.right, y: box.low });
  return { number, box: { x: from.x - 2, y: from.y - 2, width: to.x - from.x + 4, height: to.y - from.y + 4 } };
}

export function platePlan({ plans, extent, z, places, passedOver }: Asked, width: number, pxPerMm: number): PlatePlan {
  const sheet = sheetOf(extent, width, pxPerMm);
  const plan = planAt(plans, z);
  const outlines = plan?.outlines ?? [];
  const on = (point: Point) => onSheet(sheet, point);
  const loops = outlines.map((loop) => loop.map(on));
  const near = passedOver
    .map(({ at }, index) => ({ index, z: at.z, at: on(at) }))
    .filter((one) => plan && one.z > plan.bottom - 1e-6 && one.z < plan.z + 1e-6)
    .slice(0, MOST_PASSED);
  const spots = [
    ...places.map((place) => spotOf(place, sheet)),
    ...near.map(({ index, at }) => ({
      number: PASSED + index,
      box: { x: at.x - 3, y: at.y - 3, width: 6, height: 6 },
    })),
  ];
  const room = {
    x: FRAME + 4,
    y: sheet.top + 4,
    width: width - FRAME - 8,
    height: sheet.bottom - FRAME - 20 - sheet.top,
  };
  const balloons = placeBalloons(spots, room, (at) => isInside(loops, at));
  return {
    sheet,
    outlines,
    z: plan?.z ?? z,
    d: loops.map((loop) => through(loop, true)).join(''),
    runs: places.map(({ number, run }) => {
      const points = run.map(on);
      return { number, d: through(points), dots: [points[0]!, points.at(-1)!] };
    }),
    balloons: balloons.filter(({ number }) => number < PASSED),
    passed: near.flatMap(({ index, at }) => {
      const balloon = balloons.find(({ number }) => number === PASSED + index);
      return balloon ? [{ index, balloon, at }] : [];
    }),
  };
}

/** A place of the sheet as one of the plate [mm]. */
export function onPlate({ rootX, pxPerMm }: Sheet, { x, y }: Point): Point {
  return { x: (x - rootX) / pxPerMm, y: -y / pxPerMm };
}
