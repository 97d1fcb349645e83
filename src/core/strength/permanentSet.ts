import type { MPa } from '../units.ts';

/**
 * Moment in a rectangular section of an elastic–perfectly plastic material, over the moment at first yield.
 *
 *     M/M_y = k for k ≤ 1,   3/2 − 1/(2k²) beyond
 *
 * @param kappaRatio - curvature over the curvature at first yield, k = ε·E/σ_y [-], ≥ 0
 * @returns moment ratio [-], 0 to 1.5
 *
 * Source: elastic-plastic.
 * @example plasticMoment(1.2) // → 1.1527778
 */
export function plasticMoment(kappaRatio: number): number {
  return kappaRatio <= 1 ? kappaRatio : 1.5 - 0.5 / (kappaRatio * kappaRatio);
}

/**
 * Curvature over the curvature at first yield that a moment bends such a section to; the inverse of `plasticMoment`.
 *
 *     k = M/M_y for M ≤ M_y,   1/√(3 − 2·M/M_y) beyond
 *
 * @param moment - moment over the moment at first yield [-], 0 ≤ moment < 1.5
 * @returns k [-]
 *
 * Source: elastic-plastic.
 * @example plasticCurvature(1.375) // → 2
 */
export function plasticCurvature(moment: number): number {
  return moment <= 1 ? moment : 1 / Math.sqrt(3 - 2 * moment);
}

/**
 * What stays bent after one bend and a free release.
 *
 *     set/forced = 1 − (3/2)/k + (1/2)/k³ = (k − 1)²·(k + ½)/k³,   k = ε·E/σ_y > 1
 *
 * Elastic–perfectly plastic, release elastic, no rate or creep: for plastics read it as an instant estimate.
 *
 * @param strain - outer-fibre strain ε as a fraction [-], ≥ 0
 * @param modulus - E [MPa], > 0
 * @param yieldStress - σ_y [MPa], > 0
 * @returns k and the share of the angle that stays [-], 0 to 1
 *
 * Source: elastic-plastic.
 * @example setAfterOneBend(0.03, 2000, 30).fraction // → 0.3125
 */
export function setAfterOneBend(
  strain: number,
  modulus: MPa,
  yieldStress: MPa,
): { kappaRatio: number; fraction: number } {
  const k = (strain * modulus) / yieldStress;
  // The product form cannot fall below 0 by round-off near first yield.
  return { kappaRatio: k, fraction: k <= 1 ? 0 : ((k - 1) ** 2 * (k + 0.5)) / k ** 3 };
}

/**
 * Stress that stays in the stretched face after release, over the yield stress.
 *
 *     σ_res/σ_y = 1 − M/M_y for k > 1
 *
 * @param kappaRatio - curvature over the curvature at first yield, k [-], ≥ 0
 * @returns stress ratio [-], 0 to −0.5; negative is compression
 *
 * Source: elastic-plastic.
 * @example residualSurfaceStress(2) // → -0.375
 */
export function residualSurfaceStress(kappaRatio: number): number {
  return kappaRatio <= 1 ? 0 : 1 - plasticMoment(kappaRatio);
}
