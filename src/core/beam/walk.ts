/** Steps of a walk along a path of equilibria: by the share as far as that goes, along the arc where it turns back. */
import type { Problem } from '../problems.ts';
import { reduce } from './equilibrium.ts';
import type { Network, State } from './network.ts';
import { observe, type Observed } from './observe.ts';
import { accept, arcBetween, predicted, stateAhead, stateAt, stateIn, type Found, type Walker } from './walker.ts';

export interface PathAsked {
  /** Share of the motions and loads to go to; 1 when left out. */
  readonly to?: number;
  /** Equal parts of the way at which a point is told; 40 when left out. */
  readonly parts?: number;
  /** Shares at which a point is told, in the order of the walk, instead of equal parts; the last is where it ends. */
  readonly shares?: readonly number[];
  /** Whether middle lines are wanted at every point. */
  readonly shapes?: boolean;
  /** Whether what is needed to begin another answer at the last state is kept. */
  readonly keep?: boolean;
  /** Largest last step of Newton's method [-]. */
  readonly tolerance?: number;
  /** Whether a path that leaves sideways is followed as well; yes when left out. */
  readonly second?: boolean;
  /** Asked before every step; true stops the walk. */
  readonly cancelled?: () => boolean;
  /** Times the equations may be set up. */
  readonly budget?: number;
}

/** Largest last step of Newton's method when nothing else is asked [-]. */
export const TOLERANCE = 1e-5;
/** Times the equations may be set up for one answer when nothing else is asked [-]. */
export const BUDGET = 20_000;
/** Steps shorter than this share of the way make no headway; the path turns back there or ends. */
export const SHORTEST = 1e-4;
/** Steps along the arc are no longer than this: turns in rad, movements over scale. */
const LONGEST_ARC = 0.15;
const SHORTEST_ARC = 1e-6;
/** A path that runs back past its start by this share of the way is not followed further. */
const LEAST_BACK = 0.02;
/** A walk along the arc ends after so many steps: one that needs more is going round in circles. */
const MOST_ARCS = 600;

export interface Walk {
  readonly walker: Walker;
  readonly asked: PathAsked;
  readonly seen: Observed[];
  /** Length of a step in the share that has lately worked. */
  stride: number;
  /** A step may be halved to this length; shorter ones are not tried, and the walk is stuck. */
  shortest: number;
  /** True once a share was passed by falling downhill, because no footing was found. */
  hasFallen?: boolean;
}

export type Ending = 'arrived' | 'stuck' | Problem;

const stopped = (code: 'no-convergence' | 'cancelled' | 'over-budget', message: string, share: number): Problem => ({
  code,
  message,
  field: 'share',
  value: share,
});

function mayGoOn({ walker, asked }: Walk): Problem | undefined {
  const share = walker.state.share;
  const isCancelled = asked.cancelled?.() === true;
  if (walker.budget > 0 && !isCancelled) return undefined;
  const good = `the last good point is at ${percent(share)} of the way`;
  if (isCancelled) return stopped('cancelled', `Stopped as asked; ${good}`, share);
  return stopped(
    'over-budget',
    `The path takes more work than one answer may; ${good}; ask for a shorter movement`,
    share,
  );
}

function percent(share: number): string {
  return `${Number((100 * share).toFixed(2))} %`;
}

/** Takes the walk to a share in steps as long as work. */
export function walkTo(walk: Walk, target: number, onStep: (walk: Walk, iterations: number) => void): Ending {
  const { walker } = walk;
  while (Math.abs(target - walker.state.share) > 1e-12) {
    const halt = mayGoOn(walk);
    if (halt) return halt;
    const left = target - walker.state.share;
    const share = Math.abs(left) <= walk.stride * 1.0001 ? target : walker.state.share + Math.sign(left) * walk.stride;
    const found = stateAt(walker, share);
    if (!found) {
      walk.stride = Math.min(walk.stride, Math.abs(share - walker.state.share)) / 2;
      if (walk.stride < walk.shortest) return 'stuck';
      continue;
    }
    accept(walker, found.state, share);
    if (found.iterations <= 3) walk.stride *= 1.5;
    else if (found.iterations > 6) walk.stride *= 0.6;
    onStep(walk, found.iterations);
  }
  return 'arrived';
}

/** Where the walk is to end. */
export function endOf({ to = 1, shares }: PathAsked): number {
  return shares?.at(-1) ?? to;
}

