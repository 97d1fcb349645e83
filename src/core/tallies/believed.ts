/** One figure by what was believed before and by readings of it, all normal. */
import { oddLimit } from './oddStrips.ts';

export interface Normal {
  readonly mean: number;
  readonly sigma: number;
}

/** One reading, with the standard deviation of what makes it differ from the others. */
export interface Reading<T> {
  readonly tally: T;
  readonly value: number;
  readonly sigma: number;
}

/**
 * What is believed of a figure after readings of it that share one error.
 *
 *     1/s² = 1/s₀² + 1/(s_shared² + 1/Σ(1/s_i²)),   the mean weighted alike
 *
 * @param before - mean and standard deviation s₀ [unit of the figure]
 * @param readings - values with their own standard deviations s_i [unit of the figure]
 * @param shared - standard deviation of the error that all of them have [unit of the figure]
 * @returns mean and standard deviation [unit of the figure]
 *
 * Source: bayes-rule.
 * @example believed({ mean: 0, sigma: 1 }, [{ tally: 0, value: 2, sigma: 1 }], 0).mean // → 1
 */
export function believed(before: Normal, readings: readonly Reading<unknown>[], shared: number): Normal {
  if (readings.length === 0) return before;
  const weights = readings.map(({ sigma }) => sigma ** -2);
  const weight = weights.reduce((sum, one) => sum + one, 0);
  const mean = readings.reduce((sum, { value }, i) => sum + value * (weights[i] ?? 0), 0) / weight;
  const told = 1 / (shared ** 2 + 1 / weight);
  const known = before.sigma ** -2;
  return {
    mean: (before.mean * known + mean * told) / (known + told),
    sigma: (known + told) ** -0.5,
  };
}

/**
 * Readings that lie far from what the others and the belief before say. Shown, never dropped.
 *
 * @param before - mean and standard deviation [unit of the figure]
 * @param readings - values with their standard deviations [unit of the figure]
 * @param shared - standard deviation of the error that all of them have [unit of the figure]
 * @returns their tallies [-]
 *
 * Source: bayes-rule, normal-distribution.
 */
export function oddAmong<T>(before: Normal, readings: readonly Reading<T>[], shared: number): readonly T[] {
  const limit = oddLimit(readings.length);
  return readings
    .filter(({ value, sigma }, i) => {
      const others = believed(before, readings.toSpliced(i, 1), shared);
      return Math.abs(value - others.mean) > limit * Math.hypot(others.sigma, sigma, readings.length > 1 ? 0 : shared);
    })
    .map(({ tally }) => tally);
}
