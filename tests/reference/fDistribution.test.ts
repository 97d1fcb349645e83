/**
 * Source [f-distribution]: the npm package jstat, which has its own incomplete beta function and its own search for
 * quantiles; and the values of Student's t and F that any table prints.
 */
import { jStat } from 'jstat';
import { describe, expect, it } from 'vitest';
import { fQuantile, incompleteBeta, studentQuantile } from '../../src/core/numeric/fDistribution.ts';
import { expectClose } from '../support/close.ts';

const BY_JSTAT = {
  rel: 1e-6,
  because: 'jstat stops its search for a quantile at about 1e-8, and says so nowhere',
} as const;

describe('share of a beta distribution', () => {
  it.each([
    [0.5, 2, 3],
    [0.1, 0.5, 0.5],
    [0.9, 3.5, 1],
    [0.999, 0.5, 40],
    [0.3, 60, 120],
    [1e-6, 0.5, 3],
  ])('below %s with %s and %s', (x, a, b) => {
    const stops = { rel: 1e-7, because: 'jstat breaks its continued fraction off at 3e-7 of a step' } as const;
    expectClose(incompleteBeta(x, a, b), jStat.beta.cdf(x, a, b), stops);
  });

  it('is a sum of binomial terms where both shapes are whole', () => {
    // C(n, j)·x^j·(1 − x)^(n − j) from j = 60 on, n = 179, x = 0.3
    let [term, sum] = [0.7 ** 179, 0];
    for (let j = 0; j <= 179; j++) {
      if (j >= 60) sum += term;
      term *= ((179 - j) / (j + 1)) * (0.3 / 0.7);
    }
    expectClose(incompleteBeta(0.3, 60, 120), sum, { rel: 1e-11, because: 'round-off in 179 products' });
  });

  it('is 0 and 1 at the ends, and a power where one shape is 1', () => {
    expect([incompleteBeta(0, 2, 3), incompleteBeta(1, 2, 3)]).toEqual([0, 1]);
    expectClose(incompleteBeta(0.3, 2.5, 1), 0.3 ** 2.5, { rel: 1e-13, because: 'round-off in three logarithms of Γ' });
  });
});

describe('Student’s t', () => {
  it.each([
    [0.975, 1, 12.706, 3],
    [0.975, 2, 4.303, 3],
    [0.975, 7, 2.365, 3],
    [0.95, 10, 1.812, 3],
    [0.995, 30, 2.75, 3],
    [0.975, 120, 1.98, 3],
  ])('%s with %s degrees of freedom, as tables print it', (share, freedom, t, printedTo) => {
    expectClose(studentQuantile(share, freedom), t, { printedTo });
  });

  it.each([1, 2, 4, 7, 25, 200])('agrees with jstat with %s degrees of freedom', (freedom) => {
    for (const share of [0.55, 0.8, 0.9, 0.975, 0.999]) {
      expectClose(studentQuantile(share, freedom), jStat.studentt.inv(share, freedom), BY_JSTAT);
    }
  });

  it('is symmetric', () => {
    expect(studentQuantile(0.5, 3)).toBe(0);
    expectClose(studentQuantile(0.1, 3), -studentQuantile(0.9, 3), { rel: 1e-12, because: 'round-off' });
  });
});

describe('F', () => {
  it.each([
    [0.95, 2, 7, 4.7374, 4],
    [0.95, 2, 5, 5.7861, 4],
    [0.99, 3, 12, 5.9525, 4],
    [0.95, 1, 1, 161.45, 2],
  ])('%s with %s and %s degrees of freedom, as tables print it', (share, above, below, f, printedTo) => {
    expectClose(fQuantile(share, above, below), f, { printedTo });
  });

  it.each([
    [2, 7],
    [1, 4],
    [5, 3],
    [20, 60],
  ])('agrees with jstat with %s and %s degrees of freedom', (above, below) => {
    for (const share of [0.05, 0.5, 0.9, 0.99]) {
      expectClose(fQuantile(share, above, below), jStat.centralF.inv(share, above, below), BY_JSTAT);
    }
  });

  it('leaves the share below it that it was asked for', () => {
    for (const share of [1e-6, 0.3, 0.7, 1 - 1e-9]) {
      const ratio = (3 / 8) * fQuantile(share, 3, 8);
      expectClose(incompleteBeta(ratio / (1 + ratio), 1.5, 4), share, { rel: 1e-10, because: 'round-off' });
    }
  });

  it.each([0, 1, Number.NaN])('a share of %s is a mistake of the caller', (share) => {
    expect(() => fQuantile(share, 2, 3)).toThrow(RangeError);
  });
});