export function gridOf({ to = 1, parts = 40, shares }: PathAsked): readonly number[] {
  return shares ?? Array.from({ length: parts }, (_, i) => (to * (i + 1)) / parts);
}

/**
 * Bending as this part of stretching, over the square of the length, leaves half of the sixteen figures of a number to
 * round-off, and more where a path is at its softest: a strip 1/9000 of its length thick.
 */
const TOO_THIN = 1e-9;

function hasTooThin({ runs, scale }: Network): boolean {
  return runs.some(({ bending, axial }) => bending.some((k, i) => k < TOO_THIN * axial[i]! * scale * scale));
}

export function lost({ state, network }: Walker): Problem {
  const remedy = hasTooThin(network)
    ? 'members so thin for their length give way too softly to be told from round-off; make them thicker or shorter'
    : 'ask for a smaller movement, or let go a direction that is held';
  const message = `No equilibrium was found beyond ${percent(state.share)} of the way; the points up to there stand; ${remedy}`;
  return stopped('no-convergence', message, state.share);
}

/**
 * Goes on along the arc of the path, where the share itself turns back. Every state is told; where a share of the grid
 * is passed going on, the walk lands on it.
 *
 * @param walk - at least two states are remembered [-]
 * @param grid - shares to land on [-]
 * @param onTurn - asked where the share begins to run away from where it is meant to go [-]; an ending ends the walk
 * @returns why it ended
 */
export function walkArcs(walk: Walk, grid: readonly number[], onTurn?: () => Ending | undefined): Ending {
  const { walker, asked } = walk;
  const to = endOf(asked);
  const heading = Math.sign(to);
  restartByArc(walker);
  let [before, now] = [walker.history.at(-2), walker.history.at(-1)];
  if (!before || !now) return 'stuck';
  let arc = Math.min(LONGEST_ARC, 2 * (now.at - before.at));
  for (let count = 0; count < MOST_ARCS && before && now; count += 1) {
    const halt = mayGoOn(walk);
    if (halt) return halt;
    const found = stateAhead(walker, arc);
    if (!found) {
      arc /= 2;
      if (arc < SHORTEST_ARC) return 'stuck';
      continue;
    }
    const goesBack = (found.state.share - now.state.share) * heading < 0;
    const cameOn = (now.state.share - before.state.share) * heading > 0;
    const ending = goesBack && cameOn ? onTurn?.() : undefined;
    if (ending) return ending;
    const passed = grid.find((share) => (share - now!.state.share) * (share - found.state.share) < 0);
    const landed = passed === undefined ? undefined : landOn(walker, found.state, passed);
    const next = landed ?? found;
    // A landing that failed has left the equations as they were there.
    if (passed !== undefined && !landed) reduce(walker.network, found.state, walker.reduced);
    accept(walker, next.state, now.at + arcBetween(walker, now.state, next.state));
    walk.seen.push(observe(walker, next.iterations, asked));
    if ((next.state.share - to) * heading >= -1e-12) return 'arrived';
    if (next.state.share * heading < -LEAST_BACK * Math.abs(to)) return 'stuck';
    arc = Math.min(LONGEST_ARC, arc * (found.iterations <= 3 ? 1.5 : found.iterations > 5 ? 0.6 : 1));
    [before, now] = [walker.history.at(-2), walker.history.at(-1)];
  }
  return 'stuck';
}

/** From the state beyond, straight to a share just passed. */
function landOn(walker: Walker, beyond: State, share: number): Found | undefined {
  const last = walker.history.at(-1)!;
  const total = arcBetween(walker, last.state, beyond);
  const part = (share - last.state.share) / (beyond.share - last.state.share);
  const ahead = { ...walker, history: [...walker.history.slice(-2), { at: last.at + total, state: beyond }] };
  const start = predicted(ahead, last.at + part * total);
  return stateIn(walker, start, { normal: new Float64Array(start.unknowns.length), byShare: 1, value: share });
}

/** Renumbers what is remembered by its length of arc. */
function restartByArc(walker: Walker): void {
  const kept = walker.history.splice(0);
  let at = 0;
  kept.forEach(({ state }, i) => {
    const before = kept[i - 1];
    if (before) at += arcBetween(walker, before.state, state);
    walker.history.push({ at, state });
  });
}
