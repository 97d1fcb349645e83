import { describe, expect, it } from 'vitest';
import { normalCdf, normalQuantile } from '../../../src/core/numeric/normal.ts';
import { expectClose } from '../../support/close.ts';

describe('normal distribution', () => {
  it('stays within 0 and 1 far out, and keeps figures in the lower tail', () => {
    expect(normalCdf(-Infinity)).toBe(0);
    expect(normalCdf(Infinity)).toBe(1);
    expect(normalCdf(40)).toBe(1);
    expect(normalCdf(-38)).toBeGreaterThan(0);
  });

  it('is continuous where the series hands over to the continued fraction', () => {
    const [inside, outside] = [normalCdf(-3.9999999), normalCdf(-4.0000001)];
    expectClose(inside / outside, 1, { abs: 1e-6, because: 'slope of ln Φ times the gap, 8e-7' });
  });

  it.each([0, 1, -0.1, 1.1, NaN])('refuses a share of %s', (share) => {
    expect(() => normalQuantile(share)).toThrow(RangeError);
  });
});
