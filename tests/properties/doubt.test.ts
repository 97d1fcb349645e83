import fc from 'fast-check';
import { afterEach, describe, expect, it } from 'vitest';
import { assess } from '../../src/core/design/assess.ts';
import { bySolver } from '../../src/core/design/bySolver.ts';
import { doubtOf } from '../../src/core/design/doubt.ts';
import type { DoubtAnswer, DoubtAsked } from '../../src/core/design/doubtAnswer.ts';
import type { Joint } from '../../src/core/design/joint.ts';
import { rememberSolved } from '../../src/core/design/rememberSolved.ts';
import { doubtSigma, totalSigma } from '../../src/core/life/scatter.ts';
import { putOnShelf } from '../../src/core/material/shelf.ts';
import type { OwnFilament, Quantity } from '../../src/core/material/types.ts';
import { normalCdf, normalQuantile } from '../../src/core/numeric/normal.ts';
import { USUAL_SPREAD } from '../../src/core/print/spread.ts';
import { demoPart } from '../../src/store/demoPart.ts';
import { expectClose } from '../support/close.ts';
import { changed } from '../support/joints.ts';
import { ownPetg } from '../support/ownFilaments.ts';

const solve = rememberSolved(undefined, 400);
const ASKED: DoubtAsked = { spread: USUAL_SPREAD, samples: 256, how: 'quasi-random', seed: 1 };
const EXACT_SIZES = { lineWidth: 0, layers: 0, lengths: 0 };

function doubt(joint: Joint, asked: Partial<DoubtAsked> = {}): DoubtAnswer {
  const result = doubtOf(joint, { ...ASKED, ...asked }, { solve });
  if (!result.ok) throw new Error(result.problems[0].message);
  return result.value;
}

function demo(id: string): Joint {
  const joint = demoPart().joints.find((one) => one.id === id);
  if (!joint) throw new Error(`no joint ${id}`);
  return joint;
}

/** A neck has no step at its root, so that its life knows nothing of how a root is felt. */
const NECK = changed(demo('pole-grip'), { movement: { cycles: 5_000_000, held: false } });

const joints = fc.constantFrom(...['rain-flap', 'battery-door', 'wind-vane', 'lid-lock', 'trunk-cover'].map(demo));
const asked = fc.record({
  seed: fc.integer({ min: -(2 ** 31), max: 2 ** 31 - 1 }),
  how: fc.constantFrom('quasi-random' as const, 'plain' as const),
  spread: fc.record({
    lineWidth: fc.integer({ min: 0, max: 15 }).map((n) => n / 100),
    layers: fc.integer({ min: 0, max: 10 }).map((n) => n / 100),
    lengths: fc.integer({ min: 0, max: 30 }).map((n) => n / 100),
  }),
});
const FEW = { numRuns: 10 };

describe('whatever is doubted', () => {
  it('the answer is in order, its shares are shares, and the same seed gives the same answer to the last bit', () => {
    fc.assert(
      fc.property(joints, asked, (joint, how) => {
        const answer = doubt(joint, how);
        for (const { p10, p50, p90 } of [answer.life, answer.strain, answer.effort]) {
          expect(p10 >= 0 && p10 <= p50 && p50 <= p90 && Number.isFinite(p90)).toBe(true);
        }
        const { share, error } = answer.chance;
        expect(share >= 0 && share <= 1 && error > 0).toBe(true);
        for (const of of ['life', 'effort'] as const) {
          const shares = [...answer.causes.map((cause) => cause[of]), answer.together[of]];
          expect(shares.every((one) => one >= 0 && one <= 1)).toBe(true);
          // What several make together is the rest; sampled shares alone may come to a little more than all.
          expect(shares.reduce((sum, one) => sum + one, 0)).toBeLessThan(1.03);
        }
        expect(answer.cloud.length).toBeLessThanOrEqual(300);
        expect(doubt(joint, how)).toEqual(answer);
      }),
      FEW,
    );
  });

  it('the chance falls with the wanted cycles', () => {
    fc.assert(
      fc.property(joints, asked, fc.integer({ min: 100, max: 100_000 }), (joint, how, cycles) => {
        const chances = [1, 3, 10].map((by) => doubt(changed(joint, { movement: { cycles: by * cycles } }), how));
        const [few = 0, more = 0, most = 0] = chances.map(({ chance }) => chance.share);
        expect(few >= more && more >= most).toBe(true);
      }),
      FEW,
    );
  });
});

