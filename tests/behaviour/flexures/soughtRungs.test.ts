/** Ladders of values, and what follows from a value that is tried. */
import { describe, expect, it } from 'vitest';
import { padFor, roundedUp, typicalBut } from '../../../src/core/flexures/following.ts';
import { rowAlong } from '../../../src/core/flexures/rowRoom.ts';
import { ladder, upTo } from '../../../src/core/flexures/rungs.ts';
import { straightLeaf } from '../../../src/core/flexures/straightLeaf.ts';

describe('a ladder', () => {
  it('is fine below and coarse above, each stretch from where the last one ended', () => {
    expect(ladder(2, [4, 0.5], [10, 2], [30, 10])).toEqual([2, 2.5, 3, 3.5, 4, 6, 8, 10, 20, 30]);
  });

  it('has rungs without round-off', () => {
    expect(ladder(0, [0.5, 0.1])).toEqual([0, 0.1, 0.2, 0.3, 0.4, 0.5]);
  });

  it('ends where it is cut off', () => {
    expect(upTo([1, 2, 3, 4, 6], 3)).toEqual([1, 2, 3]);
  });
});

describe('what follows', () => {
  it('is typical unless it is tried', () => {
    expect(typicalBut(straightLeaf, { length: 30 })).toMatchObject({ length: 30, lines: 2, depth: 6, fillet: 0.8 });
  });

  it('is rounded up to half a millimetre, and not for the last digit of a product', () => {
    expect(roundedUp(2.44)).toBe(2.5);
    expect(roundedUp(2.5)).toBe(2.5);
    expect(roundedUp(5 * 0.3 * (1 + 1e-12))).toBe(1.5);
  });

  it('is a pad as thick as usual, as both fillets ask for, or as twice what bends', () => {
    expect(padFor(4, 0.84, 1.6)).toBe(4);
    expect(padFor(4, 1.26, 4)).toBe(5.5);
    expect(padFor(4, 2.52, 1)).toBe(5.5);
  });

  it('counts in a row the pads between, and not those at the ends', () => {
    expect(rowAlong(1, 10, 0.84)).toBe(10);
    // Three of 10 mm and two pads that are drawn 2.5 mm long.
    expect(rowAlong(3, 10, 0.84)).toBe(35);
  });
});
