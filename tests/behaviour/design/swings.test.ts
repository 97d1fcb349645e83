/** Several movements, and swings that do not begin at rest, as `assess` makes flexes of them, by hand forms and on a solved way. */
import { describe, expect, it } from 'vitest';
import { assess } from '../../../src/core/design/assess.ts';
import type { Assessment } from '../../../src/core/design/assessment.ts';
import { bySolver } from '../../../src/core/design/bySolver.ts';
import { medianLifeAt, medianLifeFor, strainAtCycles } from '../../../src/core/design/curves.ts';
import type { Joint, Movement } from '../../../src/core/design/joint.ts';
import { shortestLength } from '../../../src/core/design/sizeFor.ts';
import { stoppedAt } from '../../../src/core/design/swing.ts';
import { waysOut } from '../../../src/core/design/waysOut.ts';
import { lifeAtStrain } from '../../../src/core/life/strainLife.ts';
import { radians } from '../../../src/core/units.ts';
import { expectClose } from '../../support/close.ts';
import { assessed, changed, LEAF } from '../../support/joints.ts';

const AIM = { rel: 1e-6, because: 'the aim of the solver' } as const;
const ROUND_OFF = { rel: 1e-12, because: 'round-off' } as const;

function solved(joint: Joint): Assessment {
  const answer = assess(joint, bySolver());
  if (!answer.ok) throw new Error(answer.problems[0].message);
  return answer.value;
}

const moved = (movement: Partial<Movement>) => changed(LEAF, { movement });
/** Pushed across at its tip far enough that strain is in no proportion to travel. */
const PUSHED = changed(LEAF, { movement: { drive: 'pushed', amount: 5, cycles: 1000 } });
const { amount } = LEAF.movement;

describe('the ratio of the two ends', () => {
  it.each([
    ['one way', { ways: 'one way' as const }, 0],
    ['both ways', { ways: 'both ways' as const }, -1],
    ['a third to the other side', { ways: 'between' as const, least: -amount / 3 }, -1 / 3],
    ['never under a half', { ways: 'between' as const, least: amount / 2 }, 0.5],
    ['back to rest', { ways: 'between' as const, least: 0 }, 0],
  ])('of %s is that of the amounts where strain grows with them', (_, movement, ratio) => {
    const [byHand, bySolving] = [assessed(moved(movement)), solved(moved(movement))];
    const { gamma } = byHand.filament.life;
    for (const { life, strain } of [byHand, bySolving]) {
      const [own] = life.wear;
      expectClose(own.ratio, ratio, { abs: 1e-12, because: 'round-off' });
      expectClose(own.equivalentStrain, strain.peak * (1 - ratio) ** gamma, ROUND_OFF);
      expect(own.share).toBe(1);
      expect(own.median).toBe(life.median);
    }
  });

  it('of a swing to both sides is no worse than both ways and no better than one way, on a solved way', () => {
    const ratio = (movement: Partial<Movement>) => solved(changed(PUSHED, { movement })).life.wear[0].ratio;
    const some = ratio({ ways: 'between', least: -2 });
    expect(some).toBeLessThan(0);
    expect(some).toBeGreaterThan(-1);
    // The tip of a leaf pushed both ways strains alike on either side, more than in proportion to small travels.
    const least = solved(changed(PUSHED, { movement: { amount: 2 } })).strain.peak;
    expectClose(-some, least / solved(PUSHED).strain.peak, {
      rel: 2e-3,
      because: 'straight lines between the states of either way',
    });
  });

  it('that never comes to rest is that of its least strain on a solved way', () => {
    const a = solved(changed(PUSHED, { movement: { ways: 'between', least: 2 } }));
    const least = solved(changed(PUSHED, { movement: { amount: 2 } })).strain.peak;
    expectClose(a.life.wear[0].ratio, least / a.strain.peak, {
      rel: 2e-3,
      because: 'straight lines between the states',
    });
    expect(a.solved?.back).toBeUndefined();
  });

  it('asks the way back only as far as the swing goes', () => {
    const { solved: way } = solved(changed(PUSHED, { movement: { ways: 'between', least: -1 } }));
    const reached = Math.max(...way!.back!.points.map((point) => -point.amount));
    expect(reached).toBeGreaterThanOrEqual(1);
    expect(reached).toBeLessThan(5);
    expect(way!.least).toBe(-1);
  });

  it('does not let strains past its own other end in', () => {
    const oneWay = solved(PUSHED);
    const between = solved(changed(PUSHED, { movement: { ways: 'between', least: -1 } }));
    expectClose(between.strain.peak, oneWay.strain.peak, AIM);
    expectClose(between.effort.effort, oneWay.effort.effort, AIM);
    expectClose(between.overBend.atYield, oneWay.overBend.atYield, AIM);
  });
});

