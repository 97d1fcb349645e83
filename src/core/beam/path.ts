/** Following the path of equilibria of a network as its motions and loads grow. */
import type { Problem } from '../problems.ts';
import { leaveSideways, type SecondPath } from './branch.ts';
import type { Crossing } from './crossing.ts';
import { restOf, type Network } from './network.ts';
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
import { accept, stateAt, walkerFrom } from './walker.ts';

/** A path as walked, before it is told. */
export interface Walked {
  readonly seen: readonly Observed[];
  readonly second?: SecondPath;
  readonly stopped?: Problem;
  readonly iterations: number;
}

/**
 * Follows the path from rest, past limits of the share where there are any, and the path that leaves sideways at the
 * first bifurcation.
 *
 * @param network - ready to be solved [-]
 * @param asked - how far and how finely [-]
 * @returns what was met on the way; `stopped` when it ended early
 */
export function walkPath(network: Network, asked: PathAsked): Walked {
  const tolerance = asked.tolerance ?? TOLERANCE;
  const walker = walkerFrom(network, restOf(network), tolerance, asked.budget ?? BUDGET);
  const range = Math.abs(endOf(asked));
  const grid = gridOf(asked);
  const walk: Walk = { walker, asked, seen: [], stride: range / Math.min(grid.length, 20), shortest: SHORTEST * range };
  accept(walker, walker.state, walker.state.share);
  let ways = 0;
  let crossing: Crossing | undefined;
  const notice = () => {
    const now = unstableWays(walker);
    if (now !== ways && !crossing && walker.history.length > 1) {
      crossing = { before: walker.history.slice(0, -1), to: walker.state.share };
      // What follows on this path is only told, not taken: it is not worth small steps.
      walk.shortest = range / grid.length / 2;
    }
    ways = now;
  };
  const first = stateAt(walker, walker.state.share);
  if (!first) return { seen: [], stopped: loose(), iterations: walker.spent };
  walker.state = first.state;
  walk.seen.push(observe(walker, first.iterations, asked.shapes === true));
  ways = unstableWays(walker);
  let ending: Ending = 'arrived';
  for (const share of grid) {
    let last = 0;
    ending = walkTo(walk, share, (_, iterations) => {
      last = iterations;
      notice();
    });
    if (ending !== 'arrived') break;
    walk.seen.push(observe(walker, last, asked.shapes === true));
  }
  // Beyond a crossing the first path is not the one that will be taken; where it gets lost it is let go.
  if (ending === 'stuck') ending = crossing ? 'arrived' : walkArcs(walk, grid);
  const end = typeof ending === 'object' ? ending : ending === 'stuck' ? lost(walker) : undefined;
  const second = crossing && asked.second !== false ? leaveSideways(walk, crossing) : undefined;
  return {
    seen: walk.seen,
    ...(second ? { second } : {}),
    ...(end ? { stopped: end } : {}),
    iterations: walker.spent,
  };
}

function loose(): Problem {
  const message =
    'Something in the network can move freely as printed, so that no force holds it; hold it, or join it to something that is held';
  return { code: 'no-convergence', message, field: 'share', value: 0 };
}
