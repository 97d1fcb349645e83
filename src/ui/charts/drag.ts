/** What a drag of the joint's point asks for. All places are on the screen [CSS px]; lengths in mm. */
import type { Mm } from '../../core/units.ts';
import { clamp, type Frame, type Px, type Span } from './frame.ts';
import { nearestCurve, type LengthCurve } from './lengthCurves.ts';
import { snapped } from './stops.ts';

/** Length and count that a drag or a key asks for. */
export interface Asked {
  readonly length: Mm;
  readonly count: number;
}

export interface LengthDrag {
  readonly from: Asked;
  /** Where the point stood when it was taken. */
  readonly start: Px;
  readonly frame: Frame;
  readonly snap: Mm;
  readonly limits: Span;
  /** The curves that the point may jump to, its own among them. */
  readonly curves: readonly LengthCurve[];
}

/** A hand that means to go straight up still wanders this far sideways. */
const WANDER = 6;
/** How far up or down a drag must lead before it may mean another count. */
const JUMP = 14;

/**
 * What a drag in strain against length asks for. Sideways it changes the length; a drag that leads more up or down than
 * sideways jumps to the count whose curve is nearest, so that following the own curve never changes the count.
 */
export function askedByLength(drag: LengthDrag, to: Px): Asked {
  const dx = to.x - drag.start.x;
  const dy = to.y - drag.start.y;
  const length = Math.abs(dx) < WANDER ? drag.from.length : snapped(lengthAt(drag.frame, to.x), drag.snap, drag.limits);
  if (Math.abs(dy) < JUMP || Math.abs(dy) < Math.abs(dx)) return { length, count: drag.from.count };
  return { length, count: nearestCount(drag, length, to.y) };
}

/** The length at a place across, no further than the paper goes. */
export function lengthAt({ x, box }: Frame, place: number): Mm {
  return x.invert(clamp(place, [box.left, box.right]));
}

function nearestCount({ curves, frame }: LengthDrag, length: Mm, y: number): number {
  return nearestCurve(curves, length, (strain) => Math.abs(frame.y(strain) - y)).count;
}

/** A length that the point can have, and where it then stands. */
export interface LengthStop extends Px {
  readonly length: Mm;
}

/** The stop nearest to the pointer: what a drag along a curve asks for. */
export function nearestStop(stops: readonly LengthStop[], to: Px): LengthStop | undefined {
  const distance = (stop: Px) => Math.hypot(stop.x - to.x, stop.y - to.y);
  return stops.reduce<LengthStop | undefined>(
    (best, stop) => (best === undefined || distance(stop) < distance(best) ? stop : best),
    undefined,
  );
}
