/** Falling from an unstable equilibrium to the stable one that a real part finds when it is touched. */
import { dot } from './correct.ts';
import { eliminateOnce } from './elimination.ts';
import { advance } from './advance.ts';
import { reduce, type Reduced } from './equilibrium.ts';
import { copyOf, type State } from './network.ts';
import { softestWay } from './softest.ts';
import { spend, type Walker } from './walker.ts';

/** Sideways push that starts the fall, of the walk's reach. */
const PUSH = 0.03;
/** A step of the fall is no longer than this part of the walk's reach: the equations are trusted no further. */
const TRUSTED = 0.5;
const MOST_STEPS = 120;
/** A step shorter than this part of the reach, uphill on all sides but one, means a ridge; it is left by pushes of this part. */
const RIDGE = 0.02;
const PUSH_OFF = 0.2;
const MOST_PUSHES = 12;

export interface Settled {
  readonly state: State;
  /** The sideways movement that started the fall [mm]. */
  readonly imperfection: number;
}

/**
 * The stable equilibrium near an unstable one at the same share.
 *
 * @param walker - on the network [-]
 * @param unstable - an equilibrium with at least one way to give [-]
 * @param side - to which side of that way it is touched [-]
 * @returns the stable state, or undefined when none is reached
 */
export function settle(walker: Walker, unstable: State, side: 1 | -1 = 1): Settled | undefined {
  const { network, reduced, weights } = walker;
  const state = copyOf(unstable);
  reduce(network, state, reduced);
  spend(walker, 1);
  const { vector } = softestWay(reduced.tangent, weights);
  const length = lengthOf(vector, weights);
  const push = vector.map((v) => (side * v * PUSH * walker.reach) / length);
  const imperfection = advance(network, state, push, 0, 0) * network.scale;
  return fallFrom(walker, state) ? { state, imperfection } : undefined;
}

/**
 * The stable equilibrium at another share, nearest downhill from the present state: slower than a walk, but it passes
 * where a way is so soft that a walk finds no footing.
 *
 * @param walker - at an equilibrium [-]
 * @param share - where to [-]
 * @returns the stable state, or undefined when none is reached
 */
export function settleAt(walker: Walker, share: number): State | undefined {
  const { network, reduced, weights } = walker;
  const state = copyOf(walker.state);
  const by = share - state.share;
  reduce(network, state, reduced);
  spend(walker, 1);
  const rate = downhill(reduced, reduced.byShare, weights)?.step;
  if (!rate) return undefined;
  advance(
    network,
    state,
    rate.map((r) => r * by),
    by,
    0,
  );
  return fallFrom(walker, state) ? state : undefined;
}

/**
 * Steps of Newton's method with the tangent made positive, so that every step goes downhill in energy, which also
 * passes where several ways are equally soft. Where it comes to rest on a ridge it is pushed off again, downhill if
 * there is a side, along the softest way.
 */
function fallFrom(walker: Walker, state: State): boolean {
  const { network, reduced, weights } = walker;
  let pushes = 0;
  for (let count = 0; count < MOST_STEPS && walker.budget > 0; count += 1) {
    reduce(network, state, reduced);
    spend(walker, 1);
    const found = downhill(reduced, reduced.residual, weights);
    if (!found) return false;
    const size = lengthOf(found.step, weights);
    const isOnRidge = !found.isNewton && size < RIDGE * walker.reach && pushes < MOST_PUSHES;
    if (isOnRidge) pushes += 1;
    const step = isOnRidge ? pushOff(walker) : found.step;
    const length = isOnRidge ? lengthOf(step, weights) : size;
    const shrink = length > 0 ? Math.min(1, (TRUSTED * walker.reach) / length) : 1;
    const moved = advance(
      network,
      state,
      step.map((d) => d * shrink),
      0,
      1,
    );
    if (!(moved < 1)) return false;
    if (found.isNewton && reduced.negative === 0 && moved < walker.tolerance) return true;
  }
  return false;
}

/** A length of arc: turns in rad, movements over scale. */
function lengthOf(step: Float64Array, weights: Float64Array): number {
  return Math.sqrt(
    dot(
      step,
      step.map((d, i) => d * weights[i]!),
    ),
  );
}

/** A push along the softest way, to the side on which the forces already pull. */
function pushOff({ reduced, weights, reach }: Walker): Float64Array {
  const { vector } = softestWay(reduced.tangent, weights);
  const side = dot(vector, reduced.residual) > 0 ? -1 : 1;
  const size = (side * PUSH_OFF * reach) / lengthOf(vector, weights);
  return vector.map((v) => v * size);
}

/** A step downhill: Newton's where the tangent is positive, else with so much more stiffness that it is. */
function downhill(
  { tangent, isLopsided }: Reduced,
  residual: Float64Array,
  weights: Float64Array,
): { readonly step: Float64Array; readonly isNewton: boolean } | undefined {
  const n = weights.length;
  let scale = 0;
  for (let i = 0; i < n; i += 1) scale = Math.max(scale, Math.abs(tangent[i * n + i]!) / weights[i]!);
  for (let more = 0; more <= scale * 10; more = more === 0 ? scale * 1e-7 : more * 8) {
    const held = tangent.slice();
    for (let i = 0; i < n; i += 1) held[i * n + i] = held[i * n + i]! + more * weights[i]!;
    const eliminated = eliminateOnce(held, n, isLopsided);
    if (eliminated.negative() > 0) continue;
    const step = residual.map((r) => -r);
    return eliminated.solve(step) ? { step, isNewton: more === 0 } : undefined;
  }
  return undefined;
}
