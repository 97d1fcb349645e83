/** The equations of a network in one state, reduced to the unknown movements of its frames. */
import { condense } from './condense.ts';
import { eliminateOnce, type Eliminated } from './elimination.ts';
import { armsOf } from './ends.ts';
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

const full = new Float64Array(36);

/** Adds a run to the equations of the frames that it hangs on. */
function gather(network: Network, state: State, run: Run, room: RunRoom, reduced: Reduced): void {
  const { matrix, force } = room.ends;
  const [ax, ay, bx, by] = armsOf(network, state, run);
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
