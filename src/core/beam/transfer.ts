/** Carrying a state from one mesh of a network over to another of the same network. */
import { advanceStress } from './element.ts';
import { pinEnds } from './ends.ts';
import { reduce, reducedFor } from './equilibrium.ts';
import type { Network, State } from './network.ts';
import { lagrange } from './rule.ts';

/**
 * The same state on another mesh; not yet in equilibrium there.
 *
 * @param from - network [-]
 * @param state - an equilibrium of it [-]
 * @param to - the same network with more or fewer elements [-]
 * @returns a start for Newton's method
 */
export function onMesh(from: Network, state: State, to: Network): State {
  const moved: State = {
    share: state.share,
    unknowns: state.unknowns.slice(),
    nodes: to.runs.map((run, r) => sampled(from, state.nodes[r]!, run.nodes)),
    stress: to.runs.map((run) => new Float64Array(3 * run.elements * to.rule.degree)),
  };
  to.runs.forEach((run, r) => pinEnds(to, moved, run, moved.nodes[r]!));
  // Setting up the equations once leaves the strains of these places behind, from which the stresses follow.
  reduce(to, moved, reducedFor(to));
  to.runs.forEach((run, r) => {
    const room = to.rooms[r]!;
    room.step.fill(0);
    advanceStress(to.rule, run, room.step, room.kept, moved.stress[r]!);
  });
  return moved;
}

/** The polynomials of one mesh at the places of the nodes of another, of the same degree. */
function sampled({ rule }: Network, nodes: Float64Array, count: number): Float64Array {
  const { degree } = rule;
  const [elements, wanted] = [(nodes.length / 3 - 1) / degree, (count - 1) / degree];
  const result = new Float64Array(3 * count);
  for (let i = 0; i < count; i += 1) {
    const own = Math.min(Math.floor(i / degree), wanted - 1);
    const place = ((own + (rule.nodes[i - own * degree]! + 1) / 2) / wanted) * elements;
    const element = Math.min(Math.floor(place + 1e-9), elements - 1);
    const { value } = lagrange(rule.nodes, 2 * (place - element) - 1);
    for (let d = 0; d < 3; d += 1) {
      result[3 * i + d] = value.reduce((sum, v, a) => sum + v * nodes[3 * (element * degree + a) + d]!, 0);
    }
  }
  return result;
}
