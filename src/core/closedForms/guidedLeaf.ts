import { findRoot } from '../numeric/roots.ts';
import type { Mm, MPa, NMm, Rad } from '../units.ts';
import { beamColumn } from './beamColumn.ts';
import { endLoadAtTravel } from './endLoadedLeaf.ts';

/**
 * Force per travel of one leaf whose ends stay parallel, for little travel.
 *
 *     k = 12·E·I/L³,   I = b·t³/12
 *
 * Within 1 % up to a travel of about a tenth of the length where the ends are free to approach each other.
 *
 * @param modulus - E [MPa], > 0, times the width ratio where the leaf is wide
 * @param width - b, out of the bending plane [mm], > 0
 * @param thickness - t [mm], > 0
 * @param length - flexing length L [mm], > 0
 * @returns stiffness [N/mm], > 0; a stage on two leaves has twice as much
 *
 * Source: small-deflection.
 * @example guidedStiffness(1500, 8, 0.42, 15) // → 0.263424
 */
export function guidedStiffness(modulus: MPa, width: Mm, thickness: Mm, length: Mm): number {
  return (modulus * width * thickness ** 3) / length ** 3;
}

/**
 * Moment at both ends of one leaf whose ends stay parallel, for little travel.
 *
 *     M = 6·E·I·δ/L²
 *
 * @param modulus - E [MPa], > 0, times the width ratio where the leaf is wide
 * @param width - b, out of the bending plane [mm], > 0
 * @param thickness - t [mm], > 0
 * @param length - flexing length L [mm], > 0
 * @param travel - δ across the leaf [mm], either sign
 * @returns moment [N·mm], of the sign of the travel
 *
 * Source: small-deflection.
 * @example guidedMoment(1500, 8, 0.42, 15, 1) // → 1.97568
 */
export function guidedMoment(modulus: MPa, width: Mm, thickness: Mm, length: Mm, travel: Mm): NMm {
  return (guidedStiffness(modulus, width, thickness, length) * length * travel) / 2;
}

/**
 * Outer-fibre strain at the ends of a leaf whose ends stay parallel, for little travel.
 *
 *     ε = 3·t·δ/L²
 *
 * @param thickness - t [mm], > 0
 * @param length - flexing length L [mm], > 0
 * @param travel - δ across the leaf [mm], either sign
 * @returns strain as a fraction [-], ≥ 0
 *
 * Source: small-deflection.
 * @example guidedStrain(1.26, 40, 5) // → 0.0118125
 */
export function guidedStrain(thickness: Mm, length: Mm, travel: Mm): number {
  return (3 * thickness * Math.abs(travel)) / length ** 2;
}

/**
 * How much nearer the ends of a leaf come when one moves across and stays parallel, for little travel.
 *
 *     u = 3·δ²/(5·L)
 *
 * @param length - flexing length L [mm], > 0
 * @param travel - δ across the leaf [mm], either sign
 * @returns parasitic approach [mm], ≥ 0
 *
 * Source: small-deflection.
 * @example guidedApproach(20, 2) // → 0.12
 */
export function guidedApproach(length: Mm, travel: Mm): Mm {
  return (3 * travel ** 2) / (5 * length);
}

/** A leaf with parallel ends that may come nearer, in figures without dimension. */
export interface GuidedFreeLeaf {
  /** P·L²/(E·I). */
  readonly load: number;
  /** How much nearer the ends came, u/L. */
  readonly approach: number;
  /** Moment at both ends, M·L/(E·I). */
  readonly endMoment: number;
  /** Slope at mid-length. */
  readonly midSlope: Rad;
}

/**
 * A leaf whose ends stay parallel and may come nearer to each other, at any travel.
 *
 * By symmetry two leaves of half the length under an end force, back to back: P·L²/(E·I) = 4α, δ/L and u/L as those of a
 * half, M·L/(E·I) twice that of a half. Exact for a leaf that neither stretches nor shears.
 *
 * @param travel - δ/L across the leaf [-], 0 to 0.995
 * @returns load, approach, end moment and slope at mid-length [-]
 *
 * Source: end-loaded-elastica.
 * @example guidedFreeLeaf(0.1) // → { load: 1.21248816, approach: 0.00602070462, endMoment: 0.602594061 }
 */
