/** Newton's method on the reduced equations, at a held share or along a plane across the path. */
import { advance } from './advance.ts';
import { eliminatedOf, reduce, type Reduced } from './equilibrium.ts';
import { solveInPlace } from './dense.ts';
import type { Network, State } from './network.ts';

/** A plane n·q + m·share = c in which the next state is looked for. */
export interface Plane {
  readonly normal: Float64Array;
  readonly byShare: number;
  readonly value: number;
}

export interface Corrected {
  readonly converged: boolean;
  readonly iterations: number;
}

/** Beyond this a step says nothing about where the equilibrium is: the start was too far away. */
const LARGEST_STEP = 1.5;
const MOST_ITERATIONS = 12;

/**
 * Brings a state to equilibrium.
 *
 * A last step smaller than `tolerance` leaves an error of about its square, because Newton's method doubles the right
 * figures with every step.
 *
 * @param network - the network [-]
 * @param state - the start [mm, rad]; replaced by the equilibrium
 * @param reduced - left as it was before the last step [N, mm, rad]
 * @param tolerance - largest last step [-], of turns [rad] and of movements over the network's scale
 * @param plane - where the share is not held: the plane to stay in [-]
 * @returns whether it converged, and how many times the equations were set up [-]
 */
export function correct(network: Network, state: State, reduced: Reduced, tolerance: number, plane?: Plane): Corrected {
  let before = Number.POSITIVE_INFINITY;
  for (let iteration = 1; iteration <= MOST_ITERATIONS; iteration += 1) {
    reduce(network, state, reduced);
    const found = plane ? stepInPlane(state, reduced, plane) : stepAtShare(reduced);
    if (!found) return { converged: false, iterations: iteration };
    const size = advance(network, state, found.step, found.share, 1);
    if (!(size < LARGEST_STEP)) return { converged: false, iterations: iteration };
    if (size < tolerance) return { converged: true, iterations: iteration };
    // Three growing steps in a row after the first few mean that it is running away.
    if (iteration > 5 && size > 4 * before) return { converged: false, iterations: iteration };
    before = size;
  }
  return { converged: false, iterations: MOST_ITERATIONS };
}

interface Step {
  readonly step: Float64Array;
  readonly share: number;
}

function stepAtShare(reduced: Reduced): Step | undefined {
  const step = reduced.residual.map((r) => -r);
  return eliminatedOf(reduced).solve(step) ? { step, share: 0 } : undefined;
}

/** The share is one more unknown and the plane one more equation; at a limit point this system is still regular. */
function stepInPlane(state: State, reduced: Reduced, plane: Plane): Step | undefined {
  const n = reduced.residual.length;
  const side = n + 1;
  const matrix = new Float64Array(side * side);
  const right = new Float64Array(side);
  for (let i = 0; i < n; i += 1) {
    for (let j = 0; j < n; j += 1) matrix[i * side + j] = reduced.tangent[i * n + j]!;
    matrix[i * side + n] = reduced.byShare[i]!;
    matrix[n * side + i] = plane.normal[i]!;
    right[i] = -reduced.residual[i]!;
  }
  matrix[n * side + n] = plane.byShare;
  right[n] = plane.value - plane.byShare * state.share - dot(plane.normal, state.unknowns);
  if (!solveInPlace(matrix, right)) return undefined;
  return { step: right.slice(0, n), share: right.at(-1) ?? 0 };
}

export function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i += 1) sum += a[i]! * b[i]!;
  return sum;
}
