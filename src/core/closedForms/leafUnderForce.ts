/** The other way round than `endLoadedLeaf.ts`, from the force to the travel: apart, as the first screen does not ask it. */
import { findRoot } from '../numeric/roots.ts';
import type { Rad } from '../units.ts';
import { integrals, shapeAt, STRAIGHT, type EndLoadedLeaf } from './endLoadedLeaf.ts';

/**
 * Shape and root moment of a leaf clamped at one end and bent by a dead force at the other, at any size of bending.
 *
 *     √α = K(k) − F(φ₀, k),   k = cos((ψ − θ)/2),   sin φ₀ = cos(ψ/2)/k
 *     a = 1 − 2·[E(k) − E(φ₀, k)]/√α,   c = 2·k·cos φ₀/√α
 *     w/L = a·sin ψ − c·cos ψ,   u/L = 1 − a·cos ψ − c·sin ψ,   M·L/(E·I) = 2·√α·k·cos φ₀
 *
 * Exact for a leaf that neither stretches nor shears and has no inflection (the first of several shapes, where the force
 * has a compressive part). A force straight along the leaf bends it only in compression and above α = π²/4.
 *
 * @param load - α = P·L²/(E·I) [-], ≥ 0
 * @param direction - ψ from the leaf, pointing from clamp to tip, to the force, which keeps its direction [rad], 0 to π:
 *   0 pure tension, π/2 across the leaf, π pure compression
 * @returns travel, approach, tip angle and root moment [-]; bending is towards the side to which the force points
 *
 * Source: end-loaded-elastica.
 * @example endLoadedLeaf(2, radians(135)) // → { travel: 0.5830784316, approach: 0.2405027631, rootMoment: 1.898688719 }
 */
export function endLoadedLeaf(load: number, direction: Rad): EndLoadedLeaf {
  if (!(load >= 0)) throw new RangeError(`a load of 0 or more is needed, not ${load}`);
  if (!(direction >= 0 && direction <= Math.PI)) throw new RangeError(`a direction from 0 to π, not ${direction}`);
  const root = Math.sqrt(load);
  const excess = (x: number) => (x === 0 ? limitAtRest(direction) : integrals(x, direction).rootLoad) - root;
  if (load === 0 || direction === 0 || excess(0) >= 0) return { load, ...STRAIGHT };
  // √α is never less than x: cos δ − cos x ≤ (x² − δ²)/2 under the integral makes it an inverse hyperbolic cosine.
  const found = findRoot(excess, 0, root * (1 + 1e-12), 0);
  if (!found.ok) throw new RangeError(`no shape for a load of ${load} at ${direction}`);
  return { ...shapeAt(found.value.value, direction), load };
}

/** √α that the straight leaf can carry before it bends: none, but for the column. */
function limitAtRest(direction: number): number {
  return direction === Math.PI ? Math.PI / 2 : 0;
}
