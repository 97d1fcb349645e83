/** What happens along a path: where the effort is largest or least, and where it passes zero. */
import type { PathEvent } from './answer.ts';
import type { Observed } from './observe.ts';

/** A cubic in u from 0 to 1 with given values and slopes at both ends. */
interface Cubic {
  readonly a: number;
  readonly b: number;
  readonly c: number;
  readonly d: number;
}

function hermite(from: number, slopeFrom: number, to: number, slopeTo: number): Cubic {
  return {
    a: from,
    b: slopeFrom,
    c: 3 * (to - from) - 2 * slopeFrom - slopeTo,
    d: 2 * (from - to) + slopeFrom + slopeTo,
  };
}

const valueAt = ({ a, b, c, d }: Cubic, u: number) => a + u * (b + u * (c + u * d));
const slopeAt = ({ b, c, d }: Cubic, u: number) => b + u * (2 * c + 3 * u * d);

/** Where a function changes its sign between 0 and 1, by halving: forty halvings leave nothing to find. */
function signChange(f: (u: number) => number): number {
  let [low, high] = [0, 1];
  const sign = Math.sign(f(0));
  for (let i = 0; i < 40; i += 1) {
    const middle = (low + high) / 2;
    if (Math.sign(f(middle)) === sign) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** The way from one point to the next, with the effort and energy along it as cubics of u from 0 to 1. */
interface Way {
  readonly from: Observed;
  readonly to: Observed;
  readonly span: number;
  readonly effort: Cubic;
  readonly energy: (u: number) => number;
}

/**
 * The energy between two points by their energies, efforts and slopes of effort, which are its first and second
 * derivatives: a cubic through energies and efforts alone would dip below nothing at a rest without strain.
 */
function energyAlong(from: number, to: number, span: number, effort: Cubic): (u: number) => number {
  const [rate, bend] = [span * valueAt(effort, 0), (span * slopeAt(effort, 0)) / 2];
  const value = to - from - rate - bend;
  const slope = span * valueAt(effort, 1) - rate - 2 * bend;
  const second = span * slopeAt(effort, 1) - 2 * bend;
  const [c, d, e] = [
    10 * value - 4 * slope + second / 2,
    -15 * value + 7 * slope - second,
    6 * value - 3 * slope + second / 2,
  ];
  return (u) => from + u * (rate + u * (bend + u * (c + u * (d + u * e))));
}

/** At a corner the slope of the way in, or out, may be unknown; that way is then a parabola. */
function wayBetween(from: Observed, to: Observed): Way {
  const span = to.point.share - from.point.share;
  const [e0, e1] = [from.point.effort, to.point.effort];
  const chord = e1 - e0;
  const known = (slope: number, other: number) => {
    if (Number.isFinite(slope)) return slope * span;
    return Number.isFinite(other) ? 2 * chord - other * span : chord;
  };
  const start = from.slopeOn ?? from.slope;
  const effort = hermite(e0, known(start, to.slope), e1, known(to.slope, start));
  const energy = energyAlong(from.point.energy, to.point.energy, span, effort);
  return { from, to, span, effort, energy };
}

function eventOn({ from, to, span, effort, energy }: Way, kind: 'limit' | 'rest', u: number): PathEvent {
  // At a corner a way is just being gained or lost, so one end of the way may count it.
  const isStable = Math.min(from.point.unstableWays, to.point.unstableWays) === 0;
  return {
    kind,
    share: from.point.share + u * span,
    effort: kind === 'rest' ? 0 : valueAt(effort, u),
    energy: energy(u),
    stable: kind === 'rest' && slopeAt(effort, u) * span > 0 && isStable,
  };
}

/** A limit or a rest inside one way; at the very start nothing pushes yet, which is no rest. */
function eventsOn(way: Way): readonly PathEvent[] {
  const { from, effort } = way;
  const [start, end] = [slopeAt(effort, 0), slopeAt(effort, 1)];
  const hasRest = from.point.share !== 0 && valueAt(effort, 0) * valueAt(effort, 1) < 0;
  const events = [
    ...(start * end < 0
      ? [
          eventOn(
            way,
            'limit',
            signChange((u) => slopeAt(effort, u)),
          ),
        ]
      : []),
    ...(hasRest
      ? [
          eventOn(
            way,
            'rest',
            signChange((u) => valueAt(effort, u)),
          ),
        ]
      : []),
  ];
  return events.toSorted((x, y) => (x.share - y.share) * Math.sign(way.span));
}

/**
 * Limits of the effort and places of rest along a path. Between points the effort is the cubic of their efforts and
 * slopes, so that places are exact to about the fourth power of their distance; at a corner, where paths cross, the
 * limit is the corner itself.
 *
 * @param seen - points in the order of the path, driven by a motion [-]
 * @returns events in the order of the path; shares [-], efforts, energies [N·mm]
 */
export function eventsBetween(seen: readonly Observed[]): readonly PathEvent[] {
  const ways = seen.slice(1).flatMap((to, i) => {
    const from = seen[i]!;
    return to.point.share === from.point.share ? [] : [wayBetween(from, to)];
  });
  return ways.flatMap((way, i) => {
    const before = ways[i - 1];
    const isCorner = before !== undefined && !Number.isFinite(way.from.slope);
    const turns = isCorner && (slopeAt(before.effort, 1) / before.span) * (slopeAt(way.effort, 0) / way.span) < 0;
    return [...(turns ? [eventOn(way, 'limit', 0)] : []), ...eventsOn(way)];
  });
}

/** Where loads drive: the points at which the share turns, because no more can be carried or no less holds. */
export function loadLimits(seen: readonly Observed[]): readonly PathEvent[] {
  const limits: PathEvent[] = [];
  let heading = 0;
  seen.slice(1).forEach(({ point }, i) => {
    const { share, effort, energy } = seen[i]!.point;
    // Two states at one share, either side of the turn, have no heading.
    const goes = Math.sign(point.share - share);
    if (goes * heading < 0) limits.push({ kind: 'limit', share, effort, energy, stable: false });
    if (goes !== 0) heading = goes;
  });
  return limits;
}
