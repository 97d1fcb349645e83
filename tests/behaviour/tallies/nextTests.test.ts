import { describe, expect, it } from 'vitest';
import { PIECE_IDS, type PiecesAsked } from '../../../src/core/coupons/piece.ts';
import { pieceOf } from '../../../src/core/coupons/pieceOf.ts';
import { assess } from '../../../src/core/design/assess.ts';
import { doubtOf } from '../../../src/core/design/doubt.ts';
import type { Joint } from '../../../src/core/design/joint.ts';
import { totalSigma } from '../../../src/core/life/scatter.ts';
import type { FlexTally } from '../../../src/core/material/tally.ts';
import { normalQuantile } from '../../../src/core/numeric/normal.ts';
import { USUAL_SPREAD } from '../../../src/core/print/spread.ts';
import { radians } from '../../../src/core/units.ts';
import { expectedFlexes, expectedTold } from '../../../src/core/tallies/expectedDoubt.ts';
import { nextTests, type NextAsked } from '../../../src/core/tallies/nextTests.ts';
import { flexed } from '../../support/countedLives.ts';
import { expectClose } from '../../support/close.ts';
import { filament } from '../../support/filament.ts';
import { changed, LEAF } from '../../support/joints.ts';

const DENSITY = 1.27e-3;

function askedOf(joint: Joint, flexes: readonly FlexTally[] = []): NextAsked {
  const assessed = assess(joint);
  const doubt = doubtOf(joint, { spread: USUAL_SPREAD, samples: 256, how: 'quasi-random', seed: 1 });
  if (!assessed.ok || !doubt.ok) throw new Error('the joint is assessed');
  const prior = filament(joint.profile.filament as 'petg');
  const strain = Math.max(1e-3, assessed.value.strain.peak);
  const asked: PiecesAsked = {
    profile: joint.profile,
    filament: prior,
    count: 2,
    depth: 6,
    turn: radians(90),
    strain,
    holdRadius: 12,
  };
  const pieces = PIECE_IDS.map((id) => pieceOf(id, asked)).flatMap((piece) => (piece.ok ? [piece.value] : []));
  return { assessment: assessed.value, doubt: doubt.value, prior, flexes, pieces, asked, density: DENSITY };
}

const ASKED = askedOf(LEAF);
const NEXT = nextTests(ASKED);
const doubtOfTest = (what: string, next = NEXT) => next.tests.filter(({ candidate }) => candidate.what === what);

describe('before anything was tested', () => {
  it('strips about the strain of the joint tell most; what tells nothing of life comes last', () => {
    const [best] = NEXT.tests;
    expect(best!.candidate.what).toBe('flexes');
    const strain = ASKED.assessment.strain.peak;
    expect(best!.strain! / strain).toBeGreaterThan(0.5);
    expect(best!.strain! / strain).toBeLessThan(3);
    const last = NEXT.tests.slice(-3).map(({ candidate }) => candidate.what);
    expect(last.toSorted()).toEqual(['hold', 'mark', 'sag']);
  });

  it('are ranked by what is left of the doubt, which none widens', () => {
    const left = NEXT.tests.map(({ doubt }) => doubt.after);
    expect(left).toEqual(left.toSorted((one, other) => one - other));
    expect(NEXT.tests.every(({ doubt }) => doubt.after <= doubt.now && doubt.after > 0)).toBe(true);
  });

  it('the life now is spread about as the joint says, which counts with the same mean doubt', () => {
    const { life } = ASKED.assessment.filament;
    const spread = Math.log10(NEXT.now.life[1] / NEXT.now.life[0]) / (2 * normalQuantile(0.9));
    // Doubt of a row is the same everywhere, what is believed of its curve a little less in the middle of its lives.
    expectClose(spread, totalSigma(life, ASKED.assessment.life.median), {
      rel: 0.08,
      because: 'as said above, and sizes vary too',
    });
  });

  it('narrowing what is not known narrows the chance, and not below what one print differs from the next', () => {
    const [low, high] = NEXT.now.chance;
    for (const { after, doubt } of NEXT.tests) {
      expect(after.chance[1] - after.chance[0]).toBeLessThanOrEqual(high - low);
      const spread = Math.log10(after.life[1] / after.life[0]) / (2 * normalQuantile(0.9));
      expectClose(spread, Math.hypot(doubt.after, 0.6), {
        rel: 1e-4,
        because: 'the scatter of the row is summed over a grid',
      });
    }
  });

  it('a comb is one test; of round corners none is both slower and tells less', () => {
    const corners = doubtOfTest('flexes').filter(({ candidate }) => candidate.bend !== undefined);
    expect(corners.length).toBeGreaterThan(1);
    for (const one of corners) {
      expect(corners.some((other) => other.doubt.after < one.doubt.after && other.hours <= one.hours)).toBe(false);
    }
    expect(doubtOfTest('flexes').filter(({ candidate }) => candidate.piece === 'comb')).toHaveLength(1);
  });

  it('time by hand is forty flexes a minute', () => {
    for (const { flexes, hours } of doubtOfTest('flexes')) {
      expectClose(hours, flexes / 2400, { rel: 1e-12, because: 'round-off' });
    }
  });

  it('a weight on the bar tells of effort instead', () => {
    const [sag] = doubtOfTest('sag');
    expect(sag!.effort!.after).toBeLessThan(sag!.effort!.now);
    expect(sag!.doubt.after).toBe(sag!.doubt.now);
  });
});

