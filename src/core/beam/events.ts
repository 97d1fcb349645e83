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
  readonly energy: Cubic;
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
  const energy = hermite(from.point.energy, e0 * span, to.point.energy, e1 * span);
  return { from, to, span, effort, energy };
}

function eventOn({ from, to, span, effort, energy }: Way, kind: 'limit' | 'rest', u: number): PathEvent {
  // At a corner a way is just being gained or lost, so one end of the way may count it.
  const isStable = Math.min(from.point.unstableWays, to.point.unstableWays) === 0;
  return {
    kind,
    share: from.point.share + u * span,
    effort: kind === 'rest' ? 0 : valueAt(effort, u),
    energy: valueAt(energy, u),
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
  return seen.slice(1, -1).flatMap(({ point }, i) => {
    const [before, after] = [seen[i]!.point.share, seen[i + 2]!.point.share];
    if ((point.share - before) * (after - point.share) >= 0) return [];
    return [{ kind: 'limit' as const, share: point.share, effort: point.effort, energy: point.energy, stable: false }];
  });
}
