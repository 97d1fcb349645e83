/** Carrying a state from one mesh of a network over to a coarser one of the same network. */
import { advanceStress } from './element.ts';
import { pinEnds } from './ends.ts';
import { reduce, reducedFor } from './equilibrium.ts';
import type { Network, State } from './network.ts';
import { lagrange } from './rule.ts';

/**
 * The same state on a mesh with half as many elements; not yet in equilibrium there.
 *
 * @param fine - network with twice as many elements in every run [-]
 * @param state - an equilibrium of it [-]
 * @param coarse - the same network with half as many [-]
 * @returns a start for Newton's method
 */
export function toCoarse(fine: Network, state: State, coarse: Network): State {
  const moved: State = {
    share: state.share,
    unknowns: state.unknowns.slice(),
    nodes: coarse.runs.map((run, r) => sampled(fine, state.nodes[r]!, run.nodes)),
    stress: coarse.runs.map((run) => new Float64Array(3 * run.elements * coarse.rule.degree)),
  };
  coarse.runs.forEach((run, r) => pinEnds(coarse, moved, run, moved.nodes[r]!));
  // Setting up the equations once leaves the strains of these places behind, from which the stresses follow.
  reduce(coarse, moved, reducedFor(coarse));
  coarse.runs.forEach((run, r) => {
    const room = coarse.rooms[r]!;
    room.step.fill(0);
    advanceStress(coarse.rule, run, room.step, room.kept, moved.stress[r]!);
  });
  return moved;
}

/** The fine polynomials at the places of the coarse nodes. */
function sampled({ rule }: Network, nodes: Float64Array, count: number): Float64Array {
  const { degree } = rule;
  const result = new Float64Array(3 * count);
  for (let i = 0; i < count; i += 1) {
    const element = Math.min(Math.floor(i / degree), (count - 1) / degree - 1);
    const place = ((rule.nodes[i - element * degree]! + 1) / 2) * 2;
    const half = place < 1 ? 0 : 1;
    const { value } = lagrange(rule.nodes, 2 * (place - half) - 1);
    const first = (2 * element + half) * degree;
    for (let d = 0; d < 3; d += 1) {
      result[3 * i + d] = value.reduce((sum, v, a) => sum + v * nodes[3 * (first + a) + d]!, 0);
    }
  }
  return result;
}
