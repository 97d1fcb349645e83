/** Laws of the search: widening what is wanted loses nothing, and what is told of a miss admits it. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { assess } from '../../src/core/design/assess.ts';
import { admitting } from '../../src/core/find/admit.ts';
import { Field } from '../../src/core/find/field.ts';
import { lotsFor, type Lot } from '../../src/core/find/lots.ts';
import type { Design, FindAnswer } from '../../src/core/find/findAnswer.ts';
import { betters, Front, frontOf, type Weighed } from '../../src/core/find/front.ts';
import { shortfallsOf } from '../../src/core/find/shortfalls.ts';
import type { Wanted } from '../../src/core/find/wanted.ts';
import { FAMILIES } from '../../src/core/flexures/index.ts';
import { radians } from '../../src/core/units.ts';
import { A_TRAVEL, A_TURN, handJudge, keyOf, lotsOf, searched } from '../support/finding.ts';

const KINDS = FAMILIES.map(({ id }) => id);
const FILAMENTS = ['pla', 'petg', 'pa12', 'pp', 'tpu95a'];

/** What is wanted, as users want it: any movement, any room, limits or none. */
const wishes: fc.Arbitrary<Wanted> = fc
  .record({
    turns: fc.boolean(),
    amount: fc.integer({ min: 4, max: 40 }),
    both: fc.boolean(),
    cycles: fc.integer({ min: 50, max: 40_000 }),
    chance: fc.integer({ min: 55, max: 99 }),
    held: fc.boolean(),
    along: fc.integer({ min: 6, max: 60 }),
    across: fc.integer({ min: 2, max: 40 }),
    depth: fc.integer({ min: 2, max: 20 }),
    effort: fc.option(fc.integer({ min: 1, max: 60 }), { nil: undefined }),
    soft: fc.boolean(),
    set: fc.option(fc.integer({ min: 1, max: 20 }), { nil: undefined }),
    kinds: fc.subarray(KINDS, { minLength: 2 }),
    filaments: fc.subarray(FILAMENTS, { minLength: 1 }),
    upright: fc.boolean(),
  })
  .map(
    ({
      turns,
      amount,
      both,
      cycles,
      chance,
      held,
      along,
      across,
      depth,
      effort,
      soft,
      set,
      kinds,
      filaments,
      upright,
    }) => {
      const base = turns ? A_TURN : A_TRAVEL;
      const far = turns ? radians(amount) : amount / 5;
      return {
        ...base,
        movement: {
          ...base.movement,
          amount: far,
          ways: both ? 'both ways' : 'one way',
          cycles,
          chance: chance / 100,
          held,
          ...(effort === undefined ? {} : { effortAtMost: effort }),
        },
        ...(effort === undefined || !soft ? {} : { effortAtLeast: effort / 4 }),
        ...(set === undefined ? {} : { setAtMost: (far * set) / 100 }),
        room: { along, across, depth },
        depthAtLeast: depth / 2,
        families: kinds,
        filaments,
        lyings: upright ? ['flat', 'crease', 'upright'] : ['flat', 'crease'],
      } satisfies Wanted;
    },
  );

const moved = (wanted: Wanted, change: Partial<Wanted['movement']>): Wanted => ({
  ...wanted,
  movement: { ...wanted.movement, ...change },
});

/** Every limit that there is, loosened. */
const LOOSENED: Readonly<Record<string, (wanted: Wanted) => Wanted>> = {
  'room along': (w) => ({ ...w, room: { ...w.room, along: 1.7 * w.room.along } }),
  'room across': (w) => ({ ...w, room: { ...w.room, across: 1.7 * w.room.across } }),
  'room depth': (w) => ({ ...w, room: { ...w.room, depth: 2 * w.room.depth } }),
  'depth at least': (w) => ({ ...w, depthAtLeast: w.depthAtLeast / 2 }),
  'effort at most': (w) => moved(w, { effortAtMost: 3 * (w.movement.effortAtMost ?? 1000) }),
  'effort at least': ({ effortAtLeast: _effort, ...w }) => w,
  set: ({ setAtMost: _set, ...w }) => w,
  chance: (w) => moved(w, { chance: 0.5 }),
  cycles: (w) => moved(w, { cycles: 20 }),
  held: (w) => moved(w, { held: false }),
  supports: (w) => ({ ...w, supports: true }),
  kinds: (w) => ({ ...w, families: KINDS }),
  filaments: (w) => ({ ...w, filaments: FILAMENTS }),
  lyings: (w) => ({ ...w, lyings: ['flat', 'crease', 'upright'] }),
};

/** All that meets what is wanted, as it is screened: few rungs, but all depths, of which fewer would be others in a wider room. */
function met(wanted: Wanted): ReadonlySet<string> {
  const found = new Set<string>();
  const thin = lotsOf(wanted, 2);
  for (const [i, { depths }] of lotsFor(wanted).entries()) {
    const field = new Field({ ...(thin[i] as Lot), depths }, wanted, true);
    field.reckon(() => undefined);
    field.each(({ mask, at, row, depth, side }) => {
      if (mask === 0) found.add(keyOf(field.candidate({ at, row, depth, side }).joint));
    });
  }
  return found;
}

