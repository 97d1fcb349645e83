import { describe, expect, it } from 'vitest';
import { additiveShares } from '../../../src/core/numeric/additiveShares.ts';
import { normalQuantile } from '../../../src/core/numeric/normal.ts';
import { sampleCube, SAMPLINGS, type SamplingHow } from '../../../src/core/numeric/sampling.ts';
import { expectClose } from '../../support/close.ts';
import { pickFreeze } from '../../support/pickFreeze.ts';

type Figure = (z: readonly number[]) => number;

function sharesOf(figure: Figure, inputs: number, how: SamplingHow = 'quasi-random') {
  const points = sampleCube(how, 4096, inputs, 1).sets.flat();
  const normal = points.map((point) => point.map(normalQuantile));
  return additiveShares(normal, normal.map(figure));
}

describe('shares of a variance', () => {
  it.each(SAMPLINGS)('are those of a sum, whatever the points: %s', (how) => {
    const weights = [3, 2, 1, 0];
    const { variance, alone, together } = sharesOf(
      (z) => weights.reduce((sum, w, i) => sum + w * (z[i] ?? 0), 0),
      4,
      how,
    );
    expectClose(variance, 14, { rel: 1e-9, because: 'a sum is fitted exactly' });
    for (const [i, w] of weights.entries()) {
      expectClose(alone[i] ?? 0, (w * w) / 14, { abs: 1e-9, because: 'a sum is fitted exactly' });
    }
    expect(together).toBeLessThan(1e-12);
  });

  it('tell apart what inputs do alone and together', () => {
    // x·y + x: variances 1 together and 1 by x alone.
    const { alone, together } = sharesOf(([x = 0, y = 0]) => x * y + x, 2);
    const because = 'what is left is as noise to the fit of 4096 points';
    expectClose(alone[0] ?? 0, 0.5, { abs: 0.03, because });
    expectClose(alone[1] ?? 0, 0, { abs: 0.03, because });
    expectClose(together, 0.5, { abs: 0.03, because });
  });

  it.each<[string, Figure]>([
    ['logarithms with a bend', ([x = 0, y = 0, z = 0]) => Math.log(1 + Math.exp(x) + Math.exp(2 * y)) + 0.3 * z],
    ['the larger of two', ([x = 0, y = 0, z = 0]) => Math.max(x, 0.5 * y) + 0.5 * Math.abs(z)],
    ['a leap', ([x = 0, y = 0, z = 0]) => x + (y > 1 ? 1 : 0) + 0.2 * z],
  ])('agree with picking and freezing: %s', (_, figure) => {
    const { variance, alone, together } = sharesOf(figure, 3);
    const frozen = pickFreeze((point) => figure(point.map(normalQuantile)), 3, 16_384);
    expectClose(variance, frozen.variance, { rel: 0.02, because: 'two samples' });
    // A corner or a leap is not met by a polynomial of fourth degree.
    const because = 'two samples, and what no polynomial of fourth degree follows counts as made together';
    for (const [i, share] of frozen.alone.entries()) expectClose(alone[i] ?? 0, share, { abs: 0.05, because });
    expectClose(
      alone.reduce((sum, share) => sum + share, together),
      1,
      { abs: 1e-9, because: 'round-off' },
    );
  });

  it('are none where nothing varies', () => {
    expect(sharesOf(() => 7, 2).alone.every((share) => share < 1e-9)).toBe(true);
    expect(additiveShares([[], [], []], [1, 1, 1])).toEqual({ variance: 0, alone: [], together: 0 });
  });
});