export function guidedFreeLeaf(travel: number): GuidedFreeLeaf {
  const half = endLoadAtTravel(travel);
  return {
    load: 4 * half.load,
    approach: half.approach,
    endMoment: 2 * half.rootMoment,
    midSlope: half.tipAngle,
  };
}

/** A leaf with parallel ends at a fixed distance, in figures without dimension. */
export interface GuidedHeldLeaf {
  /** P·L³/(E·I·t). */
  readonly force: number;
  /** Pull along the leaf, T·L²/(E·I). */
  readonly tension: number;
  /** Largest strain, of bending and pull together, at the ends: ε·L²/t². */
  readonly strain: number;
}

/**
 * A leaf of rectangular section whose ends stay parallel and at their distance, so that travel also stretches it.
 *
 *     N = T·L²/(E·I) = 4λ²,   δ/t = √(N/12)/√(½ + b_S),   P·L³/(E·I·t) = (N + 2·k_S)·δ/t
 *
 * with the bowing b_S and end stiffness k_S of `beamColumn` at the pull N, which written out is
 * δ/t = √(N/(6g))·(1 − tanh λ/λ), g = 3/2 − tanh²λ/2 − (3/2)·tanh λ/λ. Small slopes, large stretch: exact within the
 * theory of a beam with a pull. For little travel P = 12·E·I·δ/L³.
 *
 * @param travel - δ/t across the leaf [-], ≥ 0
 * @returns force, tension and strain [-]
 *
 * Source: tie-beam.
 * @example guidedHeldLeaf(1) // → { force: 20.4429749, tension: 7.09133063 }
 */
export function guidedHeldLeaf(travel: number): GuidedHeldLeaf {
  if (!(travel >= 0)) throw new RangeError(`a travel of 0 or more is needed, not ${travel}`);
  // δ/t is 0.745·λ at rest and 0.816·λ far out, so twice the travel is beyond any root.
  const found = findRoot((lambda) => heldTravel(lambda) - travel, 0, 2 * travel, 0);
  if (!found.ok) throw new RangeError(`no pull for a travel of ${travel} thicknesses`);
  const tension = 4 * found.value.value ** 2;
  const { ofS } = beamColumn(-tension).stiffness;
  return { force: (tension + 2 * ofS) * travel, tension, strain: (ofS * travel) / 2 + tension / 12 };
}

/** δ/t at a pull: the leaf stretches by what the slope of its chord and its bowing against the chord ask for. */
function heldTravel(lambda: number): number {
  return lambda / Math.sqrt(3 * (0.5 + beamColumn(-4 * lambda ** 2).bowing.ofS));
}

/**
 * Stiffness of one leaf whose ends stay parallel and which also carries a load along itself, over E·I/L³.
 *
 *     k·L³/(E·I) = v/(tan m/m − 1),   v = V·L²/(E·I),   m = √v/2
 *
 * 12 without load, 0 at the critical load V = π²·E·I/L², more than 12 in tension (hyperbolic tangent). Small slopes.
 *
 * @param share - V over the critical load, compression positive [-], below 4; above 1 the leaf no longer holds itself
 * @returns stiffness [-], negative above the critical load
 *
 * Source: tie-beam.
 * @example guidedStiffnessUnderLoad(0.5) // → 6.04142051
 */
export function guidedStiffnessUnderLoad(share: number): number {
  if (!(share < 4)) throw new RangeError(`a load below four times the critical one is needed, not ${share}`);
  const thrust = Math.PI ** 2 * share;
  return 2 * beamColumn(thrust).stiffness.ofS - thrust;
}

/**
 * Travel across a leaf up to which its outer fibre stays within a strain, for little travel.
 *
 *     δ = ε·L²/(3·t)
 *
 * @param thickness - t [mm], > 0
 * @param length - flexing length L [mm], > 0
 * @param strain - allowed outer-fibre strain ε as a fraction [-], ≥ 0
 * @returns travel [mm], ≥ 0
 *
 * Source: small-deflection.
 * @example guidedTravelAtStrain(1.26, 40, 0.0118125) // → 5.000000
 */
export function guidedTravelAtStrain(thickness: Mm, length: Mm, strain: number): Mm {
  return (strain * length ** 2) / (3 * thickness);
}
