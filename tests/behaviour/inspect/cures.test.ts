import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Cure, CureKind } from '../../../src/core/inspect/cure.ts';
import { cures } from '../../../src/core/inspect/cures.ts';
import type { Flexure } from '../../../src/core/inspect/flexure.ts';
import { judgeAll } from '../../../src/core/inspect/judge.ts';
import { isLasting, tallyOf } from '../../../src/core/inspect/verdicts.ts';
import { degrees, radians } from '../../../src/core/units.ts';
import { expectClose } from '../../support/close.ts';
import {
  anyFlexures,
  AS_DROPPED,
  ASKED,
  BOX,
  straight,
  THREE_LEAVES,
  THREE_LEAVES_BOX,
  THREE_LEAVES_FILE,
  X,
  Y,
  Z,
} from '../../support/flexures.ts';

const curesOf = (flexures: readonly Flexure[], as = AS_DROPPED, asked = ASKED) =>
  cures(flexures, BOX, as, asked, 'part.stl');
const ofKind = (all: readonly Cure[], kind: CureKind) => all.filter(({ change }) => change.kind === kind);
const countsOf = ({ after }: Cure) => after.map(({ landing }) => landing.nearest);

describe('cures of the three leaves of the look notes', () => {
  const found = cures(THREE_LEAVES, THREE_LEAVES_BOX, AS_DROPPED, ASKED, THREE_LEAVES_FILE);
  const before = judgeAll(THREE_LEAVES, THREE_LEAVES_BOX, AS_DROPPED, ASKED, THREE_LEAVES_FILE);

  it('begin at 0.75, 1.50 and 2.25 lines', () => {
    before.forEach(({ landing }, i) => {
      expectClose(landing.exact, [0.75, 1.5, 2.25][i]!, { abs: 1e-9, because: 'round-off of one quotient' });
    });
  });

  it('scale to 1, 2 and 3 lines at 4/3 and to 2, 4 and 6 at 8/3', () => {
    const scales = ofKind(found, 'scale');
    expect(scales.map(({ as }) => as.scale)).toEqual([1.333, 2.667]);
    expect(scales.map(countsOf)).toEqual([
      [1, 2, 3],
      [2, 4, 6],
    ]);
    expect(scales.map(({ whole, even }) => [whole, even])).toEqual([
      [3, 1],
      [3, 3],
    ]);
  });

  it('set lines to 0.42 mm, which makes 1, 2 and 3 of them', () => {
    const [width] = ofKind(found, 'line-width');
    expect(width?.change).toEqual({ kind: 'line-width', lineWidth: 0.42 });
    expect(width && countsOf(width)).toEqual([1, 2, 3]);
  });

  it('say that a scale leaves strain, costs room by its cube and effort by its cube', () => {
    for (const { after, as, costs } of ofKind(found, 'scale')) {
      after.forEach(({ assessed }, i) => {
        const was = before[i]!.assessed;
        if (!assessed.ok || !was.ok) throw new Error('refused');
        const because = 'sizes of a joint are kept to a micron, half of which is 1.2e-3 of 0.42 mm';
        expectClose(assessed.value.strain.peak, was.value.strain.peak, { rel: 2e-3, because });
      });
      expect(costs.size).toBe(as.scale);
      expectClose(costs.volume, as.scale ** 3, { rel: 1e-12, because: 'round-off' });
      expectClose(costs.effort, as.scale ** 3, { rel: 6e-3, because: 'the cube of sizes that are kept to a micron' });
    }
  });

  it('stop the bending at the largest tenth of a degree at which all last', () => {
    const [stop] = ofKind(found, 'turn');
    const turn = stop!.asked.turn;
    expect(stop!.after.every(isLasting)).toBe(true);
    const further = radians(degrees(turn) + 0.1);
    const after = judgeAll(THREE_LEAVES, THREE_LEAVES_BOX, AS_DROPPED, { ...ASKED, turn: further }, THREE_LEAVES_FILE);
    expect(after.every(isLasting)).toBe(false);
    expect(stop!.costs).toEqual({ volume: 1, effort: 1, size: 1 });
  });

  it('are none where all pass and are even', () => {
    const gentle = { ...ASKED, turn: radians(4) };
    const as = { ...AS_DROPPED, scale: 2.667 };
    expect(cures(THREE_LEAVES, THREE_LEAVES_BOX, as, gentle, THREE_LEAVES_FILE)).toEqual([]);
    expect(cures([], THREE_LEAVES_BOX, AS_DROPPED, ASKED, THREE_LEAVES_FILE)).toEqual([]);
  });
});

