import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  angleTopDeg,
  lengthRange,
  lengthStops,
  lifeDomain,
  niceSteps,
  strainTop,
} from '../../../src/ui/charts/domains.ts';
import { length } from '../../support/generators.ts';

describe('paper of strain against life', () => {
  it('shows 10 to 10 million cycles and 0.3 to 30 % for a usual joint', () => {
    expect(lifeDomain({ cycles: [5000, 24_000], strains: [0.0214, 0.072, 0.0068] })).toEqual({
      cycles: [10, 1e7],
      strain: [0.003, 0.3],
    });
  });

  it('goes down to one cycle when the joint or the brief needs it', () => {
    expect(lifeDomain({ cycles: [5000, 3], strains: [0.1] }).cycles).toEqual([1, 1e7]);
    expect(lifeDomain({ cycles: [1, 24_000], strains: [0.1] }).cycles).toEqual([1, 1e7]);
  });

  it('goes up for a rubber whose whole curve lies above 30 %, and down for strains that hardly are any', () => {
    expect(lifeDomain({ cycles: [5000], strains: [0.18, 0.5] }).strain).toEqual([0.003, 1]);
    expect(lifeDomain({ cycles: [5000], strains: [0.0012, 0.02] }).strain).toEqual([0.001, 0.3]);
  });

  it('takes no notice of a joint that does not strain', () => {
    expect(lifeDomain({ cycles: [5000], strains: [0, 0.02] }).strain).toEqual([0.003, 0.3]);
  });
});

describe('paper of strain against flexing length', () => {
  it('shows 4 to 30 mm in half millimetres for a usual leaf, whatever its length exactly', () => {
    for (const at of [6.5, 12, 26.5]) expect(lengthRange(at, 'mm')).toEqual({ span: [4, 30], snap: 0.5 });
  });

  it('shows 1 to 8 mm in tenths for a short one', () => {
    expect(lengthRange(2, 'mm')).toEqual({ span: [1, 8], snap: 0.1 });
  });

  it('steps by round parts of an inch when lengths are in inches', () => {
    expect(lengthRange(12, 'inch').snap / 25.4).toBeCloseTo(0.02, 12);
    expect(lengthRange(2, 'inch').snap / 25.4).toBeCloseTo(0.005, 12);
  });

  it('always has the joint well inside the paper', () => {
    fc.assert(
      fc.property(length(0.25, 180), (at) => {
        const { span } = lengthRange(at, 'mm');
        const share = (at - span[0]) / (span[1] - span[0]);
        expect(share).toBeGreaterThan(0.03);
        expect(share).toBeLessThan(0.95);
      }),
    );
  });

  it('has rising stops over all papers, none further apart than a fifth of the length', () => {
    const stops = lengthStops([0.5, 200], 'mm');
    expect(stops[0]).toBe(0.5);
    expect(stops.at(-1)).toBe(200);
    stops.slice(1).forEach((stop, i) => {
      const before = stops[i] as number;
      expect(stop).toBeGreaterThan(before);
      expect(stop - before).toBeLessThanOrEqual(before / 5);
    });
  });
});

describe('strain axis of strain against flexing length', () => {
  it('is 8, 16 or 32 % and doubles of it', () => {
    expect(strainTop(0.035, 0.0214)).toBe(0.08);
    expect(strainTop(0.035, 0.07)).toBe(0.16);
    expect(strainTop(0.1, 0.2)).toBe(0.32);
    expect(strainTop(0.022, 0.78)).toBe(1.28);
  });

  it('is finer where all that matters would lie at the foot of 8 %', () => {
    expect(strainTop(0.035, 0.0077)).toBe(0.04);
    expect(strainTop(0.009, 0.004)).toBe(0.02);
  });
});

describe('axes of effort against movement', () => {
  it('shows 60° or more in thirties, and 30° for joints that move little', () => {
    expect([12, 35, 90, 180, 360].map(angleTopDeg)).toEqual([30, 60, 120, 210, 420]);
  });

  it('steps by 1, 2 or 5, at most five times', () => {
    expect(niceSteps(31)).toEqual({ step: 10, top: 40 });
    expect(niceSteps(0.23)).toEqual({ step: 0.05, top: 0.25 });
    expect(niceSteps(1000)).toEqual({ step: 200, top: 1000 });
  });

  it('always covers what it must, with at most a step to spare', () => {
    fc.assert(
      fc.property(length(0.001, 5000), (most) => {
        const { step, top } = niceSteps(most);
        expect(top).toBeGreaterThanOrEqual(most * (1 - 1e-9));
        expect(top - most).toBeLessThan(step);
        expect(top / step).toBeLessThanOrEqual(5 + 1e-9);
      }),
    );
  });
});
