/** Finding where a path is crossed by another. */
import { reduce } from './equilibrium.ts';
import type { State } from './network.ts';
import { unstableWays } from './observe.ts';
import { softestWay } from './softest.ts';
import { straightAt } from './straight.ts';
import { spend, stateAt, type Step, type Walker } from './walker.ts';

/** Between which states the first way of giving was met. */
export interface Crossing {
  readonly before: readonly Step[];
  readonly to: number;
}

/** The crossing is found to this share of the way; its effort is then known to about as many figures. */
const CLOSE = 1e-9;
const MOST_BISECTIONS = 40;
/**
 * Where the tangent becomes singular between two states, by the sign of its softest stiffness.
 *
 * @returns the last state before it, with the equations left as there
 */
export function locate(walker: Walker, { before, to }: Crossing): State {
  const steps = before.slice(-3);
  walker.history.splice(0, walker.history.length, ...steps);
  let low = steps.at(-1)!.state;
  let high = to;
  walker.state = low;
  reduce(walker.network, low, walker.reduced);
  const waysLow = unstableWays(walker);
  let soft = { low: softestWay(walker.reduced.tangent, walker.weights).value, high: Number.NaN };
  for (let i = 0; i < MOST_BISECTIONS && Math.abs(high - low.share) > CLOSE; i += 1) {
    // A straight line through both stiffnesses meets zero near the crossing; every third time the middle is taken.
    const line = low.share + ((high - low.share) * soft.low) / (soft.low - soft.high);
    const inside = Number.isFinite(line) && i % 3 !== 2 && (line - low.share) * (line - high) < 0;
    const share = inside ? line : (low.share + high) / 2;
    const state = stateAt(walker, share)?.state ?? straightAt(walker, share);
    if (!state) break;
    // The stiffness of the last step's start is not that of the state: so near to nothing, the difference counts.
    reduce(walker.network, state, walker.reduced);
    spend(walker, 1);
    const value = softestWay(walker.reduced.tangent, walker.weights).value;
    if (unstableWays(walker) === waysLow) {
      low = state;
      soft = { ...soft, low: value };
    } else {
      high = share;
      soft = { ...soft, high: value };
    }
  }
  reduce(walker.network, low, walker.reduced);
  return low;
}
