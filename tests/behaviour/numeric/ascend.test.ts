/** Small tools of the statistics: the top of a hill, small symmetric matrices, the far tail of the normal law. */
import { jStat } from 'jstat';
import { describe, expect, it } from 'vitest';
import { ascend } from '../../../src/core/numeric/ascend.ts';
import { normalCdf } from '../../../src/core/numeric/normal.ts';
import { hazard, logTail } from '../../../src/core/numeric/normalTail.ts';
import { choleskyRoot, inverseBy, solvedWith } from '../../../src/core/numeric/smallMatrix.ts';
import { expectClose } from '../../support/close.ts';

/** −cosh(x − 2) − (y + 1)⁴ − (y + 1)²: steep far out, where a bare step of Newton overshoots. */
const hill = ([x = 0, y = 0]: readonly number[]) => ({
  value: -Math.cosh(x - 2) - (y + 1) ** 4 - (y + 1) ** 2,
  gradient: [-Math.sinh(x - 2), -4 * (y + 1) ** 3 - 2 * (y + 1)],
  curvature: [
    [-Math.cosh(x - 2), 0],
    [0, -12 * (y + 1) ** 2 - 2],
  ],
});

const endless = ([x = 0]: readonly number[]) => ({ value: x, gradient: [1], curvature: [[0]] });

describe('the top of a hill', () => {
  it.each([
    [0, 0],
    [30, -40],
    [-7, 9],
  ])('is found from %d, %d', (...start) => {
    const { at, rests } = ascend(hill, start);
    expect(rests).toBe(true);
    expectClose(at[0]!, 2, { abs: 1e-12, because: 'round-off' });
    expectClose(at[1]!, -1, { abs: 1e-12, because: 'round-off' });
  });

  it('is that of the numbers that may change', () => {
    const { at } = ascend(hill, [5, 3], [1]);
    expect(at[0]).toBe(5);
    expectClose(at[1]!, -1, { abs: 1e-12, because: 'round-off' });
  });

  it('is not claimed of a slope without end', () => {
    expect(ascend(endless, [0]).rests).toBe(false);
  });
});

describe('a symmetric matrix', () => {
  const matrix = [
    [4, 2, 0.5],
    [2, 5, -1],
    [0.5, -1, 3],
  ];
  const root = choleskyRoot(matrix)!;

  it('is its root times its root', () => {
    for (const [i, row] of matrix.entries()) {
      for (const [j, value] of row.entries()) {
        const product = root[i]!.reduce((sum, one, k) => sum + one * root[j]![k]!, 0);
        expectClose(product, value, { abs: 1e-14, because: 'round-off' });
      }
    }
  });

  it('takes what is solved with it to what was given, and so does its inverse', () => {
    const right = [1, -2, 3];
    const solved = solvedWith(root, right);
    const inverse = inverseBy(root);
    for (const [i, row] of matrix.entries()) {
      expectClose(row.reduce((sum, one, j) => sum + one * solved[j]!, 0), right[i]!, { abs: 1e-13, because: 'round-off' }); // prettier-ignore
      expectClose(inverse[i]!.reduce((sum, one, j) => sum + one * right[j]!, 0), solved[i]!, { abs: 1e-13, because: 'round-off' }); // prettier-ignore
    }
  });

  it('has no root where it is not positive', () => {
    expect(choleskyRoot([[1, 2], [2, 1]])).toBeUndefined(); // prettier-ignore
    expect(choleskyRoot([[Number.NaN]])).toBeUndefined();
  });
});

describe('the tail of the normal law', () => {
  it.each([-9, -4.1, -1, 0, 0.5, 3.9, 4.1, 6])('is that of an independent library at %d', (z) => {
    const theirs = Math.log(jStat.normal.cdf(-z, 0, 1));
    const abs = 1e-7 * Math.max(1, Math.abs(theirs));
    expectClose(logTail(z), theirs, { abs, because: 'the library gives eight figures of erfc' });
  });

  it.each([-20, -4, -0.3, 2, 3.999, 4.001, 10, 38, 1000])('falls as its hazard says at %d, and stays finite', (z) => {
    const step = 1e-4 * Math.max(1, Math.abs(z)) ** 0.5;
    const fall = -(logTail(z + step) - logTail(z - step)) / (2 * step);
    expectClose(fall, hazard(z), { abs: 1e-6 * Math.max(1, hazard(z)), because: 'a difference quotient' });
    expect(Number.isFinite(logTail(z))).toBe(true);
  });

  it('meets the share itself where both are good', () => {
    expectClose(Math.exp(logTail(5)), normalCdf(-5), { rel: 1e-13, because: 'round-off' });
  });
});
