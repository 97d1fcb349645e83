/** Leaving a path sideways where another crosses it. */
import type { Problem } from '../problems.ts';
import { locate, type Crossing } from './crossing.ts';
import { advance } from './advance.ts';
import { reduce } from './equilibrium.ts';
import { copyOf, type State } from './network.ts';
import { observe, unstableWays, type Observed } from './observe.ts';
import { goOn, gridAfter, kinkAt, rejoin } from './rejoin.ts';
import { settle, type Settled } from './settle.ts';
import { softestWay } from './softest.ts';
import { endOf, gridOf, lost, walkArcs, walkTo, type Ending, SHORTEST, TOLERANCE, type Walk } from './walk.ts';
import { accept, arcBetween, spend, stateIn, walkerFrom, type Walker } from './walker.ts';

export interface SecondPath {
  /** From the crossing on. */
  readonly seen: readonly Observed[];
  /** Share at which it leaves [-]. */
  readonly leaves: number;
  /** The sideways movement by which it was entered [mm]. */
  readonly imperfection: number;
  /** False where a part of it was passed by falling downhill. */
  readonly isSmooth: boolean;
  readonly stopped?: Problem;
}

/** Sideways movement by which the second path is entered, of the walk's reach: the first that holds. */
const ENTRIES = [1e-3, 3e-3, 1e-2, 3e-2] as const;

/** The state a little to the side of a crossing, on the path that leaves it; and how far its nodes went [mm]. */
function enter(walker: Walker, at: State): { readonly state: State; readonly imperfection: number } | undefined {
  const { network, weights } = walker;
  reduce(network, at, walker.reduced);
  spend(walker, 1);
  const { vector } = softestWay(walker.reduced.tangent, weights);
  const normal = vector.map((v, i) => v * weights[i]!);
  const length = Math.sqrt(normal.reduce((sum, v, i) => sum + v * vector[i]!, 0));
  for (const entry of ENTRIES) {
    reduce(network, at, walker.reduced);
    spend(walker, 1);
    const start = copyOf(at);
    const step = vector.map((v) => (v * entry * walker.reach) / length);
    const size = advance(network, start, step, 0, 0);
    const value = normal.reduce((sum, v, i) => sum + v * start.unknowns[i]!, 0);
    const found = stateIn(walker, start, { normal, byShare: 0, value });
    if (found) return { state: found.state, imperfection: size * network.scale };
  }
  return undefined;
}

/**
 * Follows the path that leaves at the first crossing, from there to where it ends, turns back or joins again.
 *
 * @param walk - the walk that met the crossing; its budget is used on [-]
 * @param crossing - between which states [-]
 * @returns the second path, or undefined when none was found
 */
export function leaveSideways(walk: Walk, crossing: Crossing): SecondPath | undefined {
  const { network, budget } = walk.walker;
  const walker = walkerFrom(network, walk.walker.state, walk.asked.tolerance ?? TOLERANCE, budget);
  const at = locate(walker, crossing);
  const along: Walk = {
    walker,
    asked: walk.asked,
    seen: [kinkAt(walker, at, walk.asked)],
    stride: walk.stride,
    shortest: SHORTEST * Math.abs(endOf(walk.asked)),
  };
  const found = fall(along, walk, at) ?? turnOff(along, at);
  spend(walk.walker, walker.spent);
  if (!found) return undefined;
  const { ending, imperfection } = found;
  const stopped = typeof ending === 'object' ? ending : ending === 'stuck' ? lost(walker) : undefined;
  const isSmooth = along.hasFallen !== true;
  return { seen: along.seen, leaves: at.share, imperfection, isSmooth, ...(stopped ? { stopped } : {}) };
}

interface Left {
  readonly ending: Ending;
  readonly imperfection: number;
}

/**
 * Touched beyond the crossing, the network falls to the second path, which is then followed back to the crossing and
 * on; undefined where the path found there does not come from the crossing.
 */
function fall(along: Walk, walk: Walk, at: State): Left | undefined {
  const { walker, asked } = along;
  const heading = Math.sign(endOf(asked));
  const isBeyond = ({ point }: Observed) => (point.share - at.share) * heading > 1e-6 && point.unstableWays > 0;
  const settled = firstSettled(walker, walk.seen.filter(isBeyond).slice(0, TOUCHED));
  if (!settled) return undefined;
  const { state, imperfection } = settled;
  const restart = () => {
    walker.history.length = 0;
    accept(walker, state, state.share);
    reduce(walker.network, state, walker.reduced);
  };
  restart();
  const told = [observe(walker, 0, asked)];
  for (const part of BACK_PARTS) {
    const ending = walkTo(along, at.share + part * (state.share - at.share), () => {});
    const isLost = ending !== 'arrived' || unstableWays(walker) > 0;
    // Close to the crossing the path is as soft as it comes and may be lost; only one lost at once comes from elsewhere.
    if (isLost && told.length === 1) return undefined;
    if (isLost) break;
    told.unshift(observe(walker, 0, asked));
  }
  along.seen.push(...told);
  restart();
  return { ending: goOn(along, gridAfter(along)), imperfection };
}

/** So many states beyond the crossing are touched before it is given up that one falls. */
const TOUCHED = 3;

function firstSettled(walker: Walker, states: readonly Observed[]): Settled | undefined {
  for (const { state } of states) {
    const settled = settle(walker, state);
    if (settled) return settled;
  }
  return undefined;
}

/** Shares of the way back from where it fell to the crossing at which the second path is told. */
const BACK_PARTS = [0.6, 0.3, 0.1] as const;

/** Out of the crossing itself along its softest way, by arc: where the second path first runs back. */
function turnOff(along: Walk, at: State): Left | undefined {
  const { walker, asked } = along;
  const entered = enter(walker, at);
  if (!entered) return undefined;
  walker.history.length = 0;
  accept(walker, at, 0);
  accept(walker, entered.state, arcBetween(walker, at, entered.state));
  along.seen.push(observe(walker, 0, asked));
  const walked = walkArcs(along, gridOf(asked), () => rejoin(along));
  // A walk that gets stuck may have run into the very point where the paths join.
  const ending = walked === 'stuck' ? (rejoin(along) ?? walked) : walked;
  return { ending, imperfection: entered.imperfection };
}
