/** One walk along a path of equilibria: steps forward with a prediction, corrects, and halves what does not converge. */
import { lagrangeWeights } from '../numeric/lagrange.ts';
import { copyOf, type Network, type State } from './network.ts';
import { advance } from './advance.ts';
import { pinEnds } from './ends.ts';
import { eliminatedOf, reduce, reducedFor, type Reduced } from './equilibrium.ts';
import { correct, dot, type Plane } from './correct.ts';

/** A state with how far along the walk it is, by share or by arc. */
export interface Step {
  readonly at: number;
  readonly state: State;
}

/** A state that was looked for, and how many times the equations were set up. */
export interface Found {
  readonly state: State;
  readonly iterations: number;
}

export interface Walker {
  readonly network: Network;
  readonly reduced: Reduced;
  readonly tolerance: number;
  /** How far the motions go, as turn [rad] or movement over scale, at most 1: sideways steps are measured by it. */
  readonly reach: number;
  /** Weight of each unknown in lengths along the path: turns count as they are, movements by the network's scale. */
  readonly weights: Float64Array;
  /** The last few states, oldest first; predictions run through them. */
  readonly history: Step[];
  state: State;
  /** Times the equations may still be set up. */
  budget: number;
  spent: number;
}

/** A cubic through four states predicts the next to the fourth power of the step. */
const REMEMBERED = 4;

export function walkerFrom(network: Network, start: State, tolerance: number, budget: number): Walker {
  return {
    network,
    reduced: reducedFor(network),
    // Small movements are solved as closely, for their size, as large ones.
    tolerance: tolerance * reachOf(network),
    reach: reachOf(network),
    weights: weightsOf(network),
    history: [],
    state: start,
    budget,
    spent: 0,
  };
}

function reachOf({ frames, scale }: Network): number {
  if (!frames.isMoved) return 1;
  const size = frames.rate.reduce((most, rate, i) => Math.max(most, Math.abs(rate) / (i % 3 === 2 ? 1 : scale)), 0);
  return Math.min(1, size);
}

function weightsOf({ frames, scale }: Network): Float64Array {
  const weights = new Float64Array(frames.unknowns).fill(1);
  for (let i = 0; i < 3 * frames.count; i += 1) {
    const unknown = frames.unknown[i]!;
    if (unknown >= 0 && i % 3 !== 2) weights[unknown] = 1 / (scale * scale);
  }
  return weights;
}

/** Where one state is accepted: it becomes the present one. */
export function accept(walker: Walker, state: State, at: number): void {
  walker.state = state;
  walker.history.push({ at, state });
  if (walker.history.length > REMEMBERED) walker.history.shift();
}

/** Direction of the path at the present state, by share; undefined where it is singular. */
function rateOf({ reduced }: Walker): Float64Array | undefined {
  const rate = reduced.byShare.map((k) => -k);
  return eliminatedOf(reduced).solve(rate) ? rate : undefined;
}

/** The polynomial through remembered states, at a place beyond them. */
export function predicted({ network, history }: Walker, at: number): State {
  const weights = lagrangeWeights(
    history.map((step) => step.at),
    at,
  );
  const sum = (of: (state: State) => Float64Array): Float64Array => {
    const total = new Float64Array(of(history[0]!.state).length);
    for (let k = 0; k < history.length; k += 1) {
      const array = of(history[k]!.state);
      const weight = weights[k]!;
      for (let i = 0; i < total.length; i += 1) total[i] = total[i]! + weight * array[i]!;
    }
    return total;
  };
  const state: State = {
    share: history.reduce((total, step, k) => total + weights[k]! * step.state.share, 0),
    unknowns: sum((s) => s.unknowns),
    nodes: network.runs.map((_, r) => sum((s) => s.nodes[r]!)),
    stress: network.runs.map((_, r) => sum((s) => s.stress[r]!)),
  };
  network.runs.forEach((run, r) => pinEnds(network, state, run, state.nodes[r]!));
  return state;
}

/** From one state only: along the tangent. */
function alongTangent(walker: Walker, share: number): State | undefined {
  reduce(walker.network, walker.state, walker.reduced);
  spend(walker, 1);
  const rate = rateOf(walker);
  if (!rate) return undefined;
  const state = copyOf(walker.state);
  const by = share - state.share;
  const size = advance(
    walker.network,
    state,
    rate.map((r) => r * by),
    by,
    0,
  );
  return size < 1 ? state : undefined;
}

export function spend(walker: Walker, iterations: number): void {
  walker.budget -= iterations;
  walker.spent += iterations;
}

/** Where Newton's method lands so many times further than was predicted, it has jumped to another path. */
const JUMP = 4;
/** Nearer than this nothing is called a jump: turns in rad, movements over scale. */
const LEAST_JUMP = 0.05;

/** The equilibrium at a share, from a prediction; undefined when it is not found from there. */
export function stateAt(walker: Walker, share: number): Found | undefined {
  const start = walker.history.length > 1 ? predicted(walker, share) : alongTangent(walker, share);
  if (!start) return undefined;
  start.share = share;
  const expected = arcBetween(walker, walker.state, start);
  const { converged, iterations } = correct(walker.network, start, walker.reduced, walker.tolerance);
  spend(walker, iterations);
  const isNext = converged && arcBetween(walker, walker.state, start) < Math.max(LEAST_JUMP, JUMP * expected);
  return isNext ? { state: start, iterations } : undefined;
}

/** The equilibrium in a plane across the path, from a given start. */
export function stateIn(walker: Walker, start: State, plane: Plane): Found | undefined {
  const { converged, iterations } = correct(walker.network, start, walker.reduced, walker.tolerance, plane);
  spend(walker, iterations);
  return converged ? { state: start, iterations } : undefined;
}

/** How far apart two states are along a path: turns in rad, movements over scale, share as it is. */
export function arcBetween({ weights }: Walker, a: State, b: State): number {
  const step = Float64Array.from(b.unknowns, (q, i) => q - a.unknowns[i]!);
  return Math.sqrt(
    dot(
      step,
      step.map((d, i) => d * weights[i]!),
    ) +
      (b.share - a.share) ** 2,
  );
}

/** The next equilibrium a length of arc further, in the direction of the last two states. */
export function stateAhead(walker: Walker, arc: number): Found | undefined {
  const [before, now] = [walker.history.at(-2), walker.history.at(-1)];
  if (!before || !now) return undefined;
  const length = arcBetween(walker, before.state, now.state);
  const normal = now.state.unknowns.map((q, i) => ((q - before.state.unknowns[i]!) * walker.weights[i]!) / length);
  const byShare = (now.state.share - before.state.share) / length;
  const start = predicted(walker, now.at + arc);
  const value = dot(normal, now.state.unknowns) + byShare * now.state.share + arc;
  const found = stateIn(walker, start, { normal, byShare, value });
  return found && arcBetween(walker, now.state, found.state) < JUMP * arc ? found : undefined;
}

/** Change of the effort with the share along the path: below zero it pulls itself on. */
export function effortSlope(walker: Walker): number {
  const rate = rateOf(walker);
  if (!rate) return Number.NaN;
  const { reduced } = walker;
  return reduced.effortByShare + dot(reduced.effortBy, rate);
}
