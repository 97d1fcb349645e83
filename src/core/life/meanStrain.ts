/**
 * What the strain that stays on through a flex does to its life, by the rules that are in use: the curve's own exponent and
 * its extremes, and two rules by stress. They agree where a flex begins at rest, and disagree most where it never does.
 */
import type { Filament, StrainLifeCurve } from '../material/types.ts';
import type { MPa } from '../units.ts';
import type { Wear } from './lifeAnswer.ts';
import { equivalentStrain, lifeAtStrain } from './strainLife.ts';

/**
 * Strain about which a flex swings.
 *
 *     ε_m = ε_peak·(1 + R)/2
 *
 * @param peak - peak strain of the skin as a fraction [-], ≥ 0
 * @param ratio - strain ratio R [-], −1 to less than 1
 * @returns mean strain as a fraction [-]
 *
 * Source: strain-life.
 * @example meanStrain(0.04, 0) // → 0.02
 */
export function meanStrain(peak: number, ratio: number): number {
  return (peak * (1 + ratio)) / 2;
}

/**
 * Half of the range of strain of a flex.
 *
 *     ε_a = ε_peak·(1 − R)/2
 *
 * @param peak - peak strain of the skin as a fraction [-], ≥ 0
 * @param ratio - strain ratio R [-], −1 to less than 1
 * @returns amplitude as a fraction [-]
 *
 * Source: strain-life.
 * @example strainAmplitude(0.04, -1) // → 0.04
 */
export function strainAmplitude(peak: number, ratio: number): number {
  return (peak * (1 - ratio)) / 2;
}

/** A curve of amplitudes flexed as far to both sides: ε_a = (σ_f′/E)·(2N)^b + ε_f′·(2N)^c. */
export interface ReversedCurve {
  /** E [MPa]. */
  readonly modulus: MPa;
  /** σ_f′ [MPa]. */
  readonly strength: MPa;
  readonly b: number;
  /** ε_f′ [-]; a fit, never a ductility. */
  readonly ductility: number;
  readonly c: number;
}

/**
 * The curve of a filament row as amplitudes flexed as far to both sides.
 *
 *     σ_f′/E = A/2^γ,   ε_f′ = B/2^γ
 *
 * @param curve - curve of a filament row, in strains from rest [-]
 * @param modulus - E [MPa], > 0
 * @returns the same curve [MPa] and [-]
 *
 * Source: strain-life.
 * @example reversedCurve({ A: 0.0314, b: -0.145, B: 0.3, c: -0.5, gamma: 0.5 }, 3200).strength // → 71.050
 */
export function reversedCurve(
  { A, b, B, c, gamma }: Pick<StrainLifeCurve, 'A' | 'b' | 'B' | 'c' | 'gamma'>,
  modulus: MPa,
): ReversedCurve {
  return { modulus, strength: (A * modulus) / 2 ** gamma, b, ductility: B / 2 ** gamma, c };
}

const NEVER_AT_ONCE = { firstFlexBreakStrain: Number.POSITIVE_INFINITY };

/**
 * Median life where a stress stays on, which lowers what is left of the strength (Morrow).
 *
 *     ε_a = (σ_f′ − σ_m)/E·(2N)^b + ε_f′·(2N)^c
 *
 * @param amplitude - ε_a as a fraction [-], ≥ 0
 * @param meanStress - σ_m [MPa]
 * @param curve - flexed as far to both sides [MPa] and [-]
 * @returns cycles N [-], at most 10¹²; undefined where the stress that stays is all the strength there is
 *
 * Source: mean-stress.
 * @example morrowLife(0.01, 5, { modulus: 1500, strength: 60, b: -0.11, ductility: 0.5, c: -0.55 }) // → 114294.5
 */
export function morrowLife(amplitude: number, meanStress: MPa, curve: ReversedCurve): number | undefined {
  const { modulus, strength, b, ductility, c } = curve;
  if (!(meanStress < strength)) return undefined;
  return lifeAtStrain(amplitude, { A: (strength - meanStress) / modulus, b, B: ductility, c, ...NEVER_AT_ONCE });
}

