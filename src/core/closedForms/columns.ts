import type { Mm, MPa } from '../units.ts';

/**
 * Length of the pinned column that buckles at the same force, over the length of the column itself.
 *
 * Clamped–pinned is π over the first root of tan x = x.
 */
export const BUCKLING_FACTORS = {
  clampedClamped: 0.5,
  clampedPinned: 0.6991556596428412,
  clampedGuided: 1,
  pinnedPinned: 1,
  clampedFree: 2,
} as const;

/**
 * Force along a straight leaf at which it buckles.
 *
 *     P = π²·E·I/(K·L)²
 *
 * @param modulus - E [MPa], > 0, times the width ratio where the leaf is wide
 * @param width - b, out of the buckling plane [mm], > 0
 * @param thickness - t [mm], > 0
 * @param length - L [mm], > 0
 * @param factor - K from `BUCKLING_FACTORS` [-], > 0
 * @returns force [N], > 0
 *
 * Source: euler-column.
 * @example bucklingForce(2000, 12, 1, 10, 2) // → 49.348022
 */
export function bucklingForce(modulus: MPa, width: Mm, thickness: Mm, length: Mm, factor: number): number {
  return (Math.PI ** 2 * modulus * width * thickness ** 3) / (12 * (factor * length) ** 2);
}

/**
 * Compressive strain at which a straight leaf buckles.
 *
 *     ε = π²·t²/(12·K²·L²)
 *
 * @param thickness - t [mm], > 0
 * @param length - L [mm], > 0
 * @param factor - K from `BUCKLING_FACTORS` [-], > 0
 * @returns strain as a fraction, compression positive [-], > 0
 *
 * Source: euler-column.
 * @example bucklingStrain(1, 1, BUCKLING_FACTORS.clampedPinned) // → 1.6825607
 */
export function bucklingStrain(thickness: Mm, length: Mm, factor: number): number {
  return (Math.PI * thickness) ** 2 / (12 * (factor * length) ** 2);
}
