/** A step of the whole network, from that of its frames back into its runs. */
import { advanceStress } from './element.ts';
import { restore } from './eliminate.ts';
import { armsOf, pinEnds, type Arms } from './ends.ts';
import type { Run } from './mesh.ts';
import type { Network, RunRoom, State } from './network.ts';

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
  const before = runs.map((run) => armsOf(network, state, run));
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
  [ax, ay, bx, by]: Arms,
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
