import { normalCdf, normalQuantile } from '../numeric/normal.ts';
import type { StrainLifeCurve } from '../material/types.ts';
import type { LifeSpread } from './lifeAnswer.ts';

/** Standard deviations that hold nine in ten, symmetrically: Φ(1.6449) = 0.95. */
const NINE_IN_TEN = normalQuantile(0.95);
/** Standard deviations below which nine in ten lie. */
const NINETIETH = normalQuantile(0.9);

/**
 * Standard deviation of log10 N that stands for the doubt about a whole curve.
 *
 *     s = log10 f/1.6449
 *
 * @param doubtFactor - factor f within which the true curve lies nine times in ten [-], ≥ 1
 * @returns standard deviation of log10 N [-], ≥ 0
 *
 * Source: strain-life.
 * @example doubtSigma(10) // → 0.607957
 */
export function doubtSigma(doubtFactor: number): number {
  return Math.log10(doubtFactor) / NINE_IN_TEN;
}

type Doubted = Pick<StrainLifeCurve, 'doubtFactor' | 'surestLife' | 'doubtPerDecade'>;
type Spread = Pick<StrainLifeCurve, 'sigmaLog10N'> & Doubted;

/**
 * Standard deviation of log10 N that stands for the doubt about a curve where half last so many cycles: the same everywhere,
 * or least about the lives that tests have counted.
 *
 *     s = √(s_least² + (s_decade·log10(N50/N_surest))²)
 *
 * @param curve - curve of a filament row [-]
 * @param median - N50 [-], ≥ 0; under one flex counts as one
 * @returns standard deviation of log10 N [-], ≥ 0
 *
 * Source: strain-life.
 * @example curveSigma({ doubtFactor: 2, surestLife: 1000, doubtPerDecade: 0.2 }, 100000) // → 0.439879
 */
export function curveSigma({ doubtFactor, surestLife = 1, doubtPerDecade = 0 }: Doubted, median: number): number {
  return Math.hypot(doubtSigma(doubtFactor), doubtPerDecade * Math.log10(Math.max(1, median) / surestLife));
}

/**
 * Scatter between specimens and doubt of the curve together, as independent.
 *
 *     s = √(s_scatter² + s_doubt²)
 *
 * @param curve - curve of a filament row [-]
 * @param median - N50 at which it is asked [-], ≥ 0
 * @returns standard deviation of log10 N [-], > 0
 *
 * Source: strain-life.
 * @example totalSigma({ sigmaLog10N: 0.6, doubtFactor: 10 }, 1000) // → 0.854173
 */
export function totalSigma(curve: Spread, median: number): number {
  return Math.hypot(curve.sigmaLog10N, curveSigma(curve, median));
}

/**
 * Cycles by which 10, 50 and 90 of 100 have broken, for lives spread log-normally.
 *
 *     N10 = N50·10^(−1.2816·s),   N90 = N50·10^(1.2816·s)
 *
 * @param median - N50 [-], ≥ 0
 * @param sigma - standard deviation of log10 N [-], ≥ 0
 * @returns cycles [-]
 *
 * Source: strain-life.
 * @example spreadAround(200, 0.6).p10 // → 34.05
 */
export function spreadAround(median: number, sigma: number): LifeSpread {
  const factor = 10 ** (NINETIETH * sigma);
  return { p10: median / factor, p50: median, p90: median * factor };
}

/**
 * Share that reaches a wanted number of cycles.
 *
 * @param median - median life [-], ≥ 0
 * @param cycles - wanted cycles [-], > 0
 * @param sigma - standard deviation of log10 N [-], > 0
 * @returns share [-], 0 to 1; 0 when the median is 0
 *
 * Source: strain-life.
 * @example chanceOfReaching(24404, 5000, 0.6) // → 0.874409
 */
export function chanceOfReaching(median: number, cycles: number, sigma: number): number {
  if (!(median > 0)) return 0;
  return normalCdf(Math.log10(median / cycles) / sigma);
}

/**
 * Median life needed so that a wanted share reaches a wanted number of cycles; the inverse of `chanceOfReaching` with
 * `totalSigma`, whose doubt may depend on that very life.
 *
 *     log10 N50 = log10 N + u,   u = z·√(s² + (k·(u + v))²),   v = log10(N/N_surest)
 *
 * with z the normal quantile of the share, s scatter and least doubt together and k the doubt per decade; a quadratic in u.
 *
 * @param cycles - wanted cycles N [-], > 0
 * @param chance - wanted share [-], 0 < chance < 1, not so near either end that z·k reaches 1
 * @param curve - curve of a filament row [-]
 * @returns median life [-], > 0
 *
 * Source: strain-life.
 * @example medianWanted(5000, 0.9, { sigmaLog10N: 0.6, doubtFactor: 1 }) // → 29369.8
 */
export function medianWanted(cycles: number, chance: number, curve: Spread): number {
  const { sigmaLog10N, doubtFactor, surestLife = 1, doubtPerDecade = 0 } = curve;
  const z = normalQuantile(chance);
  const away = doubtPerDecade * Math.log10(cycles / surestLife);
  const steep = z * doubtPerDecade;
  const left = 1 - steep ** 2;
  const root = Math.sqrt((sigmaLog10N ** 2 + doubtSigma(doubtFactor) ** 2) * left + away ** 2);
  return cycles * 10 ** ((z * (steep * away + root)) / left);
}
