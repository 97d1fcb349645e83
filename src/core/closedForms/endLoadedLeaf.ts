import { carlsonRD, carlsonRF } from '../numeric/elliptic.ts';
import { findRoot } from '../numeric/roots.ts';
import { asRad, type Mm, type Rad } from '../units.ts';

/** A leaf clamped at one end and loaded by a force at the other, in figures without dimension. */
export interface EndLoadedLeaf {
  /** α = P·L²/(E·I). */
  readonly load: number;
  /** Travel of the tip across the undeformed leaf, w/L. */
  readonly travel: number;
  /** Travel of the tip along the undeformed leaf towards the clamp, u/L. */
  readonly approach: number;
  /** Rotation of the tip θ. */
  readonly tipAngle: Rad;
  /** Moment at the clamp, M·L/(E·I). */
  readonly rootMoment: number;
}

/** The leaf at rest. */
export const STRAIGHT: Omit<EndLoadedLeaf, 'load'> = { travel: 0, approach: 0, tipAngle: asRad(0), rootMoment: 0 };

/** Past this travel the force is over ten thousand times what bends the leaf by its own length in linear theory. */
const FARTHEST = 0.995;

/**
 * The force across a leaf that moves its tip by a given travel, with the shape and root moment.
 *
 * The inverse of `endLoadedLeaf` (`leafUnderForce.ts`) for a force across the undeformed leaf; for little travel α = 3·w/L.
 *
 * @param travel - w/L of the tip across the undeformed leaf [-], 0 to 0.995
 * @returns load, approach, tip angle and root moment [-]
 *
 * Source: end-loaded-elastica.
 * @example endLoadAtTravel(0.3) // → { load: 0.993097806, approach: 0.0557697183, rootMoment: 0.937713021 }
 */
export function endLoadAtTravel(travel: number): EndLoadedLeaf {
  if (!(travel >= 0 && travel <= FARTHEST)) {
    throw new RangeError(`a travel from 0 to ${FARTHEST} of the length, not ${travel}`);
  }
  if (travel === 0) return { load: 0, ...STRAIGHT };
  const across = asRad(Math.PI / 2);
  const excess = (x: number) => (x === 0 ? 0 : shapeAt(x, across).travel) - travel;
  // 1 − w/L is 1.2/√α and less in a long pull, and x stays below √α.
  const found = findRoot(excess, 0, 1.5 + 1.5 / (1 - travel), 0);
  if (!found.ok) throw new RangeError(`no shape for a travel of ${travel}`);
  return { ...shapeAt(found.value.value, across), travel };
}

export interface Integrals {
  readonly rootLoad: number;
  readonly tipAngle: number;
  /** k·cos φ₀. */
  readonly lever: number;
  /** E(k) − E(φ₀, k). */
  readonly second: number;
}

/**
 * The integrals at tip angle θ = ψ·(1 − 1/cosh x); in x they are smooth from rest to the longest pull.
 * K − F(φ₀) = F(χ) and E − E(φ₀) = E(χ) − k²·sin φ₀·sin χ with sin χ = cos φ₀/sin(ψ/2), which keep their figures
 * where K and F nearly cancel.
 */
export function integrals(x: number, direction: number): Integrals {
  const left = direction / Math.cosh(x);
  const tipAngle = (direction * 2 * Math.sinh(x / 2) ** 2) / Math.cosh(x);
  const lever = Math.sqrt(Math.sin((direction + left) / 2) * Math.sin(tipAngle / 2));
  const [k, half] = [Math.cos(left / 2), direction / 2];
  const sine = lever / (k * Math.sin(half));
  const cosine = (Math.cos(half) * Math.sin(left / 2)) / (k * Math.sin(half));
  const delta = Math.sin(left / 2) / Math.sin(half);
  const first = sine * carlsonRF(cosine ** 2, delta ** 2, 1);
  const drop = ((k * k * sine ** 3) / 3) * carlsonRD(cosine ** 2, delta ** 2, 1);
  return { rootLoad: first, tipAngle, lever, second: first - drop - k * Math.cos(half) * sine };
}

/** Figures of the shape at a tip angle, told by x as in `integrals`. */
export function shapeAt(x: number, direction: number): EndLoadedLeaf {
  const { rootLoad, tipAngle, lever, second } = integrals(x, direction);
  const along = 1 - (2 * second) / rootLoad;
  const across = (2 * lever) / rootLoad;
  const [c, s] = [Math.cos(direction), Math.sin(direction)];
  return {
    load: rootLoad * rootLoad,
    travel: along * s - across * c,
    approach: 1 - along * c - across * s,
    tipAngle: asRad(tipAngle),
    rootMoment: 2 * rootLoad * lever,
  };
}

/**
 * Largest outer-fibre strain of a leaf from its largest moment, which an end force makes at the clamp.
 *
 *     ε = (t/2L)·M·L/(E·I)
 *
 * Bending alone; the force along the leaf adds P/(E·b·t), small for a thin leaf.
 *
 * @param thickness - t [mm], > 0
 * @param length - flexing length L [mm], > 0
 * @param moment - M·L/(E·I), either sign [-]
 * @returns strain as a fraction [-], ≥ 0
 *
 * Source: plane-bending.
 * @example strainOfMoment(0.84, 20, endLoadAtTravel(0.3).rootMoment) // → 0.019691973
 */
export function strainOfMoment(thickness: Mm, length: Mm, moment: number): number {
  return (thickness * Math.abs(moment)) / (2 * length);
}
