/**
 * Source [bayes-rule]: prior times likelihood put together from densities and shares of jstat, summed over a wide box in fine
 * even steps. The box neither knows the top of the hill nor leans with it.
 */
import { jStat } from 'jstat';
import { describe, expect, it } from 'vitest';
import { lifePosterior, type SeenStrip } from '../../../src/core/tallies/lifePosterior.ts';
import { PRIOR } from '../../support/countedLives.ts';
import { expectClose } from '../../support/close.ts';

const strip = (foretold: number, counted: number, whole = false): SeenStrip => ({ foretold, counted, whole });

function densityOf(strips: readonly SeenStrip[], level: number, slope: number, logSigma: number): number {
  const sigma = Math.exp(logSigma);
  const believed =
    jStat.normal.pdf(level, 0, PRIOR.level) *
    jStat.normal.pdf(slope, 0, PRIOR.slope) *
    jStat.normal.pdf(logSigma, Math.log(PRIOR.scatter) - 0.09, 0.3);
  return strips.reduce((product, { foretold, counted, whole }) => {
    const middle = foretold + level + slope * (foretold - PRIOR.pivot);
    const told = whole
      ? jStat.normal.cdf(2 * middle - counted, middle, sigma)
      : jStat.normal.pdf(counted, middle, sigma);
    return product * told;
  }, believed);
}

const steps = (low: number, high: number, count: number) =>
  Array.from({ length: count }, (_, i) => low + ((high - low) * (i + 0.5)) / count);

function byBruteForce(strips: readonly SeenStrip[]) {
  const sums = { all: 0, level: 0, slope: 0, level2: 0, slope2: 0, both: 0, square: 0 };
  for (const level of steps(-4, 4, 100)) {
    for (const slope of steps(-0.65, 1.2, 60)) {
      for (const logSigma of steps(-2.1, 1.3, 50)) {
        const weight = densityOf(strips, level, slope, logSigma);
        sums.all += weight;
        sums.level += weight * level;
        sums.slope += weight * slope;
        sums.level2 += weight * level ** 2;
        sums.slope2 += weight * slope ** 2;
        sums.both += weight * level * slope;
        sums.square += weight * Math.exp(2 * logSigma);
      }
    }
  }
  const [level, slope] = [sums.level / sums.all, sums.slope / sums.all];
  return {
    level,
    slope,
    levelVariance: sums.level2 / sums.all - level ** 2,
    slopeVariance: sums.slope2 / sums.all - slope ** 2,
    covariance: sums.both / sums.all - level * slope,
    scatter: Math.sqrt(sums.square / sums.all),
  };
}

describe.each([
  ['one strip', [strip(3, 2.2)]],
  ['three alike', [strip(3, 2.4), strip(3, 2.6), strip(3, 2.1)]],
  ['only strips still whole, longer than foretold', [strip(3, 4, true), strip(3, 4, true), strip(2.5, 4.2, true)]],
  ['strips far apart, some whole', [strip(1.5, 1.2), strip(3, 2.8), strip(4.5, 5.1), strip(5, 5, true)]],
  ['one that does not belong', [strip(3, 2.4), strip(3, 2.5), strip(3, 2.45), strip(3, 5.5)]],
] as const)('%s', (_, strips) => {
  const [ours, theirs] = [lifePosterior(PRIOR, strips), byBruteForce(strips)];

  it.each(['level', 'slope', 'levelVariance', 'slopeVariance', 'covariance', 'scatter'] as const)('%s', (name) => {
    const scale = { level: 1, slope: 1, levelVariance: 0.1, slopeVariance: 0.03, covariance: 0.03, scatter: 1 }[name];
    expectClose(ours[name], theirs[name], {
      abs: 5e-3 * scale,
      because: 'the grid is a ball of six standard deviations in steps of one, and hills that lean are no bells',
    });
  });

  it('the weights add up to one', () => {
    const sum = ours.possible.reduce((total, { weight }) => total + weight, 0);
    expectClose(sum, 1, { rel: 1e-12, because: 'round-off' });
    expect(ours.possible.every(({ sigma }) => sigma > 0)).toBe(true);
  });
});
