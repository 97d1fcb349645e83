import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { plasticMoment, residualSurfaceStress, setAfterOneBend } from '../../src/core/strength/permanentSet.ts';
import { rootFactor } from '../../src/core/strength/rootFactor.ts';
import { shoulderConcentration } from '../../src/core/strength/stressConcentration.ts';
import { expectClose } from '../support/close.ts';
import { length } from '../support/generators.ts';

const load = fc.constantFrom('bending' as const, 'tension' as const);
const setAfter = (ratio: number): number => setAfterOneBend(ratio, 1, 1).fraction;
const scale = fc.integer({ min: 10, max: 1000 }).map((n) => n / 100);

describe('concentration at a root', () => {
  it('is a number of 1 or more for any sizes, and no more than the table’s edge at no depth', () => {
    fc.assert(
      fc.property(load, length(0.05, 10), length(0, 200), length(0, 50), (how, t, shoulder, fillet) => {
        const { factor } = shoulderConcentration(how, t, shoulder, fillet);
        expect(factor).toBeGreaterThanOrEqual(1);
        // C1 at h/r = 20: a scratch-like step
        expect(factor).toBeLessThan(4.72);
      }),
    );
  });

  it('does not rise with the fillet', () => {
    fc.assert(
      fc.property(load, length(0.05, 10), length(0, 200), length(0, 50), length(0.001, 5), (how, t, d, r, more) => {
        const before = shoulderConcentration(how, t, d, r).factor;
        const after = shoulderConcentration(how, t, d, r + more).factor;
        // The branches of the fit meet within 0.001, and it ripples by less where it is nearly 1.
        expect(after).toBeLessThanOrEqual(before + 0.001);
      }),
    );
  });

  it('depends on proportions only', () => {
    fc.assert(
      fc.property(load, length(0.05, 10), length(0, 200), length(0.01, 50), scale, (how, t, d, r, s) => {
        const small = shoulderConcentration(how, t, d, r).factor;
        const large = shoulderConcentration(how, s * t, s * d, s * r).factor;
        // Round-off may put a size on the other side of h/r = 2, where the branches differ by up to 0.001.
        expectClose(large, small, { abs: 0.001, because: 'jump between the branches of the fit' });
      }),
    );
  });

  it('reaches strain in part', () => {
    fc.assert(
      fc.property(length(1, 5), fc.integer({ min: 0, max: 100 }), (concentration, percent) => {
        const factor = rootFactor(concentration, percent / 100);
        expect(factor).toBeGreaterThanOrEqual(1);
        expect(factor).toBeLessThanOrEqual(concentration * (1 + 1e-15));
      }),
    );
  });
});

describe('set after one bend', () => {
  const strain = fc.integer({ min: 0, max: 10_000 }).map((n) => n / 10_000);

  it('is a share from 0 to 1 that does not fall with strain', () => {
    fc.assert(
      fc.property(strain, length(20, 5000), length(2, 100), (e, modulus, yieldStress) => {
        const { fraction } = setAfterOneBend(e, modulus, yieldStress);
        expect(fraction).toBeGreaterThanOrEqual(0);
        expect(fraction).toBeLessThan(1);
        const more = setAfterOneBend(e + 0.0001, modulus, yieldStress).fraction;
        expect(more).toBeGreaterThanOrEqual(fraction - 1e-15);
      }),
    );
  });

  it('rises strictly past yield', () => {
    fc.assert(
      fc.property(length(1, 200), (ratio) => {
        expect(setAfter(ratio + 0.001)).toBeGreaterThan(setAfter(ratio));
      }),
    );
  });

  it('is what the elastic release of the moment leaves', () => {
    fc.assert(
      fc.property(length(0.001, 200), (ratio) => {
        const left = ratio - plasticMoment(ratio);
        const { fraction } = setAfterOneBend(ratio, 1, 1);
        expectClose(fraction * ratio, left, { abs: 1e-12, because: 'round-off' });
        expect(plasticMoment(ratio)).toBeLessThan(1.5);
        expect(residualSurfaceStress(ratio)).toBeGreaterThan(-0.5);
        expect(residualSurfaceStress(ratio)).toBeLessThanOrEqual(0);
      }),
    );
  });
});