describe('where only curve and specimens vary', () => {
  const judged = assess(NECK, bySolver({ whole: false }));
  if (!judged.ok) throw new Error('refused');
  const { life, filament } = judged.value;

  it.each(['quasi-random', 'plain'] as const)('the chance is that of the normal law: %s', (how) => {
    for (const decades of [-1.2, -0.4, 0, 0.7]) {
      const cycles = Math.round(life.median * 10 ** decades);
      const answer = doubt(changed(NECK, { movement: { cycles } }), { how, samples: 4096, spread: EXACT_SIZES });
      const closed = normalCdf(Math.log10(life.median / cycles) / totalSigma(filament.life, life.median));
      const because = 'four of its own standard errors';
      expectClose(answer.chance.share, closed, { abs: 4 * answer.chance.error, because });
    }
  });

  it('its error shrinks by the root of the samples where they are plain, and faster where they are not', () => {
    const cycles = Math.round(life.median * 0.4);
    const joint = changed(NECK, { movement: { cycles } });
    const closed = normalCdf(Math.log10(life.median / cycles) / totalSigma(filament.life, life.median));
    const SEEDS = 16;
    const errorOf = (how: DoubtAsked['how'], samples: number) => {
      const squares = Array.from({ length: SEEDS }, (_, seed) => {
        const { share } = doubt(joint, { how, samples, seed, spread: EXACT_SIZES }).chance;
        return (share - closed) ** 2;
      });
      return Math.sqrt(squares.reduce((sum, square) => sum + square, 0) / SEEDS);
    };
    const ratio = (how: DoubtAsked['how']) => errorOf(how, 256) / errorOf(how, 1024);
    // Each root of 16 squares is known to a fifth, so their ratio to a quarter, and two of that are allowed.
    expectClose(ratio('plain'), 2, { rel: 0.5, because: 'ratio of two roots of 16 squares' });
    expect(errorOf('plain', 1024) / errorOf('quasi-random', 1024)).toBeGreaterThan(1.2);
  });
});

function even(quantity: Quantity, by: number): Quantity {
  return { ...quantity, low: quantity.typical / by, high: quantity.typical * by };
}

/** PETG with one straight line for a curve, and a modulus that varies alike to both sides. */
function straight(): OwnFilament {
  const row = ownPetg('own-straight');
  const { youngsModulus, flexuralModulus = youngsModulus } = row.properties;
  return {
    ...row,
    properties: { ...row.properties, flexuralModulus: even(flexuralModulus, 1.2) },
    life: { ...row.life, A: 1e-12, B: 0.3, b: -0.01, c: -0.25 },
  };
}

describe('a joint whose strain and effort are powers of its sizes', () => {
  afterEach(() => putOnShelf([]));

  it('has the shares of its logarithms', () => {
    const own = straight();
    putOnShelf([own]);
    const joint = changed(NECK, { profile: { filament: own.id }, movement: { amount: 0.08, cycles: 5000 } });
    const within = normalQuantile(0.95);
    const spread = { ...EXACT_SIZES, lineWidth: 0.15, lengths: 0.3 };
    const answer = doubt(joint, { spread });

    const at = (thickness: number, along: number) => {
      const print = changed(joint, { measuredThickness: thickness, sizes: { along } });
      const judged = assess(print, bySolver({ whole: false }));
      if (!judged.ok) throw new Error(judged.problems[0].message);
      return { strain: Math.log(judged.value.strain.peak), effort: Math.log(judged.value.effort.effort) };
    };
    const [t, along] = [2 * joint.profile.lineWidth, joint.sizes['along'] ?? 0];
    const H = 0.02;
    const slope = (of: 'strain' | 'effort', thick: number, long: number) =>
      (at(t * (1 + H * thick), along * (1 + H * long))[of] - at(t * (1 - H * thick), along * (1 - H * long))[of]) /
      (2 * H);
    const sigma = {
      thickness: 0.15 / within,
      length: 0.3 / within / along,
      modulus: Math.log(1.2) / normalQuantile(0.9),
    };
    const perLife = Math.LOG10E / own.life.c;
    const life = {
      thickness: (perLife * slope('strain', 1, 0) * sigma.thickness) ** 2,
      length: (perLife * slope('strain', 0, 1) * sigma.length) ** 2,
      curve: doubtSigma(own.life.doubtFactor) ** 2,
      specimens: own.life.sigmaLog10N ** 2,
    };
    const effort = {
      thickness: (slope('effort', 1, 0) * sigma.thickness) ** 2,
      length: (slope('effort', 0, 1) * sigma.length) ** 2,
      modulus: sigma.modulus ** 2,
    };
    const because = 'the shares are sampled at 1024 points, and its strain is a power of its sizes only nearly';
    for (const [of, expected] of [
      ['life', life],
      ['effort', effort],
    ] as const) {
      const total = Object.values(expected).reduce((sum, variance) => sum + variance, 0);
      for (const [name, variance] of Object.entries(expected)) {
        const told = answer.causes.find(({ cause }) => cause === name)?.[of] ?? 0;
        expectClose(told, variance / total, { abs: 0.03, because: `${because}: ${name} of ${of}` });
      }
      expect(answer.together[of]).toBeLessThan(0.03);
    }
  });
});

describe('a joint that the first flex breaks', () => {
  it('fails in every print, and has no life', () => {
    const broken = changed(demo('rain-flap'), {
      sizes: { length: 2 },
      movement: { amount: 1.5, cycles: 1 },
      profile: { filament: 'pla' },
    });
    const answer = doubt(broken);
    expect(answer.chance.share).toBe(0);
    expect(answer.breaksAtOnce).toBe(1);
    expect(answer.life).toEqual({ p10: 0, p50: 0, p90: 0 });
  });
});

describe('sampling that is stopped', () => {
  it('says so', () => {
    const stopped = doubtOf(demo('rain-flap'), ASKED, { cancelled: () => true });
    expect(!stopped.ok && stopped.problems[0].code).toBe('cancelled');
  });
});
