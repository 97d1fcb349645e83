/**
 * Source [wide-strip]: moment of a wide strip bent to a cylinder. The figures of checkvalues/A.json were computed
 * outside this program from F by its derivative, and confirmed there against a numerical boundary-value solution
 * and an energy minimisation. This program writes F + (x/4)·dF/dx out in one expression; the test differentiates F numerically.
 */
import { describe, expect, it } from 'vitest';
import { momentRatio } from '../../src/core/closedForms/leafTorque.ts';
import { checkValues, expectRow, input } from '../support/checkValues.ts';
import { expectClose } from '../support/close.ts';

const ROWS = checkValues('A', 'A-searle-');

const energyFunction = (x: number): number => ((2 / x) * (Math.cosh(x) - Math.cos(x))) / (Math.sinh(x) + Math.sin(x));

const argument = (searle: number, poisson: number): number => (3 * (1 - poisson ** 2)) ** 0.25 * Math.sqrt(searle);

const searleAt = (x: number): number => x ** 2 / Math.sqrt(3 * (1 - 0.35 ** 2));

describe('moment ratio of a strip with free edges', () => {
  it.each(ROWS)('$id', (row) => {
    expectRow(row, momentRatio(input(row, 'searle'), input(row, 'nu')));
  });

  it.each(ROWS)('$id: the moment belongs to the derivative of the energy', (row) => {
    const [searle, poisson] = [input(row, 'searle'), input(row, 'nu')];
    const x = argument(searle, poisson);
    const step = 1e-4 * x;
    const slope = (energyFunction(x + step) - energyFunction(x - step)) / (2 * step);
    const byEnergy = (1 - poisson ** 2 * (energyFunction(x) + (x / 4) * slope)) / (1 - poisson ** 2);
    expectClose(momentRatio(searle, poisson), byEnergy, { rel: 1e-7, because: 'numerical derivative' });
  });

  it.each(ROWS.filter((row) => input(row, 'searle') >= 1))(
    '$id: putting the energy function F itself into the moment misses the figure',
    (row) => {
      const [searle, poisson] = [input(row, 'searle'), input(row, 'nu')];
      const slip = (1 - poisson ** 2 * energyFunction(argument(searle, poisson))) / (1 - poisson ** 2);
      expect(Math.abs(slip - row.expected[0]!)).toBeGreaterThan(1e3 * row.tolerance.rel * row.expected[0]!);
    },
  );

  it('goes from 1 to the plate limit without overflow', () => {
    const plate = 1 / (1 - 0.35 ** 2);
    expect(momentRatio(0, 0.35)).toBe(1);
    expectClose(momentRatio(1e-12, 0.35), 1, { abs: 1e-15, because: 'round-off' });
    for (const searle of [1e7, 1e12, 1e300]) {
      expectClose(momentRatio(searle, 0.35), plate, { rel: 1e-4, because: 'the rest is ν²·3/(2x), 8e-5 at S = 1e7' });
    }
  });

  it('is continuous where the asymptote takes over', () => {
    expectClose(momentRatio(searleAt(39.999999), 0.35), momentRatio(searleAt(40.000001), 0.35), {
      rel: 1e-9,
      because: 'the slope between the two points',
    });
  });

  /** Practical reading given with the formula: S < 1 narrow, within 1 %; S > 100 wide, over 88 % of the stiffening there. */
  it('is narrow below S = 1 and wide above S = 100', () => {
    const plate = 1 / (1 - 0.42 ** 2);
    expect(momentRatio(1, 0.42)).toBeLessThan(1.01);
    expect((momentRatio(100, 0.42) - 1) / (plate - 1)).toBeGreaterThan(0.88);
  });
});
