/** The solver's one elimination: ways of giving by Sylvester's law of inertia, and solutions put back into their equations. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { eliminateOnce } from '../../../src/core/beam/elimination.ts';
import { expectClose } from '../../support/close.ts';

const value = fc.integer({ min: -40, max: 40 }).map((k) => k / 10);
const values = fc.array(value, { minLength: 1, maxLength: 9 }).chain((diagonal) =>
  fc.record({
    diagonal: fc.constant(diagonal),
    lean: fc.array(value, { minLength: diagonal.length ** 2, maxLength: diagonal.length ** 2 }),
    right: fc.array(value, { minLength: diagonal.length, maxLength: diagonal.length }),
  }),
);

/** L·D·Lᵀ with ones along the diagonal of L: by Sylvester's law it has as many negative values as D. */
function congruent(diagonal: readonly number[], lean: readonly number[]): Float64Array {
  const n = diagonal.length;
  const lower = (i: number, j: number) => (i === j ? 1 : i > j ? (lean[i * n + j] ?? 0) / 4 : 0);
  return Float64Array.from({ length: n * n }, (_, at) => {
    const [i, j] = [Math.floor(at / n), at % n];
    return diagonal.reduce((sum, d, k) => sum + lower(i, k) * d * lower(j, k), 0);
  });
}

const times = (matrix: Float64Array, x: Float64Array) =>
  x.map((_, i) => x.reduce((sum, part, j) => sum + matrix[i * x.length + j]! * part, 0));
const ROUND_OFF = {
  abs: 1e-8,
  because: 'round-off, enlarged by the ratio of largest to least value, at most 1e5 here',
};

const SOFT_BESIDE_STIFF = {
  rel: 2e-3,
  because: 'a spring 1e12 times softer than its neighbour is written with four figures in their sum',
};

describe('a symmetric square, eliminated once', () => {
  it('has as many negative values as the diagonal that it is congruent to', () => {
    fc.assert(
      fc.property(values, ({ diagonal, lean }) => {
        fc.pre(diagonal.every((d) => d !== 0));
        const { negative } = eliminateOnce(congruent(diagonal, lean), diagonal.length);
        expect(negative()).toBe(diagonal.filter((d) => d < 0).length);
      }),
    );
  });

  it('solves its equations and is left as it was', () => {
    fc.assert(
      fc.property(values, ({ diagonal, lean, right }) => {
        fc.pre(diagonal.every((d) => d !== 0));
        const matrix = congruent(diagonal, lean);
        const x = Float64Array.from(right);
        expect(eliminateOnce(matrix, x.length).solve(x)).toBe(true);
        times(matrix, x).forEach((b, i) => expectClose(b, right[i]!, ROUND_OFF));
        expect(matrix).toEqual(congruent(diagonal, lean));
      }),
    );
  });

  it('counts half of them where nothing stands on its diagonal', () => {
    fc.assert(
      fc.property(values, ({ diagonal, lean }) => {
        fc.pre(diagonal.every((d) => d !== 0));
        // Twice the same square off the diagonal, and nothing on it: every value comes with both signs.
        const n = diagonal.length;
        const inner = congruent(diagonal, lean);
        const paired = Float64Array.from({ length: 4 * n * n }, (_, at) => {
          const [i, j] = [Math.floor(at / (2 * n)), at % (2 * n)];
          if (i < n === j < n) return 0;
          return inner[(i % n) * n + (j % n)]!;
        });
        expect(eliminateOnce(paired, 2 * n).negative()).toBe(n);
      }),
    );
  });

  it('counts the values of a row of ones beside its diagonal, 2·cos(πk/(n + 1)), below any number and in any order', () => {
    const row = fc.integer({ min: 2, max: 40 }).chain((n) =>
      fc.record({
        below: fc.constantFrom(0, 0.5, 1e-5, -0.25).map((part) => part * Math.PI),
        order: fc.shuffledSubarray([...Array(n).keys()], { minLength: n }),
      }),
    );
    fc.assert(
      fc.property(row, ({ below, order }) => {
        const n = order.length;
        const expected = order.map((k) => 2 * Math.cos((Math.PI * (k + 1)) / (n + 1)) - below);
        fc.pre(expected.every((at) => Math.abs(at) > 1e-6));
        const matrix = Float64Array.from({ length: n * n }, (_, at) => {
          const [i, j] = [order[Math.floor(at / n)]!, order[at % n]!];
          return i === j ? -below : Number(Math.abs(i - j) === 1);
        });
        expect(eliminateOnce(matrix, n).negative()).toBe(expected.filter((at) => at < 0).length);
      }),
    );
  });

  it('finds a chain of springs firm however soft some are, and its end by the sum of what each gives', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: -6, max: 6 }), { minLength: 1, maxLength: 40 }), (powers) => {
        const n = powers.length;
        const stiffness = powers.map((power) => 10 ** power);
        const matrix = new Float64Array(n * n);
        stiffness.forEach((k, i) => {
          matrix[i * n + i] = k + (stiffness[i + 1] ?? 0);
          if (i > 0) [matrix[i * n + i - 1], matrix[(i - 1) * n + i]] = [-k, -k];
        });
        const moved = new Float64Array(n);
        moved[n - 1] = 1;
        const { negative, solve } = eliminateOnce(matrix, n);
        expect(negative()).toBe(0);
        expect(solve(moved)).toBe(true);
        const sum = stiffness.reduce((total, k) => total + 1 / k, 0);
        expectClose(moved[n - 1]!, sum, SOFT_BESIDE_STIFF);
      }),
    );
  });

  it('takes another order where a pivot is nothing', () => {
    const swap = Float64Array.from([0, 2, 2, 0]);
    const x = Float64Array.from([6, 4]);
    const { negative, solve } = eliminateOnce(swap, 2);
    expect(negative()).toBe(1);
    expect(solve(x)).toBe(true);
    expect([...x]).toEqual([2, 3]);
  });

  it('says that it is singular', () => {
    expect(eliminateOnce(new Float64Array(4), 2).solve(new Float64Array(2))).toBe(false);
  });
});

describe('a lopsided square', () => {
  it('solves its own equations and counts the values of its symmetric part', () => {
    const lopsided = Float64Array.from([1, 4, 0, -1]);
    const x = Float64Array.from([9, -2]);
    const { negative, solve } = eliminateOnce(lopsided, 2, true);
    expect(negative()).toBe(1);
    expect(solve(x)).toBe(true);
    expect([...x]).toEqual([1, 2]);
  });
});
