import { torsionOfRectangle } from '../numeric/rectangleTorsion.ts';
import type { Mm, MPa, Rad } from '../units.ts';

/**
 * Torque per angle of a strip that is twisted.
 *
 *     K = G·J/L,   J = c1·b·t³
 *
 * Free warping; clamped ends stiffen a short strip, which is not included.
 *
 * @param shearModulus - G [MPa], > 0
 * @param width - one side of the section [mm], > 0
 * @param thickness - the other side [mm], > 0; either may be the longer
 * @param length - twisted length L [mm], > 0
 * @returns stiffness [N·mm/rad], > 0
 *
 * Source: saint-venant-torsion.
 * @example twistStiffness(750, 6, 0.84, 15) * radians(45) // → 42.443455
 */
export function twistStiffness(shearModulus: MPa, width: Mm, thickness: Mm, length: Mm): number {
  const [long, short] = [Math.max(width, thickness), Math.min(width, thickness)];
  return (shearModulus * torsionOfRectangle(long / short).c1 * long * short ** 3) / length;
}

/**
 * Largest shear strain of a strip that is twisted, at the middle of its longer sides.
 *
 *     γ = k·t·|θ|/L,   t the shorter side
 *
 * @param width - one side of the section [mm], > 0
 * @param thickness - the other side [mm], > 0; either may be the longer
 * @param length - twisted length L [mm], > 0
 * @param angle - twist θ [rad], either sign
 * @returns engineering shear strain as a fraction [-], ≥ 0
 *
 * Source: saint-venant-torsion.
 * @example twistStrain(6, 0.84, 15, radians(45)) // → 0.043981341
 */
export function twistStrain(width: Mm, thickness: Mm, length: Mm, angle: Rad): number {
  const [long, short] = [Math.max(width, thickness), Math.min(width, thickness)];
  return (torsionOfRectangle(long / short).k * short * Math.abs(angle)) / length;
}
