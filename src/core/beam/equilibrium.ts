/** The equations of a network in one state, reduced to the unknown movements of its frames, and the way back. */
import { condense } from './condense.ts';
import { advanceStress } from './element.ts';
import { restore } from './eliminate.ts';
import { eliminateOnce, type Eliminated } from './elimination.ts';
import type { Run } from './mesh.ts';
import { placeOf, type Network, type RunRoom, type State } from './network.ts';

/** Reduced equations K·dq + k·dλ = −r, with the effort e and its change along q and λ. */
export interface Reduced {
  /** Full square of side unknowns, row by row. */
  readonly tangent: Float64Array;
  readonly residual: Float64Array;
  /** Change of the residual with the share. */
  readonly byShare: Float64Array;
  /** Change of the effort with the unknowns: the same as `byShare` unless loads turn with what they act on. */
  readonly effortBy: Float64Array;
  effort: number;
  effortByShare: number;
  energy: number;
  /** Ways in which runs between held frames are unstable by themselves. */
  negative: number;
  /** Internal force at every frame direction, springs included: the reaction where it is held or moved. */
  readonly reaction: Float64Array;
  /** True where loads turn with what they act on. */
  readonly isLopsided: boolean;
  /** The tangent as eliminated since it was last set up. */
  eliminated: Eliminated | undefined;
}

/** The tangent eliminated: once for a step, the ways of giving and the slope of the effort. */
export function eliminatedOf(reduced: Reduced): Eliminated {
  const { tangent, residual, isLopsided } = reduced;
  reduced.eliminated ??= eliminateOnce(tangent, residual.length, isLopsided);
  return reduced.eliminated;
}

export function reducedFor({ frames }: Network): Reduced {
  const n = frames.unknowns;
  return {
    tangent: new Float64Array(n * n),
    residual: new Float64Array(n),
    byShare: new Float64Array(n),
    effortBy: new Float64Array(n),
    effort: 0,
    effortByShare: 0,
    energy: 0,
    negative: 0,
    reaction: new Float64Array(3 * frames.count),
    isLopsided: frames.hasFollower,
    eliminated: undefined,
  };
}

/**
 * The equations of the network in a state, reduced to the unknowns of its frames.
 *
 * @param network - the network [-]
 * @param state - where it is [-]
 * @param reduced - filled [N, mm, rad]
 */
export function reduce(network: Network, state: State, reduced: Reduced): void {
  const { runs, rooms, frames } = network;
  const { tangent, residual, byShare, effortBy, reaction } = reduced;
  for (const array of [tangent, residual, byShare, effortBy, reaction]) array.fill(0);
  reduced.eliminated = undefined;
  reduced.effort = 0;
  reduced.effortByShare = 0;
  reduced.energy = 0;
  reduced.negative = 0;
  for (let r = 0; r < runs.length; r += 1) {
    const [run, room] = [runs[r]!, rooms[r]!];
    reduced.energy += condense(network, run, room, state.nodes[r]!, state.stress[r]!);
    reduced.negative += room.negative;
    gather(network, state, run, room, reduced);
  }
  addSprings(network, state, reduced);
  addLoads(network, state, reduced);
  for (let i = 0; i < 3 * frames.count; i += 1) {
    const unknown = frames.unknown[i]!;
    if (unknown >= 0) residual[unknown] = residual[unknown]! + frames.factor[i]! * reaction[i]!;
    reduced.effort += frames.rate[i]! * reaction[i]!;
  }
}

/** Rotated places of a run's ends seen from their frames [mm]. */
function arms(network: Network, state: State, run: Run): readonly [number, number, number, number] {
  const [first, second] = run.ends;
  const a = placeOf(network, state, 3 * first.frame + 2);
  const b = placeOf(network, state, 3 * second.frame + 2);
  return [
    first.offset.x * Math.cos(a) - first.offset.y * Math.sin(a),
    first.offset.x * Math.sin(a) + first.offset.y * Math.cos(a),
    second.offset.x * Math.cos(b) - second.offset.y * Math.sin(b),
    second.offset.x * Math.sin(b) + second.offset.y * Math.cos(b),
  ];
}

const full = new Float64Array(36);

