/** What a test is expected to leave of the doubt is what refitting leaves, on average over truths drawn with seeds. */
import { describe, it } from 'vitest';
import { believedAt, expectedVariance, type Planned } from '../../../src/core/tallies/expectedDoubt.ts';
import { lifePosterior, type LifePosterior } from '../../../src/core/tallies/lifePosterior.ts';
import { drawsOf, flexedOnce, PRIOR, truthFrom } from '../../support/countedLives.ts';
import { expectClose } from '../../support/close.ts';

/**
 * What a test is expected to tell takes σ as known within each possible curve and the likelihood as normal, which a refit does
 * not; with five strips that costs a hundredth of the standard deviation. By chance the mean of 300 runs is off by as much: three
 * standard errors.
 */
const FORETOLD = {
  rel: 0.04,
  because: 'σ is taken as known and what it tells as normal, a hundredth; three standard errors of 300 runs',
} as const;

describe.each([
  ['where the joint is', [4, 4, 4, 4, 4], 4.7],
  ['at higher strain', [2.5, 2.5, 2.5, 2.5, 2.5], 3.7],
  ['stopped before most break', [4.5, 4.5, 4.5], 3.7],
  ['a whole comb', [2, 2.6, 3.2, 3.8, 4.4, 5], 4],
] as const)('what five or so strips are expected to leave of the doubt: %s', (_, lives, stop) => {
  const JOINT = 4.2;
  const draws = drawsOf(7);
  const none: LifePosterior = lifePosterior(PRIOR, []);
  const planned = lives.map((foretold): Planned => ({ foretold, stop, strips: 1 }));

  it('is what refitting leaves on average', () => {
    const left = Array.from({ length: 300 }, () => {
      const truth = truthFrom(draws);
      const now = lifePosterior(
        PRIOR,
        lives.map((x) => flexedOnce(draws, truth, x, stop)),
      );
      return believedAt(now, JOINT).variance;
    });
    const mean = left.reduce((sum, variance) => sum + variance, 0) / left.length;
    expectClose(Math.sqrt(expectedVariance(none, planned, JOINT)), Math.sqrt(mean), FORETOLD);
  });
});
