/** How a thin section lies on the page: one scale and one place for Fig. 1 and Fig. 2, so that both read downwards. */
import type { Point } from '../../../core/geometry/outline.ts';
import type { PlaceNear } from '../../../core/inspect/toolpath/checkedToolpath.ts';
import type { NearPath } from '../../../core/inspect/toolpath/near.ts';
import { AROUND } from '../../../core/inspect/toolpath/place.ts';
import type { Mm } from '../../../core/units.ts';
import { FRAME, SCALES } from '../../drawing/sheet.ts';
import { commonExtent, extentOf, wider, type Extent } from './extent.ts';
import { runFrame, type RunFrame } from './runFrame.ts';

export interface Lengthwise {
  readonly frame: RunFrame;
  /** 10 for 10 : 1. */
  readonly scale: number;
  /** px on the screen for 1 mm of the part. */
  readonly pxPerMm: number;
  readonly width: number;
  /** Where the run begins [px]. */
  readonly rootX: number;
  /** What is shown of what is laid [mm]. */
  readonly shown: Extent;
  /** A phone: less lettering. */
  readonly small: boolean;
}

/** So wide is a phone held upright [px]. */
const SMALL = 520;
/** Left of the run there must be room for the figures of Fig. 2 [px]. */
const LEFT = 40;
/** The drawing itself, without its bands of lettering, is no higher than this [px]. */
const TALLEST = 340;
/** Of the pads so much is shown across the run [mm], and more where that is little on the screen [px]. */
const ACROSS: Mm = 1.6;
const ACROSS_PX = 64;
/** The line that keeps start points off lies within this much of the section [px]. */
const ROUND_PX = 22;
/** Round the beads stays some paper [mm]. */
const PAPER: Mm = 0.5;

function* cornersOf(paths: readonly NearPath[], { into }: RunFrame): Generator<Point> {
  for (const { points } of paths)
    for (let i = 0; i + 1 < points.length; i += 2) yield into({ x: points[i]!, y: points[i + 1]! });
}

/** What should be shown at a scale: the run with as much of its pads as is laid and as there is room for. */
function shownAt(by: number, run: Extent, laid: Extent, reach: Mm, small: boolean): Extent {
  const across = Math.min(AROUND, Math.max(ACROSS, ACROSS_PX / by));
  const beside = small ? Math.max(1.7, 30 / by) : AROUND;
  const wanted = wider(run, Math.min(AROUND, beside), reach / 2 + across);
  const least = wider(run, 0, reach / 2 + ROUND_PX / by);
  const inked = commonExtent(wanted, wider(laid, PAPER));
  return {
    left: Math.min(least.left, inked.left),
    right: Math.max(least.right, inked.right),
    low: Math.min(least.low, inked.low),
    high: Math.max(least.high, inked.high),
  };
}

/**
 * The largest scale at which a section fits, and where it lies.
 *
 * @param placed - the section with what lies near it, of all layers, so that going from layer to layer moves nothing
 */
export function lengthwise({ place, near }: PlaceNear, width: number, screenPxPerMm: number): Lengthwise {
  const frame = runFrame(place.run);
  const small = width < SMALL;
  const none: Extent = { left: 0, right: frame.length, low: 0, high: 0 };
  const run = extentOf(frame.run) ?? none;
  const laid = extentOf(cornersOf(near.paths, frame)) ?? run;
  const at = (scale: number) => ({ scale, shown: shownAt(scale * screenPxPerMm, run, laid, place.reach, small) });
  const room = width - FRAME - 8;
  const fits = ({ scale, shown }: ReturnType<typeof at>) =>
    (shown.right - shown.left) * scale * screenPxPerMm <= room &&
    (shown.high - shown.low) * scale * screenPxPerMm <= TALLEST;
  const tried = [...SCALES, 0.1, 0.05].map(at);
  const { scale, shown } = tried.find(fits) ?? tried.at(-1)!;
  const by = scale * screenPxPerMm;
  const middle = FRAME + (width - FRAME - (shown.right - shown.left) * by) / 2 - shown.left * by;
  return { frame, scale, pxPerMm: by, width, rootX: Math.round(Math.max(LEFT, middle)), shown, small };
}
