import { asRad, type Mm, type MPa, type Rad } from '../units.ts';
import { twistStiffness, twistStrain } from './torsion.ts';

/**
 * Torque per angle of a panel with staggered slits, bent about an axis along the slits.
 *
 *     K = m·G·J/(ℓ·n)
 *
 * The material between two slits is twisted between one bridge and the next, over the length ℓ by which slits of
 * neighbouring rows overlap; m such strips share the moment side by side, n one behind the other share the angle.
 * The bridges count as rigid and the strips as not bent, which makes the panel stiffer than it is.
 *
 * @param shearModulus - G [MPa], > 0
 * @param strip - width of the material between two slits [mm], > 0
 * @param thickness - of the panel [mm], > 0
 * @param overlap - ℓ, twisted length between two bridges [mm], > 0
 * @param sideBySide - m, strips along the bending axis [-], ≥ 1
 * @param inRow - n, strips one behind the other across it [-], ≥ 1
 * @returns stiffness [N·mm/rad], > 0
 *
 * Source: saint-venant-torsion.
 * @example slitPanelStiffness(750, 6, 0.84, 15, 4, 2) // → 108.0813712
 */
export function slitPanelStiffness(
  shearModulus: MPa,
  strip: Mm,
  thickness: Mm,
  overlap: Mm,
  sideBySide: number,
  inRow: number,
): number {
  return (sideBySide * twistStiffness(shearModulus, strip, thickness, overlap)) / inRow;
}

/**
 * Largest shear strain of a panel with staggered slits, bent about an axis along the slits.
 *
 *     γ = k·t·|θ|/(n·ℓ),   t the shorter side of the strip's section
 *
 * @param strip - width of the material between two slits [mm], > 0
 * @param thickness - of the panel [mm], > 0
 * @param overlap - ℓ, twisted length between two bridges [mm], > 0
 * @param inRow - n, strips one behind the other across the bending axis [-], ≥ 1
 * @param angle - θ by which the whole panel is bent [rad], either sign
 * @returns engineering shear strain as a fraction [-], ≥ 0
 *
 * Source: saint-venant-torsion.
 * @example slitPanelStrain(6, 0.84, 15, 10, radians(90)) // → 0.0087962683
 */
export function slitPanelStrain(strip: Mm, thickness: Mm, overlap: Mm, inRow: number, angle: Rad): number {
  return twistStrain(strip, thickness, overlap, asRad(angle / inRow));
}