describe('once strips have been flexed', () => {
  const few = [400, 600, 350].map((cycles, i) => flexed(10, cycles, 'broke', `t${i}`));
  const whole = [1, 2].map((i) => flexed(16, 2000, 'whole', `w${i}`));
  const after = nextTests(askedOf(LEAF, [...few, ...whole]));

  it('less is unknown, and the same test tells less', () => {
    expect(after.tests[0]!.doubt.now).toBeLessThan(NEXT.tests[0]!.doubt.now);
    const gain = ({ tests }: typeof NEXT) => tests[0]!.doubt.now - tests[0]!.doubt.after;
    expect(gain(after)).toBeLessThan(gain(NEXT));
  });

  it('strips that are still whole can be gone on with, without printing', () => {
    const [goOn] = doubtOfTest('goOn', after);
    expect(goOn).toMatchObject({ grams: 0, candidate: { strips: 2, piece: 'comb' } });
    expect(goOn!.candidate.stopAt).toBeGreaterThanOrEqual(4000);
    expect(goOn!.doubt.after).toBeLessThan(goOn!.doubt.now);
    expect(goOn!.flexes).toBeLessThanOrEqual(2 * (goOn!.candidate.stopAt! - 2000));
  });

  it.each([
    ['of the comb', flexed(16, 2000, 'whole', 'w'), 'comb'],
    ['a fold', { ...flexed(1.1, 2000, 'whole', 'w'), thickness: 0.3, lying: 'crease' as const }, 'creases'],
    ['loose, over a corner', { ...flexed(1, 2000, 'whole', 'w'), bend: { way: 'over' as const, radius: 12 } }, 'radii'],
    [
      'loose, of layers, over a corner',
      { ...flexed(1, 2000, 'whole', 'w'), bend: { way: 'over' as const, radius: 12 }, lying: 'crease' as const },
      'radii',
    ],
  ])('a strip %s is gone on with as one of its own piece', (_, strip, piece) => {
    const [goOn] = doubtOfTest('goOn', nextTests(askedOf(LEAF, [...few, strip])));
    expect(goOn!.candidate).toMatchObject({ piece, bend: strip.bend, from: 'w', strips: 1 });
  });

  it('strips bent otherwise are gone on with apart, each set from its own first', () => {
    const other = flexed(30, 1000, 'whole', 'other');
    const apart = doubtOfTest('goOn', nextTests(askedOf(LEAF, [...few, ...whole, other])));
    const strips = Object.fromEntries(apart.map(({ candidate }) => [candidate.from, candidate.strips]));
    expect(strips).toEqual({ w1: 2, other: 1 });
  });

  it('strips set aside are not', () => {
    const aside = whole.map((tally) => ({ ...tally, leftOut: true as const }));
    expect(doubtOfTest('goOn', nextTests(askedOf(LEAF, [...few, ...aside])))).toEqual([]);
  });

  it('the joint is moved to where they say, though it stands in the row as it comes', () => {
    const middle = ({ now }: typeof NEXT) => Math.sqrt(now.life[0] * now.life[1]);
    expect(middle(after)).toBeLessThan(middle(NEXT));
  });
});

describe('where there is little to tell', () => {
  it('a joint that breaks at once has no tests', () => {
    const broken = askedOf(
      changed(LEAF, { sizes: { length: 3.4 }, movement: { amount: radians(120) }, profile: { filament: 'pla' } }),
    );
    expect(broken.assessment.life.breaksOnFirstFlex).toBe(true);
    expect(nextTests(broken).tests).toEqual([]);
  });

  it('a thickness measured on the part is told no better by a ladder', () => {
    const [ladder] = doubtOfTest('thickness', nextTests(askedOf({ ...LEAF, measuredThickness: 0.8 })));
    expect(ladder!.doubt.after).toBe(ladder!.doubt.now);
  });
});

describe('what a strip is expected to tell', () => {
  it('is all where it surely breaks, and nothing where it surely does not', () => {
    expectClose(expectedTold(8), 1, { abs: 1e-12, because: 'a tail of 10⁻¹⁵' });
    expectClose(expectedTold(-8), 0, { abs: 1e-12, because: 'a tail of 10⁻¹⁵' });
  });

  it('grows with the count at which one stops', () => {
    const told = [-2, -1, 0, 1, 2].map((stop) => expectedTold(stop));
    expect(told).toEqual(told.toSorted((one, other) => one - other));
  });

  it('flexes are those of a log-normal law', () => {
    // Mean of all of it: exp(m + s²/2) in natural logarithms; counting to a million leaves next to nothing out.
    const [middle, sigma] = [2, 0.3];
    const mean = Math.exp(middle * Math.LN10 + (sigma * Math.LN10) ** 2 / 2);
    expectClose(expectedFlexes(0, 3000, middle, sigma), mean, { rel: 2e-3, because: 'summed in 64 pieces' });
  });
});
