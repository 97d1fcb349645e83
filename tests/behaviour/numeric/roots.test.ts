import { describe, expect, it } from 'vitest';
import { findRoot } from '../../../src/core/numeric/roots.ts';
import { expectClose } from '../../support/close.ts';

/** Functions whose root is known, some of them unkind: flat, steep, kinked, with the root at an end. */
const KNOWN: readonly [string, (x: number) => number, number, number, number][] = [
  ['√2', (x) => x * x - 2, 0, 2, Math.SQRT2],
  ['a falling function', (x) => Math.exp(-x) - 0.5, 0, 10, Math.LN2],
  ['a triple root', (x) => (x - 1) ** 3, -3, 4, 1],
  ['a steep wall', (x) => Math.expm1(40 * (x - 0.3)), 0, 1, 0.3],
  ['a flat approach', (x) => x ** 9, -1, 1.7, 0],
  ['a kink', (x) => (x < 0.4 ? 1e-3 * (x - 0.4) : 50 * (x - 0.4)), 0, 1, 0.4],
  ['a root at the low end', (x) => x, 0, 5, 0],
  ['a root at the high end', (x) => x - 5, 0, 5, 5],
  ['a bracket given the wrong way round', (x) => x - 1, 4, -3, 1],
];

describe('a root between two points of different sign', () => {
  it.each(KNOWN)('%s', (_, f, low, high, root) => {
    const found = findRoot(f, low, high, 1e-10);
    if (!found.ok) throw new Error(found.problems[0].message);
    // A bracket can be no narrower than the function is flat: (1e-2)⁹ and (1e-5)³ are still told from nothing.
    expectClose(found.value.value, root, { abs: 1e-9, because: 'ten times the tolerance asked for' });
    expect(found.value.residual).toBe(f(found.value.value));
    expect(found.value.iterations).toBeLessThanOrEqual(100);
  });

  it('takes few steps where the function is smooth', () => {
    const found = findRoot((x) => Math.cos(x) - x, 0, 1, 1e-14);
    expect(found.ok && found.value.iterations).toBeLessThan(12);
  });
});

describe('no root can be bracketed', () => {
  it.each<[string, (x: number) => number]>([
    ['equal signs', (x) => x * x + 1],
    ['not a number at an end', (x) => Math.sqrt(x - 0.5)],
    ['not a number inside', (x) => (Math.abs(x - 0.5) < 0.2 ? NaN : x - 0.3)],
  ])('%s', (_, f) => {
    const found = findRoot(f, 0, 1, 1e-9);
    expect(found.ok).toBe(false);
    expect(!found.ok && found.problems[0].code).toBe('no-answer');
  });
});
