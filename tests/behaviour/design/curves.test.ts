import { describe, expect, it } from 'vitest';
import {
  firstFlexStrain,
  medianLifeAt,
  medianLifeFor,
  spreadOfCycles,
  strainSpreadAtCycles,
} from '../../../src/core/design/curves.ts';
import { radians } from '../../../src/core/units.ts';
import { expectClose } from '../../support/close.ts';
import { assessed, changed, CREASE, LEAF } from '../../support/joints.ts';

const SOLVED = { rel: 1e-6, because: 'the life curve is inverted by root finding' } as const;

describe('strain against life read along the strain axis', () => {
  const a = assessed(LEAF);

  it('gives strains whose early, median and late failures come at those cycles', () => {
    const { low, typical, high } = strainSpreadAtCycles(a, 5000);
    const spreadAt = (strain: number) => spreadOfCycles(a, medianLifeAt(a, strain)).total;
    expectClose(spreadAt(low).p10, 5000, SOLVED);
    expectClose(spreadAt(typical).p50, 5000, SOLVED);
    expectClose(spreadAt(high).p90, 5000, SOLVED);
  });

  it('names no strain above the one that breaks on the first flex', () => {
    const pla = assessed(changed(LEAF, { profile: { filament: 'pla' } }));
    expect(firstFlexStrain(pla)).toBe(0.2);
    expect(strainSpreadAtCycles(pla, 1).high).toBe(0.2);
  });

  it('breaks on the first flex at less when flexed both ways, by √2', () => {
    const both = assessed(changed(LEAF, { movement: { ways: 'both ways' } }));
    expectClose(firstFlexStrain(a) / firstFlexStrain(both), Math.SQRT2, {
      rel: 1e-12,
      because: 'round-off; (1 − R)^γ = 2^0.5',
    });
  });
});

function lifeWith(change: Parameters<typeof changed>[1]): number {
  return assessed(changed(LEAF, change)).life.median;
}

describe('median life of a changed joint', () => {
  it('is the life of the joint assessed with the change', () => {
    const a = assessed(LEAF);
    expectClose(medianLifeFor(a, { length: 20 }), lifeWith({ sizes: { length: 20 } }), SOLVED);
    expectClose(medianLifeFor(a, { count: 1 }), lifeWith({ sizes: { lines: 1 } }), SOLVED);
    expectClose(medianLifeFor(a, { amount: radians(50) }), lifeWith({ movement: { amount: radians(50) } }), SOLVED);
  });

  it('judges a section that the change makes thick as thick', () => {
    const thin = assessed(CREASE);
    const thick = assessed(changed(CREASE, { sizes: { layers: 4 } }));
    expectClose(medianLifeFor(thin, { count: 4 }), thick.life.median, SOLVED);
  });
});