describe('movements beside the main one', () => {
  const also = [{ amount: amount / 2, ways: 'one way' as const, cycles: 40_000 }];

  it('strain as the joint would that is moved by so much', () => {
    for (const [joint, allowed] of [
      [moved({}), ROUND_OFF],
      [PUSHED, { rel: 2e-3, because: 'straight lines between the states' } as const],
    ] as const) {
      const half = joint.movement.amount / 2;
      const a = solved(changed(joint, { movement: { also: [{ amount: half, ways: 'one way', cycles: 10 }] } }));
      const alone = solved(changed(joint, { movement: { amount: half } }));
      const [, beside] = a.life.wear;
      expectClose(beside!.peakStrain, alone.strain.peak, allowed);
      expect(beside!.amount).toBe(half);
    }
  });

  it('wear it out together by Miner’s sum', () => {
    const a = assessed(moved({ also }));
    const { life } = a.filament;
    const peak = a.strain.peak;
    const damage = LEAF.movement.cycles / lifeAtStrain(peak, life) + 40_000 / lifeAtStrain(peak / 2, life);
    expectClose(LEAF.movement.cycles / a.life.median, damage, ROUND_OFF);
    expect(a.life.chance).toBeLessThan(assessed(LEAF).life.chance);
  });

  it('of no account change nothing that can be told', () => {
    const a = assessed(moved({ also: [{ amount: radians(1), ways: 'one way', cycles: 1 }] }));
    expectClose(a.life.chance, assessed(LEAF).life.chance, { abs: 1e-9, because: 'one flex of a degree' });
    expect(a.verdict.grade).toBe(assessed(LEAF).verdict.grade);
  });

  it('that want more flexes than anyone counted leave nothing known, unless what was counted breaks it already', () => {
    const counted = assessed(LEAF).life.maxReportableCycles;
    const flicker = { amount: radians(1), ways: 'one way' as const, cycles: 5 * counted };
    const little = assessed(moved({ amount: radians(10), cycles: 10, also: [flicker] }));
    expect(little.life.beyond).toBe('wanted');
    expect(little.verdict).toMatchObject({ grade: 'beyond', reason: 'beyond data' });
    const lasting = assessed(moved({})).life.median;
    const much = assessed(moved({ cycles: Math.ceil(2 * lasting), also: [flicker] }));
    expect(much.life.beyond).toBe('wanted');
    expect(much.verdict.grade).toBe('fail');
  });
});

describe('the curve of strain against life with several movements', () => {
  const a = assessed(moved({ also: [{ amount: (amount * 2) / 3, ways: 'one way', cycles: 60_000 }] }));

  it('goes through the joint as it is', () => {
    expectClose(medianLifeAt(a, a.strain.peak), a.life.median, ROUND_OFF);
    expectClose(strainAtCycles(a, a.life.median), a.strain.peak, { rel: 1e-9, because: 'to what the root is sought' });
  });

  it.each([10, 1000, 100_000])('is the same read either way at %s cycles', (cycles) => {
    const strain = strainAtCycles(a, cycles);
    expectClose(medianLifeAt(a, strain), cycles, { rel: 1e-7, because: 'the root, magnified by 1/b' });
    expect(strain).toBeLessThan(strainAtCycles(assessed(LEAF), cycles));
  });

  it('tells what a longer leaf comes to', () => {
    const longer = assessed(changed(a.joint, { sizes: { length: 20 } }));
    expectClose(medianLifeFor(a, { length: 20 }), longer.life.median, ROUND_OFF);
  });

  it('leaves room within which it passes', () => {
    const easy = assessed(changed(a.joint, { sizes: { length: 60 }, movement: { chance: 0.8 } }));
    expect(easy.verdict.grade).toBe('pass');
    const shortest = shortestLength(easy);
    const at = (length: number) => assessed(changed(easy.joint, { sizes: { length } })).verdict.grade;
    expect(at(shortest * 1.001)).toBe('pass');
    expect(at(shortest * 0.99)).not.toBe('pass');
  });
});

describe('what stays after one bend', () => {
  it.each(['pla', 'petg', 'pp', 'pa6', 'tpu95a'] as const)(
    'of %s lies between what is kind and what is harsh',
    (id) => {
      for (const joint of [LEAF, PUSHED]) {
        const { set } = solved(changed(joint, { profile: { filament: id } }));
        expect(set.low).toBeLessThanOrEqual(set.amount);
        expect(set.amount).toBeLessThanOrEqual(set.high);
        expect(set.high).toBeLessThan(joint.movement.amount);
      }
    },
  );

  it('is no more along the joint than if it were bent all along as at its worst place', () => {
    expect(solved(PUSHED).set.amount).toBeGreaterThan(0);
    expect(solved(PUSHED).set.amount).toBeLessThan(assessed(PUSHED).set.amount);
    expectClose(solved(LEAF).set.amount, assessed(LEAF).set.amount, ROUND_OFF);
  });
});

describe('a stop', () => {
  const also = [
    { amount: radians(30), ways: 'both ways', cycles: 100 },
    { amount: radians(5), ways: 'one way', cycles: 1000 },
    { amount: radians(28), ways: 'between', least: radians(25), cycles: 10 },
  ] as const;

  it('holds every swing, to either side', () => {
    const { movement } = moved({ ways: 'between', least: radians(-10), also });
    const stopped = stoppedAt(movement, radians(20), radians(1));
    expect(stopped.amount).toBe(radians(20));
    expect(stopped.least).toBe(radians(-10));
    const [wide, small, high] = stopped.also!;
    expect(wide).toEqual({ amount: radians(20), ways: 'between', least: radians(-10), cycles: 100 });
    expect(small).toEqual(also[1]);
    expectClose(high!.amount, radians(20), ROUND_OFF);
    expectClose(high!.least!, radians(19), ROUND_OFF);
  });

  it('is among the ways out of a joint that is moved in several ways, and makes a joint that can be assessed', () => {
    const joint = moved({ also: [{ amount: radians(34), ways: 'one way', cycles: 2000 }] });
    const stop = waysOut(assessed(joint)).find(({ kinds }) => kinds.includes('stop earlier'));
    expect(stop).toBeDefined();
    const { movement } = stop!.after;
    expect(movement.amount).toBeLessThan(radians(34));
    expect(movement.also![0]!.amount).toBe(movement.amount);
    expect(assess(stop!.after).ok).toBe(true);
  });
});
