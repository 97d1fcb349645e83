import type { Mm, MPa, Rad } from '../units.ts';

/**
 * Where two crossed leaves must cross for their pad not to wander sideways at small angles.
 *
 *     λ = (1 ∓ √5/3)/2, the zeros of 9λ² − 9λ + 1
 */
export const NEUTRAL_CROSSINGS = { near: (1 - Math.sqrt(5) / 3) / 2, far: (1 + Math.sqrt(5) / 3) / 2 } as const;

/**
 * Torque per angle of two equal crossed leaves under a pure moment, at small angles.
 *
 *     K = (8·E·I/L)·(1 − 3λ + 3λ²)
 *
 * Independent of the angle between the leaves; least, 2·E·I/L, where they cross at mid-length. The exact moment is
 * 0.5 % more at 10° and 4.4 % more at 30° for leaves at right angles that cross at mid-length.
 *
 * @param modulus - E [MPa], > 0, times the width ratio where the leaves are wide
 * @param width - b of one leaf, out of the bending plane [mm], > 0
 * @param thickness - t [mm], > 0
 * @param length - L of one leaf [mm], > 0
 * @param crossing - λ, where they cross, as a share of L from the fixed clamps [-], 0 to 1
 * @returns stiffness of the pair [N·mm/rad], > 0
 *
 * Source: crossed-leaves.
 * @example crossedLeavesStiffness(1200, 20, 0.42, 5, 0.5) // → 59.2704
 */
export function crossedLeavesStiffness(modulus: MPa, width: Mm, thickness: Mm, length: Mm, crossing: number): number {
  return (2 * modulus * width * thickness ** 3 * (1 - 3 * crossing + 3 * crossing ** 2)) / (3 * length);
}

/**
 * Largest moment along a crossed leaf, over that of a leaf bent evenly by the same angle.
 *
 *     M·L/(E·I·θ) = max(|4 − 6μ|, |2 − 6μ|),   μ = 1 − λ
 *
 * @param crossing - λ, where they cross, as a share of L from the fixed clamps [-], 0 to 1
 * @returns ratio [-], 1 at mid-length to 4 at either end
 *
 * Source: crossed-leaves.
 * @example crossedLeavesMoment(0.25) // → 2.5
 */
export function crossedLeavesMoment(crossing: number): number {
  const past = 1 - crossing;
  return Math.max(Math.abs(4 - 6 * past), Math.abs(2 - 6 * past));
}

/**
 * Largest outer-fibre strain of two equal crossed leaves, at small angles.
 *
 *     ε = (t/2)·(|θ|/L)·max(|4 − 6μ|, |2 − 6μ|)
 *
 * Bending alone, under a pure moment on a pad that is free to wander; a pad held on a bearing also squeezes the leaves.
 *
 * @param thickness - t [mm], > 0
 * @param length - L of one leaf [mm], > 0
 * @param angle - rotation θ of the pad [rad], either sign
 * @param crossing - λ, where they cross, as a share of L from the fixed clamps [-], 0 to 1
 * @returns strain as a fraction [-], ≥ 0
 *
 * Source: crossed-leaves.
 * @example crossedLeavesStrain(0.84, 10, radians(30), 0.25) // → 0.0549778714
 */
export function crossedLeavesStrain(thickness: Mm, length: Mm, angle: Rad, crossing: number): number {
  return ((thickness * Math.abs(angle)) / (2 * length)) * crossedLeavesMoment(crossing);
}

/**
 * How far the centre of rotation of a crossed-leaf pad wanders along the line of symmetry, at small angles.
 *
 *     d = −(L·θ²/(15·cos φ))·(9λ² − 9λ + 1)
 *
 * @param length - L of one leaf [mm], > 0
 * @param angle - rotation θ of the pad [rad], either sign
 * @param crossing - λ, where they cross, as a share of L from the fixed clamps [-], 0 to 1
 * @param halfAngle - φ between a leaf and the line of symmetry [rad], 0 to under π/2
 * @returns shift [mm], positive away from the fixed clamps
 *
 * Source: crossed-leaves.
 * @example crossedLeavesShift(20, radians(10), 0.5, radians(45)) // → 0.07179901
 */
export function crossedLeavesShift(length: Mm, angle: Rad, crossing: number, halfAngle: Rad): Mm {
  return -(length * angle ** 2 * (9 * crossing ** 2 - 9 * crossing + 1)) / (15 * Math.cos(halfAngle));
}
