/** Forces in a state: what each end of a run puts on its frame, reactions, effort and what is left out of balance. */
import { runForce } from './element.ts';
import type { Network, State } from './network.ts';
import { placeOf } from './network.ts';

export interface Forces {
  /** Three by frame: what members and springs pull with, which a support or motion must hold [N, N, N·mm]. */
  readonly atFrames: Float64Array;
  /** Largest force or moment over scale that nothing holds, over the largest in the network [-]. */
  readonly residual: number;
  /** Σ force × movement by share of every driven direction. */
  readonly effort: number;
  /** Strain energy of members and springs [N·mm]. */
  readonly energy: number;
}

/**
 * Forces of a state from the stresses that it carries. Every room's `forces` is left holding the forces of its run on
 * its nodes.
 *
 * @param network - the network [-]
 * @param state - an equilibrium [-]
 * @returns forces [N, N·mm], out-of-balance share [-], effort, energy [N·mm]
 */
export function forcesOf(network: Network, state: State): Forces {
  const { runs, rooms, rule, frames, scale } = network;
  const atFrames = new Float64Array(3 * frames.count);
  let [largest, loose, energy] = [0, 0, 0];
  runs.forEach((run, r) => {
    const { forces } = rooms[r]!;
    runForce(rule, run, state.nodes[r]!, state.stress[r]!, forces);
    const last = 3 * (run.nodes - 1);
    for (let i = 3; i < last; i += 1) loose = Math.max(loose, Math.abs(forces[i]!) / (i % 3 === 2 ? scale : 1));
    gatherEnd(network, state, atFrames, run.ends[0].frame, forces, 0, state.nodes[r]!);
    gatherEnd(network, state, atFrames, run.ends[1].frame, forces, last, state.nodes[r]!);
    for (let i = 0; i < 6; i += 1) {
      const force = forces[i < 3 ? i : last + i - 3]!;
      largest = Math.max(largest, Math.abs(force) / (i % 3 === 2 ? scale : 1));
    }
    energy += storedIn(network, r, state.stress[r]!);
  });
  energy += pullSprings(network, state, atFrames);
  const effort = frames.isMoved ? atFrames.reduce((sum, force, i) => sum + force * frames.rate[i]!, 0) : 0;
  const reduced = new Float64Array(frames.unknowns);
  for (let i = 0; i < 3 * frames.count; i += 1) {
    const unknown = frames.unknown[i]!;
    const load = loadAt(network, state, i);
    if (unknown >= 0) {
      const share = (frames.factor[i]! * (atFrames[i]! - load)) / (i % 3 === 2 ? scale : 1);
      reduced[unknown] = reduced[unknown]! + share;
    }
    // Where springs alone resist, no member carries anything to weigh against.
    const felt = Math.max(Math.abs(load), Math.abs(atFrames[i]!));
    largest = Math.max(largest, felt / (i % 3 === 2 ? scale : 1));
  }
  for (const force of reduced) loose = Math.max(loose, Math.abs(force));
  return {
    atFrames,
    residual: largest > 0 ? loose / largest : 0,
    effort: frames.isMoved ? effort : state.share * frames.drive,
    energy,
  };
}

function gatherEnd(
  network: Network,
  state: State,
  atFrames: Float64Array,
  frame: number,
  forces: Float64Array,
  at: number,
  nodes: Float64Array,
): void {
  const [fx, fy, moment] = [forces[at]!, forces[at + 1]!, forces[at + 2]!];
  const slot = 3 * frame;
  const [ax, ay] = [nodes[at]! - placeOf(network, state, slot), nodes[at + 1]! - placeOf(network, state, slot + 1)];
  atFrames[slot] = atFrames[slot]! + fx;
  atFrames[slot + 1] = atFrames[slot + 1]! + fy;
  atFrames[slot + 2] = atFrames[slot + 2]! + moment + ax * fy - ay * fx;
}

function storedIn({ runs, rule }: Network, r: number, stress: Float64Array): number {
  const run = runs[r]!;
  let energy = 0;
  for (let point = 0; point < run.elements * rule.degree; point += 1) {
    const [n, v, m] = [stress[3 * point]!, stress[3 * point + 1]!, stress[3 * point + 2]!];
    const density = (n * n) / run.axial[point]! + (v * v) / run.shear[point]! + (m * m) / run.bending[point]!;
    energy += 0.5 * density * run.jacobian[point]! * rule.weights[point % rule.degree]!;
  }
  return energy;
}

function pullSprings(network: Network, state: State, atFrames: Float64Array): number {
  const { frames } = network;
  const moved = (slot: number) => placeOf(network, state, slot) - frames.home[slot]!;
  let energy = 0;
  for (const { from, to, stiffness } of frames.springs) {
    const stretch = moved(from) - (to < 0 ? 0 : moved(to));
    energy += 0.5 * stiffness * stretch * stretch;
    atFrames[from] = atFrames[from]! + stiffness * stretch;
    if (to >= 0) atFrames[to] = atFrames[to]! - stiffness * stretch;
  }
  return energy;
}

/** The load on a frame direction at the present share and, where it follows, turn [N or N·mm]. */
function loadAt(network: Network, state: State, slot: number): number {
  const { frames } = network;
  const frame = Math.floor(slot / 3);
  const direction = slot % 3;
  const [x, y] = [frames.load[3 * frame]!, frames.load[3 * frame + 1]!];
  if (direction === 2 || frames.follower[frame] !== 1) return state.share * frames.load[slot]!;
  const turn = placeOf(network, state, 3 * frame + 2);
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  return state.share * (direction === 0 ? c * x - s * y : s * x + c * y);
}