const group = ({ joint: { family, profile, movement } }: Design) =>
  [family, movement.drive, profile.lying, profile.filament].join();

/** Few rungs, all depths. */
const whole = (one: Wanted) => lotsFor(one).map((lot, i) => ({ ...(lotsOf(one, 2)[i] as Lot), depths: lot.depths }));

const isKept = (one: Design, { designs }: FindAnswer) =>
  designs.some((other) => keyOf(other.joint) === keyOf(one.joint)) ||
  designs.some((other) => group(other) === group(one) && betters(other.figures, one.figures));

describe('widening a limit', () => {
  it.each(Object.keys(LOOSENED))('loses nothing: %s', (name) => {
    const loosen = LOOSENED[name] ?? ((wanted: Wanted) => wanted);
    let seen = 0;
    fc.assert(
      fc.property(wishes, (wanted) => {
        const [before, after] = [met(wanted), met(loosen(wanted))];
        seen += before.size;
        expect([...before].filter((key) => !after.has(key))).toEqual([]);
      }),
      { numRuns: 12 },
    );
    expect(seen).toBeGreaterThan(0);
  });

  it('leaves every design told, or tells one of its kind and filament that betters it', () => {
    fc.assert(
      fc.property(wishes, fc.constantFrom('room along', 'effort at most', 'chance', 'filaments'), (wanted, name) => {
        const wider = LOOSENED[name]?.(wanted) ?? wanted;
        const [before, after] = [wanted, wider].map((one) => searched(whole(one), one)) as [FindAnswer, FindAnswer];
        expect(before.designs.filter((one) => !isKept(one, after))).toEqual([]);
      }),
      { numRuns: 10 },
    );
  });
});

describe('what is told', () => {
  it('of each miss admits it, where the brief alone stands in its way', () => {
    const admitted = new Set<string>();
    fc.assert(
      fc.property(wishes, (wanted) => {
        for (const { nearest } of searched(lotsOf(wanted, 2), wanted).failed) {
          const wider = nearest && admitting(wanted, nearest);
          if (!nearest || !wider) continue;
          const { room } = nearest.figures;
          const a = assess({ ...nearest.joint, movement: { ...nearest.joint.movement, ...changeOf(wider) } });
          expect(a.ok).toBe(true);
          // It falls short in nothing else, so that what is laid over air is within limits, or held up by supports.
          if (a.ok) expect(shortfallsOf(wider, a.value, room, { bridge: 0, ledge: 0 })).toEqual([]);
          admitted.add(nearest.short[0].reason);
        }
      }),
      { numRuns: 25 },
    );
    expect([...admitted]).toEqual(expect.arrayContaining(['along', 'life', 'hard']));
  });

  it('of each design are the figures that it has when it is assessed alone', () => {
    fc.assert(
      fc.property(wishes, (wanted) => {
        for (const { joint, figures } of searched(lotsOf(wanted, 2), wanted).designs.slice(0, 40)) {
          const alone = handJudge(structuredClone(joint));
          if (!alone.ok) throw new Error(alone.problems[0].message);
          const { strain, effort, set, life } = alone.value;
          expect([strain.peak, effort.effort, set.amount, life.chance, life.median]).toEqual([
            figures.strain,
            figures.effort,
            figures.set,
            figures.chance,
            figures.median,
          ]);
        }
      }),
      { numRuns: 10 },
    );
  });
});

const changeOf = ({ movement: { chance, effortAtMost } }: Wanted) => ({
  chance,
  ...(effortAtMost === undefined ? {} : { effortAtMost }),
});

const weighed: fc.Arbitrary<Weighed> = fc.record({
  size: fc.integer({ min: 1, max: 12 }),
  chance: fc.integer({ min: 1, max: 12 }).map((n) => n / 13),
  effort: fc.integer({ min: 1, max: 6 }),
});

const key = ({ size, chance, effort }: Weighed) => `${size}/${chance}/${effort}`;

describe('a front', () => {
  it('keeps exactly what nothing betters, in whatever order it is offered', () => {
    fc.assert(
      fc.property(fc.array(weighed, { maxLength: 60 }), (all) => {
        const byPairs = all.filter((one) => !all.some((other) => betters(other, one)));
        expect(frontOf(all).map(key).toSorted()).toEqual(byPairs.map(key).toSorted());
        const backwards = new Front<Weighed>();
        for (const one of all.toReversed()) if (!backwards.isBettered(one)) backwards.keep(one);
        expect(backwards.kept.map(key).toSorted()).toEqual(byPairs.map(key).toSorted());
      }),
    );
  });

  it('has no design that betters itself, and no two that better each other', () => {
    fc.assert(
      fc.property(weighed, weighed, (a, b) => {
        expect(betters(a, a)).toBe(false);
        expect(betters(a, b) && betters(b, a)).toBe(false);
      }),
    );
  });
});
