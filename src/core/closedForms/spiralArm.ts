import type { Mm, MPa, Rad } from '../units.ts';
import { bendingStrain } from './leafBending.ts';
import { leafStiffness } from './leafTorque.ts';

/**
 * Length of an arm wound as a spiral of even pitch.
 *
 *     r = r₀ + a·φ,   a = |r₁ − r₀|/(2π·n)
 *     L = [ (r/2a)·√(r² + a²) + (a/2)·asinh(r/a) ]  from r₀ to r₁
 *
 * @param inner - r₀ of the mid-line [mm], ≥ 0
 * @param outer - r₁ of the mid-line [mm], ≥ 0
 * @param turns - n, need not be whole [-], > 0
 * @returns length of one arm [mm], > 0
 *
 * Source: spiral-arm.
 * @example spiralLength(3, 15, 2) // → 113.860127
 */
export function spiralLength(inner: Mm, outer: Mm, turns: number): Mm {
  const pitch = Math.abs(outer - inner) / (2 * Math.PI * turns);
  if (pitch === 0) return 2 * Math.PI * turns * inner;
  const upTo = (r: number) => (r * Math.hypot(r, pitch)) / (2 * pitch) + (pitch / 2) * Math.asinh(r / pitch);
  return Math.abs(upTo(outer) - upTo(inner));
}

/**
 * Torque per angle of a hub on spiral arms.
 *
 *     K = n·E·I/L
 *
 * Holds only for many turns, with both ends clamped and every arm bent evenly. A hub kept central on short arms is
 * stiffer and strains more: at 1.25 turns and 35° the torque is 17 % higher and the peak strain 1.66 times; at 0.9
 * turns 27 to 70 % and 1.9 to 2.3 times.
 *
 * @param modulus - E [MPa], > 0, times the width ratio where the arms are wide
 * @param width - b, out of the bending plane [mm], > 0
 * @param thickness - t [mm], > 0
 * @param length - L of one arm from `spiralLength` [mm], > 0
 * @param arms - n [-], ≥ 1
 * @returns stiffness [N·mm/rad], > 0
 *
 * Source: spiral-arm.
 * @example spiralStiffness(2000, 5, 0.84, spiralLength(3, 15, 2), 1) // → 4.33795406
 */
export function spiralStiffness(modulus: MPa, width: Mm, thickness: Mm, length: Mm, arms: number): number {
  return arms * leafStiffness(modulus, width, thickness, length, 1);
}

/**
 * Outer-fibre strain of spiral arms, on top of the curvature they were printed with, which is free of stress.
 *
 *     ε = t·|θ|/(2L)
 *
 * Holds only for many turns, as `spiralStiffness` says: with about one turn the peak is 1.7 to 2.3 times as much.
 *
 * @param thickness - t [mm], > 0; below a tenth of the inner radius, or the arm is a curved bar
 * @param length - L of one arm from `spiralLength` [mm], > 0
 * @param angle - rotation θ of the hub [rad], either sign
 * @returns strain as a fraction [-], ≥ 0
 *
 * Source: spiral-arm.
 * @example spiralStrain(0.84, spiralLength(3, 15, 2), radians(90)) // → 0.00579425365
 */
export function spiralStrain(thickness: Mm, length: Mm, angle: Rad): number {
  return bendingStrain(thickness, length, angle);
}