/**
 * Median life by the largest stress times the amplitude (Smith, Watson and Topper).
 *
 *     σ_max·ε_a = σ_f′²/E·(2N)^2b + σ_f′·ε_f′·(2N)^(b+c)
 *
 * @param amplitude - ε_a as a fraction [-], ≥ 0
 * @param largestStress - σ_max [MPa], ≥ 0
 * @param curve - flexed as far to both sides [MPa] and [-]
 * @returns cycles N [-], at most 10¹²
 *
 * Source: mean-stress.
 * @example smithWatsonTopperLife(0.01, 15, { modulus: 1500, strength: 60, b: -0.11, ductility: 0.5, c: -0.55 }) // → 181399.5
 */
export function smithWatsonTopperLife(amplitude: number, largestStress: MPa, curve: ReversedCurve): number {
  const { modulus, strength, b, ductility, c } = curve;
  const product = { A: strength ** 2 / modulus, b: 2 * b, B: strength * ductility, c: b + c, ...NEVER_AT_ONCE };
  return lifeAtStrain(amplitude * largestStress, product);
}

/**
 * Amplitude of stress that goes with an amplitude of strain where the curve is believed of both.
 *
 *     σ_a = σ_f′·(2N)^b,   N the life at ε_a flexed as far to both sides
 *
 * @param amplitude - ε_a as a fraction [-], > 0
 * @param curve - flexed as far to both sides [MPa] and [-]
 * @returns σ_a [MPa], at most E·ε_a
 *
 * Source: mean-stress.
 * @example stressAmplitude(0.01, { modulus: 1500, strength: 60, b: -0.11, ductility: 0.5, c: -0.55 }) // → 14.40232
 */
export function stressAmplitude(amplitude: number, { modulus, strength, b, ductility, c }: ReversedCurve): MPa {
  const life = lifeAtStrain(amplitude, { A: strength / modulus, b, B: ductility, c, ...NEVER_AT_ONCE });
  // Where lives are not followed any longer, all of it is springy.
  return Math.min(modulus * amplitude, strength * (2 * life) ** b);
}

/** Walker exponents between which the truth may lie: the peak alone counts, the product of peak and range, the range alone. */
export const EXPONENTS = [0, 0.5, 1] as const;

/** Medians of one kind of flex by each rule [cycles], not capped; 0 where the first flex breaks it. */
export interface MeanStrainLives {
  /** Of the skin, as fractions, without what layers and thick sections add. */
  readonly mean: number;
  readonly amplitude: number;
  /** Taken springy up to the yield stress [MPa]. */
  readonly meanStress: MPa;
  readonly byExponent: readonly { readonly gamma: number; readonly median: number }[];
  /** Undefined where the stress that stays on is more than the rule knows. */
  readonly morrow: number | undefined;
  readonly smithWatsonTopper: number;
}

/**
 * How much the life of one kind of flex depends on what is taken of the strain that stays on.
 *
 * The stress that stays on is E times strain, as far as the largest is no more than the yield stress: what flows gives up its
 * mean stress first. Strains are those that the curve is asked for, with layers and thick sections in them.
 *
 * @param wear - one kind of flex as assessed: strains as fractions, ratio [-]
 * @param filament - row of the filament table [-]
 * @param modulus - E it is bent with [MPa], > 0
 * @returns mean and amplitude as fractions, stresses [MPa], median lives [cycles]
 *
 * Source: strain-life, mean-stress.
 */
export function meanStrainLives(
  { peakStrain, ratio, equivalentStrain: equivalent }: Pick<Wear, 'peakStrain' | 'ratio' | 'equivalentStrain'>,
  { life, properties }: Filament,
  modulus: MPa,
): MeanStrainLives {
  const judged = equivalent / equivalentStrain(1, ratio, life.gamma);
  const largestStress = Math.min(modulus * judged, properties.yieldStress.typical);
  const amplitude = strainAmplitude(judged, ratio);
  const meanStress = Math.max(0, largestStress - modulus * amplitude);
  const curve = reversedCurve(life, modulus);
  const isBroken = equivalent > life.firstFlexBreakStrain;
  return {
    mean: meanStrain(peakStrain, ratio),
    amplitude: strainAmplitude(peakStrain, ratio),
    meanStress,
    byExponent: EXPONENTS.map((gamma) => ({
      gamma,
      median: lifeAtStrain(equivalentStrain(judged, ratio, gamma), life),
    })),
    morrow: isBroken ? 0 : morrowLife(amplitude, meanStress, curve),
    smithWatsonTopper: isBroken
      ? 0
      : smithWatsonTopperLife(amplitude, meanStress + stressAmplitude(amplitude, curve), curve),
  };
}
