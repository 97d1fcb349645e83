/** On along the second path, and over to the first where the two join again. */
import { locate } from './crossing.ts';
import { reduce } from './equilibrium.ts';
import type { State } from './network.ts';
import { observe, unstableWays, type Observed } from './observe.ts';
import { settleAt } from './settle.ts';
import { straightAt, straightOn, straightSlope } from './straight.ts';
import { endOf, gridOf, walkTo, type Ending, type PathAsked, type Walk } from './walk.ts';
import { accept, spend, stateAt, type Walker } from './walker.ts';

export function gridAfter({ walker, asked }: Walk): readonly number[] {
  return gridOf(asked).filter((share) => (share - walker.state.share) * Math.sign(endOf(asked)) > 1e-9);
}

/** On along the grid. Where the effort has had a corner on the way, the paths have joined, and the corner is told. */
export function goOn(along: Walk, grid: readonly number[]): Ending {
  const { walker, asked, seen } = along;
  for (const share of grid) {
    let last = 0;
    const before = seen.at(-1)!;
    const ending = walkTo(along, share, (_, iterations) => {
      last = iterations;
    });
    if (ending === 'stuck' && !fallOn(along, share)) return rejoin(along) ?? ending;
    if (typeof ending === 'object') return ending;
    const now = observe(walker, last, asked);
    if ((ending === 'stuck' || hasCorner(before, now)) && !hasJoined(along)) tellJoin(along, before.point.share);
    seen.push(now);
  }
  return 'arrived';
}

/** Where a walk finds no footing, downhill to the next share of the grid. */
function fallOn(walk: Walk, share: number): boolean {
  const { walker } = walk;
  const state = settleAt(walker, share);
  if (!state) return false;
  walker.history.length = 0;
  accept(walker, state, share);
  walk.hasFallen = true;
  return true;
}

/** Between points of one smooth path the energy grows as the efforts and their slopes say, to a small part. */
const SMOOTH = 5e-5;
/** And the effort as the mean of its slopes, to this part of their difference. */
const LEVEL = 0.2;

/** Each test has corners that it cannot see, at 21 and 79 % of the way and in its middle; together they see them all. */
function hasCorner({ point: a, slope: s0 }: Observed, { point: b, slope: s1 }: Observed): boolean {
  const span = b.share - a.share;
  const expected = (span * (a.effort + b.effort)) / 2 + (span * span * (s0 - s1)) / 12;
  const size = Math.abs(span) * (Math.abs(a.effort) + Math.abs(b.effort) + Math.abs(span * s0) + Math.abs(span * s1));
  const off = Math.abs((b.effort - a.effort) / span - (s0 + s1) / 2);
  return Math.abs(b.energy - a.energy - expected) > SMOOTH * size || off > LEVEL * Math.abs(s1 - s0);
}

/** A join is told once: a steep path looks cornered on a coarse grid, and would be told to have joined again. */
function hasJoined({ seen }: Walk): boolean {
  return seen.some(({ slopeOn }) => slopeOn !== undefined);
}

/** Tells the corner between the share of the last point told and the present state, and comes back to the latter. */
function tellJoin(along: Walk, since: number): void {
  const { walker, asked, seen } = along;
  const { state } = walker;
  walker.history.length = 0;
  accept(walker, state, state.share);
  reduce(walker.network, state, walker.reduced);
  const join = joinBefore(walker, since);
  if (join) {
    const kink = kinkAt(walker, join, asked);
    seen.push({ ...kink, slopeOn: straightSlope(walker) });
  }
  walker.history.length = 0;
  accept(walker, state, state.share);
  reduce(walker.network, state, walker.reduced);
}

/** A state where two paths cross: the effort has a corner there and so no slope. */
export function kinkAt(walker: Walker, at: State, asked: PathAsked): Observed {
  walker.state = at;
  reduce(walker.network, at, walker.reduced);
  spend(walker, 1);
  return { ...observe(walker, 0, asked), slope: Number.NaN };
}

/**
 * Where the second path turns back it may have joined the first again, which then goes on: its direction there is the
 * tangent without the softest way, along which the second path has just come in.
 */
export function rejoin(along: Walk): Ending | undefined {
  const { walker, asked } = along;
  const [next] = gridAfter(along);
  if (next === undefined) return 'arrived';
  const { share } = walker.state;
  const joined = straightOn(walker, next);
  if (!joined || unstableWays(walker) > 0) return undefined;
  walker.state = joined;
  tellJoin(along, share);
  along.seen.push(observe(walker, 0, asked));
  return goOn(along, gridAfter(along));
}

/** Back along the path that was joined, to where the other came in. */
function joinBefore(walker: Walker, turned: number): State | undefined {
  const start = walker.state.share;
  const steps = 8;
  for (let k = 1; k <= 2 * steps; k += 1) {
    const share = start + ((turned - start) * k) / steps;
    // Straight on, or the walk would go back along the path on which it came.
    const state = straightAt(walker, share) ?? stateAt(walker, share)?.state;
    if (!state) return undefined;
    const before = walker.history.slice();
    if (unstableWays(walker) > 0) return locate(walker, { before, to: share });
    accept(walker, state, share);
  }
  return undefined;
}