/** Adds a run to the equations of the frames that it hangs on. */
function gather(network: Network, state: State, run: Run, room: RunRoom, reduced: Reduced): void {
  const { matrix, force } = room.ends;
  const [ax, ay, bx, by] = arms(network, state, run);
  const turnsA = run.ends[0].hinged ? 0 : 1;
  const turnsB = run.ends[1].hinged ? 0 : 1;
  // T turns movements of the frames into movements of the ends: dx −ay·dturn, dy + ax·dturn, dturn (0 for a hinge).
  for (let i = 0; i < 6; i += 1) {
    const at = (j: number) => (i <= j ? matrix[i * 6 + j]! : matrix[j * 6 + i]!);
    full[i * 6] = at(0);
    full[i * 6 + 1] = at(1);
    full[i * 6 + 2] = -ay * at(0) + ax * at(1) + turnsA * at(2);
    full[i * 6 + 3] = at(3);
    full[i * 6 + 4] = at(4);
    full[i * 6 + 5] = -by * at(3) + bx * at(4) + turnsB * at(5);
  }
  for (let j = 0; j < 6; j += 1) {
    const at = (i: number) => full[i * 6 + j]!;
    full[12 + j] = -ay * at(0) + ax * at(1) + turnsA * at(2);
    full[30 + j] = -by * at(3) + bx * at(4) + turnsB * at(5);
  }
  const [f0, f1, f3, f4] = [force[0]!, force[1]!, force[3]!, force[4]!];
  // The arm itself turns on: second derivative of the end's place.
  full[14] = full[14]! - (f0 * ax + f1 * ay);
  full[35] = full[35]! - (f3 * bx + f4 * by);
  const forces = [f0, f1, -ay * f0 + ax * f1 + turnsA * force[2]!, f3, f4, -by * f3 + bx * f4 + turnsB * force[5]!];
  const [a, b] = [3 * run.ends[0].frame, 3 * run.ends[1].frame];
  for (let i = 0; i < 6; i += 1) {
    const slot = i < 3 ? a + i : b + i - 3;
    reduced.reaction[slot] = reduced.reaction[slot]! + forces[i]!;
    for (let j = 0; j < 6; j += 1) add(network, reduced, slot, j < 3 ? a + j : b + j - 3, full[i * 6 + j]!);
  }
}

/** Adds one stiffness between two frame directions to whatever they depend on. */
function add({ frames }: Network, reduced: Reduced, i: number, j: number, stiffness: number): void {
  const [p, q] = [frames.unknown[i]!, frames.unknown[j]!];
  const [fi, fj, ri, rj] = [frames.factor[i]!, frames.factor[j]!, frames.rate[i]!, frames.rate[j]!];
  if (p >= 0 && q >= 0) {
    const at = p * frames.unknowns + q;
    reduced.tangent[at] = reduced.tangent[at]! + fi * fj * stiffness;
  }
  if (p >= 0 && rj !== 0) reduced.byShare[p] = reduced.byShare[p]! + fi * rj * stiffness;
  if (q >= 0 && ri !== 0) reduced.effortBy[q] = reduced.effortBy[q]! + ri * fj * stiffness;
  if (ri !== 0 && rj !== 0) reduced.effortByShare += ri * rj * stiffness;
}

function addSprings(network: Network, state: State, reduced: Reduced): void {
  const { frames } = network;
  const moved = (slot: number) => placeOf(network, state, slot) - frames.home[slot]!;
  for (const { from, to, stiffness } of frames.springs) {
    const stretch = moved(from) - (to < 0 ? 0 : moved(to));
    const ends = to < 0 ? [from] : [from, to];
    reduced.energy += 0.5 * stiffness * stretch * stretch;
    ends.forEach((slot, k) => {
      const sign = k === 0 ? 1 : -1;
      reduced.reaction[slot] = reduced.reaction[slot]! + sign * stiffness * stretch;
      ends.forEach((other, m) => add(network, reduced, slot, other, (k === m ? 1 : -1) * stiffness));
    });
  }
}

/** Loads grow with the share; those that follow turn with their frame, which makes the tangent lopsided. */
function addLoads(network: Network, state: State, reduced: Reduced): void {
  const { frames } = network;
  for (let frame = 0; frame < frames.named; frame += 1) {
    const at = 3 * frame;
    const [x, y, moment] = [frames.load[at]!, frames.load[at + 1]!, frames.load[at + 2]!];
    if (x === 0 && y === 0 && moment === 0) continue;
    const turn = frames.follower[frame] === 1 ? placeOf(network, state, at + 2) : 0;
    const [c, s] = [Math.cos(turn), Math.sin(turn)];
    const [fx, fy] = [c * x - s * y, s * x + c * y];
    [fx, fy, moment].forEach((force, d) => {
      reduced.reaction[at + d] = reduced.reaction[at + d]! - state.share * force;
      const unknown = frames.unknown[at + d]!;
      if (unknown >= 0) reduced.byShare[unknown] = reduced.byShare[unknown]! - frames.factor[at + d]! * force;
    });
    if (frames.follower[frame] === 1) {
      add(network, reduced, at, at + 2, state.share * fy);
      add(network, reduced, at + 1, at + 2, -state.share * fx);
    }
  }
}

/**
 * Takes a step of the unknowns and the share, and everything inside the runs along with it.
 *
 * @param network - as last reduced [-]
 * @param state - changed [mm, rad]
 * @param step - change of the unknowns [mm, rad]
 * @param share - change of the share [-]
 * @param withForce - 1 for a step of Newton's method, 0 for one along the tangent [-]
 * @returns size of the step [-]: the largest turn [rad] or movement over the network's scale
 */
