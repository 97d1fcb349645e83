/**
 * Intervals of likelihood hold as often as they say: over hundreds of sets of strips that were never flexed, drawn with seeds
 * from a line that is known.
 */
import { describe, expect, it } from 'vitest';
import { likeliestIntervals, medianInterval } from '../../../src/core/life/likeliestIntervals.ts';
import { likeliestLine, type Tested } from '../../../src/core/life/likeliestLine.ts';
import type { Interval } from '../../../src/core/life/regression.ts';
import { chanceOf, drawsOf, isIn, type Normals } from '../../support/countedLives.ts';

const RUNS = 400;
const SURE = 0.9;
/** Three standard deviations of a binomial law. */
const BY_CHANCE = chanceOf(SURE, RUNS);

function hits(runs: readonly boolean[]): number {
  return runs.filter(Boolean).length / runs.length;
}

const TRUE_LINE = { intercept: -1.5, slope: -3.2, sigma: 0.4 } as const;
const STRAINS = [0.02, 0.04, 0.06, 0.09] as const;
const ASKED_AT = 0.03;

function testedOnce({ normal }: Normals, count: number, stop: number): readonly Tested[] {
  return Array.from({ length: count }, (_, i) => {
    const strain = STRAINS[i % STRAINS.length]!;
    const life = 10 ** (TRUE_LINE.intercept + TRUE_LINE.slope * Math.log10(strain) + TRUE_LINE.sigma * normal());
    return { strain, cycles: Math.min(life, stop), whole: life > stop };
  });
}

/**
 * Degrees of freedom are counted by strips that broke, so that intervals of A, B and the median may be somewhat wide with run-outs:
 * at most 93 in 100 where 90 are stated.
 */
const MOST_WIDE = 0.93;

describe.each([
  ['all broke, eight strips', 8, Infinity],
  ['all broke, twenty strips', 20, Infinity],
  ['a quarter still whole, twelve strips', 12, 2000],
  ['a third still whole, thirty strips', 30, 1200],
] as const)('likelihood: %s', (_, count, stop) => {
  const draws = drawsOf(20_261_125 + count);
  const runs = Array.from({ length: RUNS }, () => testedOnce(draws, count, stop)).flatMap((tested) => {
    const line = likeliestLine(tested);
    if (!line.ok) return [];
    const { low, high } = medianInterval(line.value, ASKED_AT, SURE);
    return [{ ...likeliestIntervals(line.value, SURE), median: [low, high] as Interval }];
  });

  it('finds a line nearly always', () => {
    expect(runs.length).toBeGreaterThan(0.99 * RUNS);
  });

  it.each([
    ['intercept', TRUE_LINE.intercept],
    ['slope', TRUE_LINE.slope],
    ['sigma', TRUE_LINE.sigma],
    ['median', 10 ** (TRUE_LINE.intercept + TRUE_LINE.slope * Math.log10(ASKED_AT))],
  ] as const)('the interval of %s holds as stated', (name, truth) => {
    const share = hits(runs.map((run) => isIn(truth, run[name])));
    expect(share).toBeGreaterThan(SURE - BY_CHANCE);
    expect(share).toBeLessThan((stop === Infinity ? SURE : MOST_WIDE) + BY_CHANCE);
  });
});
