/** One bend of a rectangular section of any stress–strain curve, alike in tension and compression, and its elastic release. */
import { findRoot } from '../numeric/roots.ts';
import type { MPa } from '../units.ts';

/** Stress [MPa] at a strain, and ∫₀^ε σ·ε dε [MPa], for ε ≥ 0; E [MPa] is what it is released by. */
export interface StressCurve {
  readonly modulus: MPa;
  stress(strain: number): MPa;
  firstMoment(strain: number): MPa;
}

/**
 * Elastic up to the yield stress, which it then keeps.
 *
 * @param modulus - E [MPa], > 0
 * @param yieldStress - σ_y [MPa], > 0
 * @returns the curve [MPa]
 *
 * Source: elastic-plastic.
 * @example elasticPerfectlyPlastic(2000, 30).firstMoment(0.03) // → 0.0123750
 */
export function elasticPerfectlyPlastic(modulus: MPa, yieldStress: MPa): StressCurve {
  const onset = yieldStress / modulus;
  return {
    modulus,
    stress: (strain) => Math.min(modulus * strain, yieldStress),
    firstMoment: (strain) => {
      const elastic = (modulus * Math.min(strain, onset) ** 3) / 3;
      return elastic + (yieldStress * (Math.max(strain, onset) ** 2 - onset ** 2)) / 2;
    },
  };
}

/**
 * A curve without a corner (Ramberg, Osgood): ε = σ/E + (σ/K)^(1/n).
 *
 * Its first moment is summed over the stress, in closed form: with m = 1/n and q = (σ/K)^m,
 *
 *     ∫ σ·ε dε = σ³/(3E²) + (m + 1)·q·σ²/((m + 2)·E) + m·q²·σ/(2m + 1)
 *
 * @param modulus - E [MPa], > 0
 * @param strength - K [MPa], > 0
 * @param hardening - n [-], 0 < n ≤ 1
 * @returns the curve [MPa]
 *
 * Source: ramberg-osgood.
 * @example rambergOsgood(2000, 60, 0.15).stress(0.02) // → 27.89095
 */
export function rambergOsgood(modulus: MPa, strength: MPa, hardening: number): StressCurve {
  const m = 1 / hardening;
  const flow = (stress: MPa) => (stress / strength) ** m;
  const stress = (strain: number) => {
    const most = Math.min(modulus * strain, strength * strain ** hardening);
    const found = findRoot((value) => value / modulus + flow(value) - strain, 0, most, 1e-15 * most);
    if (!found.ok) throw new RangeError(`a strain of 0 or more is needed, not ${strain}`);
    return found.value.value;
  };
  return {
    modulus,
    stress,
    firstMoment: (strain) => {
      const s = stress(strain);
      const q = flow(s);
      const mixed = ((m + 1) * q * s * s) / ((m + 2) * modulus);
      return s ** 3 / (3 * modulus ** 2) + mixed + (m * q * q * s) / (2 * m + 1);
    },
  };
}

export interface BentOnce {
  /** M/(b·t²) [MPa]. */
  readonly moment: MPa;
  /** Share of the curvature that stays, 0 to 1. */
  readonly share: number;
  /** Strain of the skin that stays, t·κ_res/2, as a fraction. */
  readonly residualStrain: number;
  /** Stress that stays in the stretched face [MPa]; negative is compression. */
  readonly residualStress: MPa;
}

/**
 * What a section does that is bent once and let go.
 *
 *     M/(b·t²) = ∫₀^ε σ·ε dε/(2·ε²),   κ_res/κ = 1 − 6·M/(b·t²·E·ε),   σ_res = σ(ε) − 6·M/(b·t²)
 *
 * Plane sections, no force along the leaf; release elastic, no rate or creep.
 *
 * @param curve - stress–strain curve [MPa]
 * @param strain - of the skin, ε as a fraction [-], > 0
 * @returns moment [MPa], share that stays [-], residual strain [-] and stress [MPa]
 *
 * Source: elastic-plastic.
 * @example bentOnce(elasticPerfectlyPlastic(2000, 30), 0.03).share // → 0.3125
 */
export function bentOnce(curve: StressCurve, strain: number): BentOnce {
  const moment = curve.firstMoment(strain) / (2 * strain * strain);
  const share = Math.max(0, 1 - (6 * moment) / (curve.modulus * strain));
  return { moment, share, residualStrain: share * strain, residualStress: curve.stress(strain) - 6 * moment };
}
