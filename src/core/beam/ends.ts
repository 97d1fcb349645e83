/** Where the ends of runs are: on rigid arms of the frames that carry them. */
import type { Run } from './mesh.ts';
import { placeOf, type Network, type State } from './network.ts';

/** x and y from the frame to the run's first end, then to its second [mm]. */
export type Arms = readonly [number, number, number, number];

/** Rotated places of a run's ends seen from their frames [mm]. */
export function armsOf(network: Network, state: State, run: Run): Arms {
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

/** Puts the ends exactly where their frames carry them: turned arms do not move along their tangents. */
export function pinEnds(network: Network, state: State, run: Run, nodes: Float64Array): void {
  const [ax, ay, bx, by] = armsOf(network, state, run);
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