describe('cures of other parts', () => {
  it('turn a part on the plate where that lays an upright leaf flat', () => {
    const upright = straight({
      thickness: 1.12,
      length: 14,
      along: Z,
      across: X,
      axis: Y,
      centre: { x: 9, y: 9, z: 6 },
    });
    const [lying] = ofKind(curesOf([upright]), 'lying');
    expect(lying?.change).toMatchObject({ kind: 'lying' });
    expect(lying?.after[0]?.lying).toBe('flat');
    expect(lying?.passing).toBe(1);
  });

  it('say a scale below 1 only where nothing larger helps', () => {
    expect(ofKind(curesOf([straight({ thickness: 1.2 })]), 'scale').every(({ as }) => as.scale > 1)).toBe(true);
    // 2 lines and 3.1: up to four times the size there is no scale at which both are whole, but at 0.975 to 0.984 there is.
    const found = ofKind(
      curesOf([straight({ number: 1, thickness: 1.12 }), straight({ number: 2, thickness: 1.736 })]),
      'scale',
    ).filter(({ as }) => as.profile.lineWidth === 0.56);
    expect(found.map(({ whole }) => whole)).toEqual([2]);
    expect(found[0]!.as.scale).toBeGreaterThanOrEqual(0.975);
    expect(found[0]!.as.scale).toBeLessThanOrEqual(0.984);
  });

  it('scale and set lines together only where neither alone makes all whole', () => {
    // 0.12 mm is one line of 0.56 only at 4.67 times, and one of 0.36, the narrowest that is laid well, only at three times.
    const found = curesOf([straight({ thickness: 0.12 })]);
    const scales = ofKind(found, 'scale');
    expect(scales.map(({ as, whole }) => [as.scale, as.profile.lineWidth, whole])).toEqual([[3, 0.36, 1]]);
    expect(ofKind(found, 'line-width')).toEqual([]);
    // Where either alone does it, no pair is told.
    const alone = curesOf([straight({ thickness: 0.42 })]);
    expect(alone.every(({ as }) => as.scale === 1 || as.profile.lineWidth === 0.56)).toBe(true);
  });
});

describe('cures of any part', () => {
  const part = fc.record({
    flexures: anyFlexures(5),
    lineWidth: fc.constantFrom(0.4, 0.42, 0.45, 0.56),
    fitRule: fc.constantFrom('nominal' as const, 'overlapped' as const),
    scale: fc.constantFrom(1, 1, 1.25),
    turnDeg: fc.constantFrom(5, 15, 60),
  });
  type Part = typeof part extends fc.Arbitrary<infer T> ? T : never;
  const stands = ({ lineWidth, fitRule, scale, turnDeg }: Part) => ({
    as: { ...AS_DROPPED, scale, profile: { ...AS_DROPPED.profile, lineWidth, fitRule } },
    asked: { ...ASKED, turn: radians(turnDeg) },
  });
  const RUNS = { numRuns: 20 };

  it('tell before and after as the judge does, help, worsen nothing, and are few', () => {
    fc.assert(
      fc.property(part, (drawn) => {
        const { as, asked } = stands(drawn);
        const found = curesOf(drawn.flexures, as, asked);
        const was = tallyOf(judgeAll(drawn.flexures, BOX, as, asked, 'part.stl'));
        expect(found.length).toBeLessThanOrEqual(6);
        for (const cure of found) {
          const after = judgeAll(drawn.flexures, BOX, cure.as, cure.asked, 'part.stl');
          expect(cure.after).toEqual(after);
          const is = tallyOf(after);
          expect([cure.whole, cure.even, cure.passing]).toEqual([is.whole, is.even, is.passing]);
          expect(is.passing).toBeGreaterThanOrEqual(was.passing);
          expect(is.whole).toBeGreaterThanOrEqual(was.whole);
          expect(is.lasting).toBeGreaterThanOrEqual(was.lasting);
          const sum = (tally: typeof is) => tally.passing + tally.whole + tally.lasting + tally.even;
          const isBetter = (['passing', 'whole', 'lasting', 'even'] as const).some((what) => is[what] > was[what]);
          expect(isBetter, `${cure.change.kind}: ${sum(was)} to ${sum(is)}`).toBe(true);
          expect(Object.values(cure.costs).every((ratio) => ratio > 0 && Number.isFinite(ratio))).toBe(true);
        }
      }),
      RUNS,
    );
  });

  it('no scale on a fine grid makes more sections whole, or more of them even, than the best that is told', () => {
    fc.assert(
      fc.property(part, (drawn) => {
        const { as, asked } = stands(drawn);
        const tally = (scale: number) => tallyOf(judgeAll(drawn.flexures, BOX, { ...as, scale }, asked, 'part.stl'));
        const now = tally(as.scale);
        const told = ofKind(curesOf(drawn.flexures, as, asked), 'scale').filter(
          (cure) => cure.as.profile.lineWidth === as.profile.lineWidth,
        );
        const most = (what: 'whole' | 'even') => Math.max(now[what], ...told.map((cure) => cure[what]));
        for (let scale = 1; scale <= 4; scale += 0.005) {
          const there = tally(scale);
          expect(there.whole).toBeLessThanOrEqual(most('whole'));
          // More even at the price of fewer whole is no help and is not told.
          if (there.whole >= now.whole) expect(there.even).toBeLessThanOrEqual(most('even'));
        }
      }),
      { numRuns: 8 },
    );
  });
});
