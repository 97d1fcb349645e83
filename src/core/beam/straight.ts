/** Steps that do not go along a network's softest ways: past a crossing, and on from where paths join. */
import { correct, dot } from './correct.ts';
import { solveInPlace } from './dense.ts';
import { advance } from './advance.ts';
import { reduce } from './equilibrium.ts';
import { copyOf, type State } from './network.ts';
import { softestWay } from './softest.ts';
import { predicted, spend, type Walker } from './walker.ts';

/** Newton's steps where the softest way is held: more are never needed from a prediction this near. */
const MOST_STRAIGHT = 8;

/** As `stateAt`, but nothing moves along the softest way, in which Newton's method finds no hold close to a crossing. */
export function straightAt(walker: Walker, share: number): State | undefined {
  const { network, reduced, weights } = walker;
  if (walker.history.length < 2) return undefined;
  const state = predicted(walker, share);
  state.share = share;
  for (let i = 0; i < MOST_STRAIGHT; i += 1) {
    reduce(network, state, reduced);
    spend(walker, 1);
    const step = reduced.residual.map((r) => -r);
    if (!solveInPlace(stiffened(reduced.tangent, weights), step)) return undefined;
    if (advance(network, state, step, 0, 1) < walker.tolerance) return state;
  }
  return undefined;
}

/** A second way so much softer than the third comes in along with the first: two halves may lean alike. */
const MUCH_SOFTER = 0.1;

/** The equilibrium at a share further on, from the present state and without going along its softest ways. */
export function straightOn(walker: Walker, share: number): State | undefined {
  const { network, reduced, weights } = walker;
  reduce(network, walker.state, reduced);
  spend(walker, 1);
  const rate = reduced.byShare.map((k) => -k);
  if (!solveInPlace(stiffened(reduced.tangent, weights), rate)) return undefined;
  const state = copyOf(walker.state);
  const by = share - state.share;
  advance(
    network,
    state,
    rate.map((r) => r * by),
    by,
    0,
  );
  const { converged, iterations } = correct(network, state, reduced, walker.tolerance);
  spend(walker, iterations);
  return converged ? state : undefined;
}

/** Change of the effort with the share on the path that goes straight on. */
export function straightSlope({ reduced, weights }: Walker): number {
  const rate = reduced.byShare.map((k) => -k);
  if (!solveInPlace(stiffened(reduced.tangent, weights), rate)) return Number.NaN;
  return reduced.effortByShare + dot(reduced.effortBy, rate);
}

/** The tangent with its softest way, or the two alike, made as stiff as its stiffest. */
function stiffened(tangent: Float64Array, weights: Float64Array): Float64Array {
  const stiff = tangent.reduce((most, k) => Math.max(most, Math.abs(k)), 0);
  const one = withWayHeld(tangent, softestWay(tangent, weights).vector, weights, stiff);
  if (weights.length < 3) return one;
  const second = softestWay(one, weights);
  const two = withWayHeld(one, second.vector, weights, stiff);
  return Math.abs(second.value) < MUCH_SOFTER * Math.abs(softestWay(two, weights).value) ? two : one;
}

function withWayHeld(tangent: Float64Array, way: Float64Array, weights: Float64Array, stiff: number): Float64Array {
  const n = weights.length;
  const normal = way.map((v, i) => v * Math.sqrt(weights[i]!));
  const length = normal.reduce((sum, v) => sum + v * v, 0);
  return tangent.map((k, i) => k + (stiff * normal[Math.floor(i / n)]! * normal[i % n]!) / length);
}
