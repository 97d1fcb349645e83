/** Following the path of equilibria of a network as its motions and loads grow. */
import type { Problem } from '../problems.ts';
import { leaveSideways, type SecondPath } from './branch.ts';
import type { Crossing } from './crossing.ts';
import { reduce } from './equilibrium.ts';
import { restOf, type Network, type State } from './network.ts';
import { goOn } from './rejoin.ts';
import { observe, unstableWays, type Observed } from './observe.ts';
import {
  BUDGET,
  endOf,
  gridOf,
  lost,
  SHORTEST,
  TOLERANCE,
  walkArcs,
  walkTo,
  type Ending,
  type PathAsked,
  type Walk,
} from './walk.ts';
import { accept, spend, stateAt, walkerFrom, type Walker } from './walker.ts';

/** A path as walked, before it is told. */
export interface Walked {
  readonly seen: readonly Observed[];
  readonly second?: SecondPath;
  readonly stopped?: Problem;
  readonly iterations: number;
}

/** The ways of giving so far, and between which states the first of them came. */
interface Watch {
  ways: number;
  crossing: Crossing | undefined;
}

/** Where a path goes on: a state, and whether the path that it is on had left the first, or joined it again. */
export interface Start {
  readonly state: State;
  readonly way: 'first' | 'second' | 'joined';
}

/**
 * Follows the path from rest, or on from a state, past limits of the share where there are any, and the path that leaves sideways at the
 * first bifurcation.
 *
 * @param network - ready to be solved [-]
 * @param asked - how far and how finely [-]
 * @param start - where it goes on; rest when left out [-]
 * @returns what was met on the way; `stopped` when it ended early
 */
export function walkPath(network: Network, asked: PathAsked, start?: Start): Walked {
  const walk = walkFrom(network, asked, start?.state ?? restOf(network));
  const { walker } = walk;
  const first = stateAt(walker, walker.state.share);
  if (!first) return { seen: [], stopped: loose(), iterations: walker.spent };
  walker.state = first.state;
  tell(walk, first.iterations);
  return start && start.way !== 'first' ? walkSecond(walk, start.way) : walkFirst(walk);
}

function walkFirst(walk: Walk): Walked {
  const { walker, asked } = walk;
  const watch: Watch = { ways: unstableWays(walker), crossing: undefined };
  const reached = walkGrid(walk, watch);
  // Beyond a crossing the first path is not the one that will be taken; where it gets lost it is let go.
  const ending = reached === 'stuck' ? (watch.crossing ? 'arrived' : walkArcs(walk, gridOf(asked))) : reached;
  const stopped = stoppedBy(walk, ending);
  const second = watch.crossing && asked.second !== false ? leaveSideways(walk, watch.crossing) : undefined;
  return {
    seen: walk.seen,
    ...(second ? { second } : {}),
    ...(stopped ? { stopped } : {}),
    iterations: walker.spent,
  };
}

/** On along the path that had left the first; where it joins again is told once. */
function walkSecond(walk: Walk, way: Start['way']): Walked {
  const [first] = walk.seen.splice(0);
  walk.seen.push(way === 'joined' ? { ...first!, slopeOn: first!.slope } : first!);
  const stopped = stoppedBy(walk, goOn(walk, gridOf(walk.asked)));
  return { seen: walk.seen, ...(stopped ? { stopped } : {}), iterations: walk.walker.spent };
}

function stoppedBy({ walker }: Walk, ending: Ending): Problem | undefined {
  if (typeof ending === 'object') return ending;
  return ending === 'stuck' ? lost(walker) : undefined;
}

function walkFrom(network: Network, asked: PathAsked, start: State): Walk {
  const walker = walkerFrom(network, start, asked.tolerance ?? TOLERANCE, asked.budget ?? BUDGET);
  const range = Math.abs(endOf(asked) - start.share);
  accept(walker, walker.state, walker.state.share);
  return { walker, asked, seen: [], stride: range / Math.min(gridOf(asked).length, 20), shortest: SHORTEST * range };
}

function tell(walk: Walk, iterations: number): void {
  const { walker, asked, seen } = walk;
  const [before, now] = [seen.at(-1), observe(walker, iterations, asked)];
  const isAsBefore = !before || !(before.slope * now.slope < 0 || before.point.unstableWays !== now.point.unstableWays);
  if (!isAsBefore) setUpHere(walker);
  seen.push(isAsBefore ? now : observe(walker, iterations, asked));
}

/**
 * The equations are left as at the start of the last step. Beside stiff parts a member may be so soft that the forces
 * still out of balance there make it seem to give way: a change is believed of the state itself alone.
 */
function setUpHere(walker: Walker): void {
  reduce(walker.network, walker.state, walker.reduced);
  spend(walker, 1);
}

/** From share to share of the grid, watching at every step for a way of giving. */
function walkGrid(walk: Walk, watch: Watch): Ending {
  for (const share of gridOf(walk.asked)) {
    let last = 0;
    const ending = walkTo(walk, share, (_, iterations) => {
      last = iterations;
      notice(walk, watch);
    });
    if (ending !== 'arrived') return ending;
    tell(walk, last);
  }
  return 'arrived';
}

function notice(walk: Walk, watch: Watch): void {
  const { walker, asked } = walk;
  if (unstableWays(walker) !== watch.ways) setUpHere(walker);
  const now = unstableWays(walker);
  if (now !== watch.ways && !watch.crossing && walker.history.length > 1) {
    watch.crossing = { before: walker.history.slice(0, -1), to: walker.state.share };
    // What follows on this path is only told, not taken: it is not worth small steps.
    walk.shortest = Math.abs(endOf(asked)) / gridOf(asked).length / 2;
  }
  watch.ways = now;
}

function loose(): Problem {
  const message =
    'Something in the network can move freely as printed, so that no force holds it; hold it, or join it to something that is held';
  return { code: 'no-convergence', message, field: 'share', value: 0 };
}
