/**
 * Source [two-bar-truss]: snap-through of a two-bar truss after R. von Mises; standard texts. The rows of
 * checkvalues/I.json are closed forms whose optimum was found numerically outside this program; here the force of the limit
 * is compared with the largest of the force itself.
 */
import { describe, expect, it } from 'vitest';
import {
  shallowTrussForce,
  shallowTrussLimit,
  trussForce,
  trussLimit,
} from '../../src/core/closedForms/twoBarTruss.ts';
import { checkValues, expectRow, input } from '../support/checkValues.ts';
import { expectClose } from '../support/close.ts';

const ROWS = checkValues('I', 'I-vm-');

describe('the snap of a two-bar truss', () => {
  it.each(ROWS)('$id', (row) => {
    const [halfSpan, rise] = [input(row, 'half_span'), input(row, 'rise')];
    const { force, travel } = trussLimit(halfSpan, rise);
    expectRow(row, force, travel, shallowTrussLimit(halfSpan, rise).force);
  });

  it.each(ROWS)('$id: the limit is the largest of the force', (row) => {
    const [halfSpan, rise] = [input(row, 'half_span'), input(row, 'rise')];
    for (const [limit, forceAt] of [
      [trussLimit(halfSpan, rise), trussForce],
      [shallowTrussLimit(halfSpan, rise), shallowTrussForce],
    ] as const) {
      expectClose(forceAt(halfSpan, rise, limit.travel), limit.force, { rel: 1e-12, because: 'round-off' });
      expect(forceAt(halfSpan, rise, 0.99 * limit.travel)).toBeLessThan(limit.force);
      expect(forceAt(halfSpan, rise, 1.01 * limit.travel)).toBeLessThan(limit.force);
    }
  });

  it.each(ROWS)('$id: the force is the one of the bars shortened', (row) => {
    const [halfSpan, rise] = [input(row, 'half_span'), input(row, 'rise')];
    const made = Math.hypot(halfSpan, rise);
    for (const share of [0.3, 0.9, 1.4, 2.2]) {
      const left = rise * (1 - share);
      const now = Math.hypot(halfSpan, left);
      const plain = 2 * (1 / now - 1 / made) * left;
      expectClose(trussForce(halfSpan, rise, share * rise), plain, { rel: 1e-10, because: 'round-off of 1/l − 1/l₀' });
    }
  });

  it('has no force as made, flat and mirrored', () => {
    expect([0, 0.3, 0.6].map((travel) => Math.abs(trussForce(1, 0.3, travel)) < 1e-15)).toEqual([true, true, true]);
    expect([0, 0.3, 0.6].map((travel) => Math.abs(shallowTrussForce(1, 0.3, travel)) < 1e-15)).toEqual([
      true,
      true,
      true,
    ]);
  });

  it('of little rise is the shallow one', () => {
    const { force, travel } = trussLimit(100, 1);
    const shallow = { rel: 2e-4, because: 'the next term, of the order of (H/a)²' };
    expectClose(force, shallowTrussLimit(100, 1).force, shallow);
    expectClose(travel, shallowTrussLimit(100, 1).travel, shallow);
  });
});
