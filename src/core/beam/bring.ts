/** Bringing a state that belongs to a neighbour to equilibrium, or finding that it lies too far away. */
import { advance } from './advance.ts';
import { eliminatedOf, reduce } from './equilibrium.ts';
import { spend, type Walker } from './walker.ts';

/** A neighbour lies no further than this step: turns in rad, movements over scale. */
const NEIGHBOUR = 0.5;
/**
 * Steps at least halve from one to the next; where they do not, there is more than one state near by, or none (the test
 * by which P. Deuflhard follows paths, 2004, from memory).
 */
const SHRINKS = 0.5;
const MOST_STEPS = 8;

/**
 * Newton's method as long as it leaves no doubt that it comes to the very state that the start belongs to.
 *
 * @param walker - on the network, at the start [-]; left at the equilibrium
 * @returns false where the start lies too far away
 */
export function bring(walker: Walker): boolean {
  const { network, state, reduced } = walker;
  let before = NEIGHBOUR / SHRINKS;
  for (let count = 1; count <= MOST_STEPS; count += 1) {
    reduce(network, state, reduced);
    spend(walker, 1);
    const step = reduced.residual.map((r) => -r);
    if (!eliminatedOf(reduced).solve(step)) return false;
    const size = advance(network, state, step, 0, 1);
    if (!(size < SHRINKS * before)) return false;
    if (size < walker.tolerance) return true;
    before = size;
  }
  return false;
}
