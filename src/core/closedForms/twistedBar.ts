import { torsionOfRectangle } from '../numeric/rectangleTorsion.ts';
import type { Mm } from '../units.ts';

/** A bar of rectangular section held at both ends and twisted. */
export interface TwistedBar {
  /** Torque per angle and per MPa of the shear modulus, J/L [mm³/rad]. */
  readonly stiffness: number;
  /** Largest engineering shear strain per angle [1/rad], in the middle of the longer side of the section. */
  readonly shear: number;
}

/**
 * A bar of rectangular section twisted about its length.
 *
 *     T/(G·θ) = c1·b·t³/L,   γ/θ = k·t/L,   b the longer side, t the shorter
 *
 * The section is free to warp. Ends that hold it flat stiffen a bar shorter than a few widths, which is left out.
 *
 * @param one - one side of the section [mm], > 0
 * @param other - the other side [mm], > 0
 * @param length - length L that twists [mm], > 0
 * @returns stiffness [mm³/rad] and shear strain [1/rad]
 *
 * Source: saint-venant-torsion.
 * @example twistedBar(6, 0.84, 15).shear // → 0.0559988
 */
export function twistedBar(one: Mm, other: Mm, length: Mm): TwistedBar {
  const [thick, wide] = [Math.min(one, other), Math.max(one, other)];
  const { c1, k } = torsionOfRectangle(wide / thick);
  return { stiffness: (c1 * wide * thick ** 3) / length, shear: (k * thick) / length };
}

/**
 * The plain tensile strain that distorts as much as a shear strain, at unchanged volume.
 *
 *     ε = γ/√3
 *
 * What a filament stands is known in tension only; that equal distortion does equal harm (von Mises) is an assumption.
 *
 * @param shear - engineering shear strain γ [-]
 * @returns strain as a fraction [-]
 *
 * Source: saint-venant-torsion.
 * @example equalDistortion(0.03) // → 0.01732051
 */
export function equalDistortion(shear: number): number {
  return shear / Math.sqrt(3);
}
