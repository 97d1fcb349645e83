/**
 * A strain–life curve as points to draw, for a filament by itself: what a joint makes of it enters as one factor, the
 * equivalent strain over the peak strain.
 */
import type { StrainLifeCurve } from '../material/types.ts';
import { medianWanted, totalSigma, spreadAround } from './scatter.ts';
import { equivalentStrain, lifeAtStrain, strainAtLife } from './strainLife.ts';

export interface CurvePoint {
  readonly cycles: number;
  /** Peak strain of the skin, as a fraction. */
  readonly strain: number;
}

/** One height of a band: the cycles by which 10 and 90 of 100 have broken at a strain. */
export interface CurveBand {
  readonly strain: number;
  readonly low: number;
  readonly high: number;
}

export interface DrawnCurve {
  /** Falls from the strain that breaks at once to where counting ends. */
  readonly median: readonly CurvePoint[];
  /** Specimens of one print run; these go on past the end of counting, whose early failures lie before it. */
  readonly scatter: readonly CurveBand[];
  /** Scatter and doubt of the curve together. */
  readonly total: readonly CurveBand[];
  /** Peak strain above which the first flex breaks it, as a fraction. */
  readonly firstFlex: number;
}

const SAMPLES = 60;
/** Decades of life past the end of counting that the widest spread reaches back from. */
const REACH = 2;
/** Fewer cycles than this are on no paper. */
const LEAST_CYCLES = 0.01;

/**
 * Peak strain at which half break by so many cycles.
 *
 * @param cycles - N [-], > 0
 * @param curve - curve of a filament row [-]
 * @param severity - equivalent over peak strain [-], > 0
 * @returns strain as a fraction [-], never above the one that breaks on the first flex
 *
 * Source: strain-life.
 * @example peakStrainAt(200, { A: 0.03969, b: -0.13, B: 2.5679, c: -0.5, firstFlexBreakStrain: 0.6 }, 1) // → 0.146609
 */
export function peakStrainAt(
  cycles: number,
  curve: Pick<StrainLifeCurve, 'A' | 'b' | 'B' | 'c' | 'firstFlexBreakStrain'>,
  severity: number,
): number {
  return Math.min(strainAtLife(cycles, curve), curve.firstFlexBreakStrain) / severity;
}

/**
 * Equivalent over peak strain of a filament flexed between two strains.
 *
 *     s = (1 − R)^γ/f
 *
 * @param ratio - R, the least strain over the largest [-], −1 to less than 1
 * @param gamma - Walker exponent γ [-], 0 to 1
 * @param factor - f, share of strain that is left when layers are pulled apart, 1 along lines [-], > 0
 * @returns factor [-], > 0
 *
 * Source: strain-life.
 * @example severityAt(-1, 0.5, 1) // → 1.41421
 */
export function severityAt(ratio: number, gamma: number, factor = 1): number {
  return equivalentStrain(1, ratio, gamma) / factor;
}

/**
 * The cycles at which the springy and the plastic part of a curve are alike: what breaks sooner is bent to stay a little
 * bent, what breaks later is bent within its spring.
 *
 *     N = ½·(B/A)^(1/(b − c))
 *
 * @param curve - coefficients of a filament row [-]
 * @returns cycles [-]; 0 or Infinity where exponents are all but alike and coefficients are not
 *
 * Source: strain-life.
 * @example transitionCycles({ A: 0.02, b: -0.1, B: 0.5, c: -0.5 }) // → 1562.5
 */
export function transitionCycles({ A, b, B, c }: Pick<StrainLifeCurve, 'A' | 'b' | 'B' | 'c'>): number {
  return (B / A) ** (1 / (b - c)) / 2;
}

/** From the first flex that breaks it, evenly on paper with log axes, to the end of counting and on. */
function medians(curve: StrainLifeCurve): readonly number[] {
  const first = Math.max(lifeAtStrain(curve.firstFlexBreakStrain, curve), LEAST_CYCLES);
  const [from, to] = [Math.log10(first), Math.log10(curve.maxReportableCycles) + REACH];
  const even = Array.from({ length: SAMPLES }, (_, i) => 10 ** (from + ((to - from) * i) / (SAMPLES - 1)));
  const end = curve.maxReportableCycles;
  return [...even.filter((cycles) => cycles < end), end, ...even.filter((cycles) => cycles > end)];
}

/**
 * The curve of a filament with both bands, in peak strain.
 *
 * @param curve - curve of a filament row [-]
 * @param severity - equivalent over peak strain [-], > 0
 * @returns cycles and strains as fractions; the median ends where counting ends
 *
 * Source: strain-life.
 */
export function drawnCurve(curve: StrainLifeCurve, severity: number): DrawnCurve {
  const all = medians(curve).map((cycles) => ({ cycles, strain: peakStrainAt(cycles, curve, severity) }));
  const band = (sigmaOf: (median: number) => number): readonly CurveBand[] =>
    all.map(({ cycles, strain }) => {
      const { p10, p90 } = spreadAround(cycles, sigmaOf(cycles));
      return { strain, low: p10, high: p90 };
    });
  return {
    median: all.filter(({ cycles }) => cycles <= curve.maxReportableCycles),
    scatter: band(() => curve.sigmaLog10N),
    total: band((median) => totalSigma(curve, median)),
    firstFlex: curve.firstFlexBreakStrain / severity,
  };
}

/**
 * Peak strains at which 10, 50 and 90 of 100 have broken by so many cycles, scatter and doubt together: the band read
 * along the strain axis.
 *
 * @param cycles - N [-], > 0
 * @param curve - curve of a filament row [-]
 * @param severity - equivalent over peak strain [-], > 0
 * @returns strains as fractions [-], in rising order
 *
 * Source: strain-life.
 */
export function peakSpreadAt(
  cycles: number,
  curve: StrainLifeCurve,
  severity: number,
): { readonly low: number; readonly half: number; readonly high: number } {
  const strain = (share: number) => peakStrainAt(medianWanted(cycles, share, curve), curve, severity);
  return { low: strain(0.9), half: strain(0.5), high: strain(0.1) };
}
