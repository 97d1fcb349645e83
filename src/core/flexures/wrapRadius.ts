import type { Mm } from '../units.ts';

/**
 * Radius of the curve that a panel follows when all its cells bend alike: that of the circle round which their
 * middles lie, one pitch apart.
 *
 *     R = p·n/θ
 *
 * @param pitch - length of a cell along the panel p [mm], > 0
 * @param bends - places that bend n [-], ≥ 1
 * @param amount - angle of the whole wrap θ [rad], > 0
 * @returns radius of the middle of the panel [mm]
 *
 * Source: plane-bending.
 * @example wrapRadius(8, 12, radians(180)) // → 30.5577
 */
export function wrapRadius(pitch: Mm, bends: number, amount: number): Mm {
  return (pitch * bends) / amount;
}
