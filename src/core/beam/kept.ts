/** What an answer keeps of its last state, so that another can begin there. */
import type { BeamModel } from './model.ts';
import { isSame } from './nearness.ts';
import { pinEnds } from './ends.ts';
import type { Network, State } from './network.ts';
import type { Observed } from './observe.ts';
import type { Walked } from './path.ts';
import { takenOf } from './told.ts';
import type { Walker } from './walker.ts';

/** A state by numbers without units, which mean the same in a network of slightly other sizes. */
interface Scaled {
  readonly share: number;
  /** Turns [rad], and movements over the network's scale [-]. */
  readonly unknowns: Float64Array;
  /** Movements over the scale and turns of all nodes from where they were printed. */
  readonly nodes: readonly Float64Array[];
  /** N·j²/EI, V·j²/EI, M·j/EI at all points, with j the length per ξ: thin members bend before they stretch. */
  readonly stress: readonly Float64Array[];
}

/**
 * The last state of an answer. Plain data, and nobody's business but the solver's: give it to `solveAt` or `followPath`
 * as `from`.
 */
export interface Kept {
  readonly model: BeamModel;
  readonly elements: readonly number[];
  readonly state: Scaled;
  /** Where the first path gives most, when another is taken. */
  readonly beside?: { readonly state: Scaled; readonly unstableWays: number };
  readonly unstableWays: number;
  /** Stiffness of the softest way of the network as printed [N·mm]. */
  readonly softestAtRest: number;
  /** Largest effort on the way, against which errors are weighed [N·mm]. */
  readonly largestEffort: number;
  /** The first path, the one that left it sideways, or the first again after that one joined it. */
  readonly way: 'first' | 'second' | 'joined';
  /** Whether a neighbour that is walked from rest is bound to come to the neighbour of this state. */
  readonly isSure: boolean;
  /** The network that was last walked from rest, and how far [-]. */
  readonly walked: { readonly model: BeamModel; readonly share: number };
}

/** A way softer than this part of what it was as printed is close to giving: a neighbour may have given. */
const MARGIN = 0.25;

/**
 * What is kept of a path as walked.
 *
 * @param network - the mesh on which it was walked [-]
 * @param walked - at least one state [-]
 * @param from - what it began with, if it did not begin at rest [-]
 */
export function keptOf(network: Network, walked: Walked, from?: Kept): Kept {
  const { model, elements } = network;
  const taken = takenOf(walked);
  const last = taken.at(-1)!;
  const beside = walked.second && givingMost(walked.seen);
  const softestAtRest = from?.softestAtRest ?? taken[0]!.softest;
  const largest = taken.reduce((most, { point }) => Math.max(most, Math.abs(point.effort)), from?.largestEffort ?? 0);
  const stays = !from || (from.way === 'first' && from.isSure && isSame(from.walked.model, model));
  const isSure = stays && isSureWay(walked, softestAtRest);
  return {
    model,
    elements,
    state: scaled(network, last.state),
    ...(beside ? { beside: { state: scaled(network, beside.state), unstableWays: beside.point.unstableWays } } : {}),
    unstableWays: last.point.unstableWays,
    softestAtRest,
    largestEffort: largest,
    way: wayOf(walked, from),
    isSure,
    walked: { model, share: last.state.share },
  };
}

/** What is kept of a state that was found from a neighbour's. */
export function keptBy({ network, state }: Walker, from: Kept): Kept {
  return { ...from, model: network.model, elements: network.elements, state: scaled(network, state) };
}

function wayOf({ seen, second }: Walked, from?: Kept): Kept['way'] {
  const before = second ? 'second' : (from?.way ?? 'first');
  return before === 'second' && hasJoined(second?.seen ?? seen) ? 'joined' : before;
}

/**
 * Whether neighbours keep together all the way: along one path that comes nowhere near giving; or along one that leaves
 * the first where that gives, and ends while it is still unstable, or well past where both have joined.
 */
function isSureWay({ seen, second }: Walked, softestAtRest: number): boolean {
  const isFirm = ({ softest }: Observed) => softest > MARGIN * softestAtRest;
  if (!second) return seen.every(isFirm) && isOneWay(seen);
  const last = second.seen.at(-1)!;
  if (second.stopped || !second.isSmooth || last.point.unstableWays > 0) return false;
  return hasJoined(second.seen) ? isFirm(last) : seen.at(-1)!.point.unstableWays > 0;
}

function hasJoined(seen: readonly Observed[]): boolean {
  return seen.some(({ slopeOn }) => slopeOn !== undefined);
}

/** Where the first path gives most: a neighbour that gives there as well has left it before. */
function givingMost(seen: readonly Observed[]): Observed | undefined {
  const giving = seen.filter(({ point }) => point.unstableWays > 0);
  return giving.length === 0 ? undefined : giving.reduce((a, b) => (b.softest < a.softest ? b : a));
}

/** Stable all along, with the share going one way only. */
function isOneWay(seen: readonly Observed[]): boolean {
  const heading = Math.sign(seen.at(-1)!.point.share - seen[0]!.point.share);
  return seen.every(({ point }, i) => {
    const on = i === 0 || (point.share - seen[i - 1]!.point.share) * heading > 0;
    return on && point.unstableWays === 0;
  });
}

function scaled(network: Network, { share, unknowns, nodes, stress }: State): Scaled {
  const { runs, scale } = network;
  const lengths = lengthsOf(network);
  return {
    share,
    unknowns: unknowns.map((movement, i) => movement / lengths[i]!),
    nodes: runs.map(({ home }, r) => nodes[r]!.map((at, i) => (at - home[i]!) / (i % 3 === 2 ? 1 : scale))),
    stress: runs.map((run, r) => stress[r]!.map((force, i) => force / unitOf(run, i))),
  };
}

/**
 * A kept state in a network of the same build and as many elements, at a share of its own motions and loads; not yet in
 * equilibrium.
 */
export function unscaled(network: Network, { unknowns, nodes, stress }: Scaled, share: number): State {
  const { runs, scale } = network;
  const lengths = lengthsOf(network);
  const state: State = {
    share,
    unknowns: unknowns.map((movement, i) => movement * lengths[i]!),
    nodes: runs.map(({ home }, r) => nodes[r]!.map((by, i) => home[i]! + by * (i % 3 === 2 ? 1 : scale))),
    stress: runs.map((run, r) => stress[r]!.map((force, i) => force * unitOf(run, i))),
  };
  runs.forEach((run, r) => pinEnds(network, state, run, state.nodes[r]!));
  return state;
}

/** By unknown: 1 for a turn, the network's scale for a movement. */
function lengthsOf({ frames, scale }: Network): Float64Array {
  const lengths = new Float64Array(frames.unknowns).fill(1);
  frames.unknown.forEach((unknown, slot) => {
    if (unknown >= 0 && slot % 3 !== 2) lengths[unknown] = scale;
  });
  return lengths;
}

function unitOf({ bending, jacobian }: Network['runs'][number], i: number): number {
  const point = Math.floor(i / 3);
  const length = jacobian[point]!;
  return bending[point]! / (i % 3 === 2 ? length : length * length);
}
