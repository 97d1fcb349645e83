import { describe, expect, it } from 'vitest';
import { NOTCH_SENSITIVITY, rootFactor } from '../../../src/core/strength/rootFactor.ts';
import { shoulderConcentration } from '../../../src/core/strength/stressConcentration.ts';
import { expectClose } from '../../support/close.ts';

const root = (shoulder: number, fillet: number) => shoulderConcentration('bending', 0.84, shoulder, fillet);

describe('concentration at the root of a leaf', () => {
  it('is 1 without a step', () => {
    expect(root(0.84, 0)).toEqual({ factor: 1, outsideTable: false });
    expect(root(0.5, 0.3)).toEqual({ factor: 1, outsideTable: false });
  });

  it('is finite for a sharp root, worse than for any fillet in the table, and says that it is outside', () => {
    const sharp = root(4, 0);
    expect(sharp.outsideTable).toBe(true);
    // h/r = 20 at a pad three leaves thick, by the printed coefficients
    expectClose(sharp.factor, 2.387, { printedTo: 3 });
    expect(sharp.factor).toBeGreaterThan(root(4, 0.08).factor);
    expect(root(4, 0.08).outsideTable).toBe(false);
  });

  it('is at the edge of the table for a fillet larger than ten steps', () => {
    expect(root(1, 0.8)).toMatchObject({ outsideTable: false });
    expect(root(1, 0.801).outsideTable).toBe(true);
    expect(root(1, 50).factor).toBe(root(1, 0.801).factor);
  });

  it('counts only as much of a huge pad as the table reaches, so that a huger one does not relieve the root', () => {
    const reached = root(0.84 + 40 * 0.2, 0.2);
    expect(reached.outsideTable).toBe(false);
    expect(root(50, 0.2).outsideTable).toBe(true);
    expectClose(root(50, 0.2).factor, reached.factor, { rel: 1e-12, because: 'round-off' });
  });

  it('agrees with the handbook that a pad thicker than three leaves hardly raises it', () => {
    const [three, six] = [3, 6].map((pad) => shoulderConcentration('bending', 1, pad, 0.3).factor);
    expectClose(six!, three!, { rel: 0.01, because: 'saturation, read off the handbook’s charts' });
  });
});

describe('what is applied to strain', () => {
  it('is the assumed share of the peak', () => {
    expect(rootFactor(1.5, 0)).toBe(1);
    expect(rootFactor(1.5, 1)).toBe(1.5);
    expect(rootFactor(1.5, NOTCH_SENSITIVITY.value)).toBe(1.25);
  });

  it('is marked as an assumption from memory', () => {
    expect(NOTCH_SENSITIVITY.provenance.kind).toBe('memory');
    expect(NOTCH_SENSITIVITY.provenance.because).toBeTruthy();
  });
});
