import { findRoot } from '../numeric/roots.ts';
import type { StrainLifeCurve } from '../material/types.ts';

/** Lives are not followed further than this: far past any data, and finite. */
export const LONGEST_LIFE = 1e12;

type Coefficients = Pick<StrainLifeCurve, 'A' | 'b' | 'B' | 'c'>;

/**
 * Strain of a 0 → ε → 0 cycle that does the same harm as a cycle with another strain ratio (Walker).
 *
 *     ε_eq = ε_peak·(1 − R)^γ,   R = ε_min/ε_peak
 *
 * @param peak - peak outer-fibre strain as a fraction [-], ≥ 0
 * @param ratio - strain ratio R [-], −1 for both ways, 0 for one way, < 1
 * @param gamma - Walker exponent γ [-], 0 to 1
 * @returns equivalent strain as a fraction [-], ≥ 0
 *
 * Source: strain-life.
 * @example equivalentStrain(0.02, -1, 0.5) // → 0.0282843
 */
export function equivalentStrain(peak: number, ratio: number, gamma: number): number {
  return peak * (1 - ratio) ** gamma;
}

/**
 * Equivalent strain at which half of the specimens last a number of cycles.
 *
 *     ε_eq = A·(2N)^b + B·(2N)^c
 *
 * @param cycles - N [-], > 0
 * @param curve - coefficients of a filament row [-]
 * @returns equivalent strain as a fraction [-], > 0
 *
 * Source: strain-life.
 * @example strainAtLife(200, { A: 0.03969, b: -0.13, B: 2.5679, c: -0.5 }) // → 0.146609
 */
export function strainAtLife(cycles: number, curve: Coefficients): number {
  return curve.A * (2 * cycles) ** curve.b + curve.B * (2 * cycles) ** curve.c;
}

/**
 * Median cycles to break at an equivalent strain; the inverse of `strainAtLife`.
 *
 * Never more than 10¹² (nor Infinity at zero strain), and 0 above the strain that the first flex breaks.
 *
 * @param equivalent - equivalent strain as a fraction [-], ≥ 0
 * @param curve - curve of a filament row [-]
 * @returns median cycles N [-], 0 to 10¹²
 *
 * Source: strain-life.
 * @example lifeAtStrain(0.05, { A: 0.03969, b: -0.13, B: 2.5679, c: -0.5, firstFlexBreakStrain: 0.6 }) // → 2429.98
 */
export function lifeAtStrain(
  equivalent: number,
  curve: Coefficients & Pick<StrainLifeCurve, 'firstFlexBreakStrain'>,
): number {
  if (!(equivalent >= 0)) throw new RangeError(`a strain of 0 or more is needed, not ${equivalent}`);
  if (equivalent > curve.firstFlexBreakStrain) return 0;
  if (equivalent <= strainAtLife(LONGEST_LIFE, curve)) return LONGEST_LIFE;
  return Math.min(LONGEST_LIFE, solvedLife(equivalent, curve));
}

/**
 * Solved for u = ln 2N, where the logarithm of the curve is smooth and nearly straight. One of the two terms carries
 * at least half the strain and neither more than all of it, which brackets u without a search.
 */
function solvedLife(equivalent: number, { A, b, B, c }: Coefficients): number {
  const excess = (u: number): number => Math.log(A * Math.exp(b * u) + B * Math.exp(c * u)) - Math.log(equivalent);
  const whereTermIs = (strain: number): number => Math.max(Math.log(strain / A) / b, Math.log(strain / B) / c);
  // A little wider, so that round-off cannot put a root that is at an end outside: where one term is next to nothing.
  const [early, late] = [whereTermIs(equivalent * (1 + 1e-9)), whereTermIs(equivalent / (2 + 1e-9))];
  const root = findRoot(excess, early, late, 1e-12);
  if (!root.ok) throw new RangeError('a strain–life curve must fall: A, B > 0 and b, c < 0');
  return Math.exp(root.value.value) / 2;
}