export function advance(network: Network, state: State, step: Float64Array, share: number, withForce: 0 | 1): number {
  const { runs, rooms, rule, frames, scale } = network;
  const moves = (slot: number) => {
    const unknown = frames.unknown[slot]!;
    return frames.rate[slot]! * share + (unknown < 0 ? 0 : frames.factor[slot]! * step[unknown]!);
  };
  const before = runs.map((run) => arms(network, state, run));
  state.share += share;
  for (let i = 0; i < step.length; i += 1) state.unknowns[i] = state.unknowns[i]! + step[i]!;
  let largest = 0;
  for (let r = 0; r < runs.length; r += 1) {
    const [run, room] = [runs[r]!, rooms[r]!];
    stepEnds(run, room, before[r]!, moves, withForce);
    wayBack(rule.degree, run, room, withForce);
    const nodes = state.nodes[r]!;
    for (let i = 0; i < nodes.length; i += 3) {
      const [dx, dy, turn] = [room.step[i]!, room.step[i + 1]!, room.step[i + 2]!];
      nodes[i] = nodes[i]! + dx;
      nodes[i + 1] = nodes[i + 1]! + dy;
      nodes[i + 2] = nodes[i + 2]! + turn;
      largest = Math.max(largest, Math.abs(turn), Math.abs(dx) / scale, Math.abs(dy) / scale);
    }
    advanceStress(rule, run, room.step, room.kept, state.stress[r]!);
    pinEnds(network, state, run, nodes);
  }
  return largest;
}

const ends = new Float64Array(6);

/** Steps of a run's two ends, from those of its frames; a hinged turn from its own equation. */
function stepEnds(
  run: Run,
  room: RunRoom,
  [ax, ay, bx, by]: readonly [number, number, number, number],
  moves: (slot: number) => number,
  withForce: 0 | 1,
): void {
  const [first, second] = run.ends;
  const [turnA, turnB] = [moves(3 * first.frame + 2), moves(3 * second.frame + 2)];
  ends[0] = moves(3 * first.frame) - ay * turnA;
  ends[1] = moves(3 * first.frame + 1) + ax * turnA;
  ends[2] = first.hinged ? 0 : turnA;
  ends[3] = moves(3 * second.frame) - by * turnB;
  ends[4] = moves(3 * second.frame + 1) + bx * turnB;
  ends[5] = second.hinged ? 0 : turnB;
  const { matrix, force } = room.ends;
  const free = (k: number) => {
    let sum = withForce === 1 ? -force[k]! : 0;
    for (let i = 0; i < 6; i += 1) if (i !== k) sum -= (i < k ? matrix[i * 6 + k]! : matrix[k * 6 + i]!) * ends[i]!;
    ends[k] = sum / matrix[k * 6 + k]!;
  };
  // The first hinge was eliminated first: its turn, still 0 here, has no part in the second's equation.
  if (second.hinged) free(5);
  if (first.hinged) free(2);
  const last = 3 * (run.nodes - 1);
  for (let d = 0; d < 3; d += 1) {
    room.step[d] = ends[d]!;
    room.step[last + d] = ends[3 + d]!;
  }
}

const joined = new Float64Array(9);
const solved = new Float64Array(64);

/** Fills in the steps between the ends of a run: nodes between elements from the last join back, then inner nodes. */
function wayBack(degree: number, run: Run, room: RunRoom, withForce: 0 | 1): void {
  const { step } = room;
  const stride = 3 * degree;
  for (let e = run.elements - 1; e > 0; e -= 1) {
    const { matrix, force } = room.joins[e - 1]!;
    for (let d = 0; d < 3; d += 1) {
      joined[3 + d] = step[d]!;
      joined[6 + d] = step[(e + 1) * stride + d]!;
    }
    restore(matrix, force, 9, 3, joined, withForce);
    for (let d = 0; d < 3; d += 1) step[e * stride + d] = joined[d]!;
  }
  const size = stride + 3;
  const inner = size - 6;
  for (let e = 0; e < run.elements; e += 1) {
    const { matrix, force } = room.elements[e]!;
    for (let d = 0; d < 3; d += 1) {
      solved[inner + d] = step[e * stride + d]!;
      solved[inner + 3 + d] = step[(e + 1) * stride + d]!;
    }
    restore(matrix, force, size, inner, solved, withForce);
    for (let i = 0; i < inner; i += 1) step[e * stride + 3 + i] = solved[i]!;
  }
}

/** Puts the ends exactly where their frames carry them: turned arms do not move along their tangents. */
export function pinEnds(network: Network, state: State, run: Run, nodes: Float64Array): void {
  const [ax, ay, bx, by] = arms(network, state, run);
  const [first, second] = run.ends;
  const last = 3 * (run.nodes - 1);
  const [a, b] = [3 * first.frame, 3 * second.frame];
  nodes[0] = placeOf(network, state, a) + ax;
  nodes[1] = placeOf(network, state, a + 1) + ay;
  if (!first.hinged) nodes[2] = first.heading + placeOf(network, state, a + 2);
  nodes[last] = placeOf(network, state, b) + bx;
  nodes[last + 1] = placeOf(network, state, b + 1) + by;
  if (!second.hinged) nodes[last + 2] = second.heading + placeOf(network, state, b + 2);
}
