import { describe, expect, it } from 'vitest';
import { splitLogNormal, triangular } from '../../../src/core/numeric/distributions.ts';
import { normalCdf } from '../../../src/core/numeric/normal.ts';
import { expectClose } from '../../support/close.ts';

const RANGE = { low: 700, typical: 1000, high: 1200 };

describe('a value between low and high', () => {
  it('is log-normal on either side', () => {
    expectClose(splitLogNormal(RANGE, 0.5), 1000, { rel: 1e-12, because: 'round-off' });
    expectClose(splitLogNormal(RANGE, normalCdf(-1.2815515655446004 * 2)), 490, { rel: 1e-9, because: '1000·0.7²' });
    expectClose(splitLogNormal(RANGE, normalCdf(1.2815515655446004 * 2)), 1440, { rel: 1e-9, because: '1000·1.2²' });
  });

  it('has no spread on a side without one', () => {
    expect(splitLogNormal({ ...RANGE, high: 1000 }, 0.99)).toBe(1000);
    expect(splitLogNormal({ ...RANGE, high: 1000 }, 0.01)).toBeLessThan(700);
  });
});

describe('a value likeliest at its mode', () => {
  it.each([0, 0.3, 0.5, 1])('has the share below it that the triangle has: mode %f', (mode) => {
    for (const share of [0.01, 0.2, 0.5, 0.7, 0.99]) {
      const x = triangular(mode, share);
      const below = x <= mode ? x ** 2 / mode : 1 - (1 - x) ** 2 / (1 - mode);
      expectClose(below, share, { abs: 1e-12, because: 'round-off' });
    }
  });
});
