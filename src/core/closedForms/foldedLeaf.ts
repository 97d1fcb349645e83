import { asRad, type Mm, type MPa, type Rad } from '../units.ts';
import { guidedStiffness, guidedStrain } from './guidedLeaf.ts';
import { bendingStrain } from './leafBending.ts';
import { leafStiffness } from './leafTorque.ts';

/**
 * Torque per angle of a leaf folded to and fro, its runs joined by stiff turns.
 *
 *     K = E·I/(n·L)
 *
 * Every run carries the whole moment, so the angle is shared alike. The turns count as rigid.
 *
 * @param modulus - E [MPa], > 0, times the width ratio where the leaf is wide
 * @param width - b, out of the bending plane [mm], > 0
 * @param thickness - t [mm], > 0
 * @param length - L of one run [mm], > 0
 * @param runs - n, one behind the other [-], ≥ 1
 * @returns stiffness [N·mm/rad], > 0
 *
 * Source: plane-bending.
 * @example foldedTurnStiffness(1200, 20, 0.42, 5, 4) // → 7.4088
 */
export function foldedTurnStiffness(modulus: MPa, width: Mm, thickness: Mm, length: Mm, runs: number): number {
  return leafStiffness(modulus, width, thickness, length, 1) / runs;
}

/**
 * Outer-fibre strain of a folded leaf that is turned.
 *
 *     ε = t·|θ|/(2·n·L)
 *
 * @param thickness - t [mm], > 0
 * @param length - L of one run [mm], > 0
 * @param runs - n, one behind the other [-], ≥ 1
 * @param angle - θ of one end against the other [rad], either sign
 * @returns strain as a fraction [-], ≥ 0
 *
 * Source: plane-bending.
 * @example foldedTurnStrain(0.84, 10, 5, radians(90)) // → 0.0131946891
 */
export function foldedTurnStrain(thickness: Mm, length: Mm, runs: number, angle: Rad): number {
  return bendingStrain(thickness, length, asRad(angle / runs));
}

/**
 * Force per travel of a folded leaf that is pulled across its runs, for little travel.
 *
 *     k = 12·E·I/(n·L³)
 *
 * Every run is a leaf with parallel ends, whose turns count as rigid: they bend alternately up and down and do not
 * turn as long as the pull passes through the middle of the runs.
 *
 * @param modulus - E [MPa], > 0, times the width ratio where the leaf is wide
 * @param width - b, out of the bending plane [mm], > 0
 * @param thickness - t [mm], > 0
 * @param length - L of one run [mm], > 0
 * @param runs - n, one behind the other [-], ≥ 1
 * @returns stiffness [N/mm], > 0
 *
 * Source: small-deflection.
 * @example foldedPullStiffness(1500, 8, 0.42, 15, 4) // → 0.065856
 */
export function foldedPullStiffness(modulus: MPa, width: Mm, thickness: Mm, length: Mm, runs: number): number {
  return guidedStiffness(modulus, width, thickness, length) / runs;
}

/**
 * Outer-fibre strain of a folded leaf that is pulled across its runs, for little travel.
 *
 *     ε = 3·t·δ/(n·L²)
 *
 * @param thickness - t [mm], > 0
 * @param length - L of one run [mm], > 0
 * @param runs - n, one behind the other [-], ≥ 1
 * @param travel - δ of one end against the other [mm], either sign
 * @returns strain as a fraction [-], ≥ 0
 *
 * Source: small-deflection.
 * @example foldedPullStrain(1.26, 40, 5, 25) // → 0.0118125
 */
export function foldedPullStrain(thickness: Mm, length: Mm, runs: number, travel: Mm): number {
  return guidedStrain(thickness, length, travel / runs);
}
