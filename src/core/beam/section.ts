import type { Mm, MPa } from '../units.ts';

/** Share of a rectangle's area that carries shear: 5/6 for a parabolic shear stress. Standard texts, from memory. */
const SHEAR_SHARE = 5 / 6;

/** Stiffness of a rectangular section against stretch EA [N], shear GA [N] and bending EI [N·mm²]. */
export interface SectionStiffness {
  readonly axial: number;
  readonly shear: number;
  readonly bending: number;
}

/**
 * Stiffness of a rectangular section in the plane of bending.
 *
 *     EA = E·b·t,   GA = (5/6)·E/(2(1 + ν))·b·t,   EI = E·b·t³/12 × width ratio
 *
 * @param thickness - t in the plane [mm], > 0
 * @param width - b out of the plane [mm], > 0
 * @param modulus - E [MPa], > 0
 * @param poisson - ν [-], 0 to 0.5
 * @param widthRatio - 1 for a narrow strip to 1/(1 − ν²) for a wide one [-]
 * @returns stiffnesses [N], [N], [N·mm²]
 *
 * Source: plane-bending.
 * @example sectionStiffness(1, 12, 1000, 0.25, 1).bending // → 1000
 */
export function sectionStiffness(
  thickness: Mm,
  width: Mm,
  modulus: MPa,
  poisson: number,
  widthRatio: number,
): SectionStiffness {
  const axial = modulus * width * thickness;
  return {
    axial,
    shear: (SHEAR_SHARE * axial) / (2 * (1 + poisson)),
    bending: ((axial * thickness * thickness) / 12) * widthRatio,
  };
}
