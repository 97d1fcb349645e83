import type { Mm } from '../units.ts';
import { common, offset, unite, without } from './clipping.ts';
import { disc } from './disc.ts';
import { isInside, loopArea, pathLoop, type Loop } from './loop.ts';
import type { Point } from './outline.ts';
import { fromSegment } from './segment.ts';
import { distance } from './vector.ts';

/** A fillet may reach this many radii from its corner, which a corner of 28° or more keeps to; in a sharper one it is smaller. */
const REACH = 4;
/** Halvings when looking for the radius that fits: to a hundredth of what was asked. */
const HALVINGS = 7;
/** Rounding leaves slivers along every edge that is moved out and back [mm]; what is thinner than twice this is none. */
const SLIVER: Mm = 2e-4;
/** How far fillets are laid over what they join [mm], so that rounding opens no hairline between them. */
const OVERLAP: Mm = 0.01;

/**
 * The fillet of one corner, by rolling a ball along a band and its pad alone: what a move outwards and back inwards
 * adds in the corner. Other bands near by make no difference, and gaps elsewhere stay open.
 *
 * Where the fillet would run on for more than four radii, in the sharp side of a slanting root or a narrow slot, the
 * largest smaller one that does not is taken.
 *
 * @param parts - outlines of the pads and of the bands that end here [mm]
 * @param corner - where the side of a band comes out of a pad [mm]
 * @param radius - r [mm], > 0
 * @param tolerance - how far a chord may lie from its arc [mm], > 0
 * @returns outlines that cover the fillet and a rim of the parts [mm]
 */
export function filletAt(parts: readonly Loop[], corner: Point, radius: Mm, tolerance: Mm): readonly Loop[] {
  const reach = REACH * radius;
  // A ball sees no further than its diameter: what lies beyond changes nothing within reach.
  const local = common(unite(parts), [pathLoop(disc(corner, reach + 2 * radius + 10 * tolerance), tolerance)]);
  const rolled = (r: Mm): Rolled => {
    const closed = offset(offset(local, r, tolerance), -r, tolerance);
    // The library takes its sense of in and out from one of the loops, which a sliver turned inside out would reverse.
    const gained = without(closed, local).filter((loop) => loopArea(loop) > 0);
    const thick = offset(gained, -SLIVER, SLIVER);
    const added = offset(thick, SLIVER, SLIVER).filter((loop) => nearness(loop, corner) < 10 * tolerance);
    return { closed, added, isDone: added.every((loop) => loop.every((point) => distance(point, corner) < reach)) };
  };
  let best = rolled(radius);
  if (!best.isDone) best = largestDone(rolled, radius);
  return common(best.closed, offset(best.added, OVERLAP, tolerance));
}

interface Rolled {
  readonly closed: readonly Loop[];
  readonly added: readonly Loop[];
  readonly isDone: boolean;
}

function largestDone(rolled: (radius: Mm) => Rolled, radius: Mm): Rolled {
  let best: Rolled = { closed: [], added: [], isDone: true };
  let [low, high] = [0, radius];
  for (let halving = 0; halving < HALVINGS; halving += 1) {
    const middle = (low + high) / 2;
    const tried = rolled(middle);
    if (tried.isDone) [best, low] = [tried, middle];
    else high = middle;
  }
  return best;
}

function nearness(loop: Loop, place: Point): Mm {
  if (isInside([loop], place)) return 0;
  return Math.min(...loop.map((b, i) => fromSegment(place, loop.at(i - 1) ?? b, b)));
}
