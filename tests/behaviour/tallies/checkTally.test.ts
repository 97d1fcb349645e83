import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Limits } from '../../../src/core/material/ownLimits.ts';
import { MOST_TALLIES, type Tally, type TallyKind, type Tests } from '../../../src/core/material/tally.ts';
import type { Problem } from '../../../src/core/problems.ts';
import { checkTally, checkTests } from '../../../src/core/tallies/checkTally.ts';
import { ANGLE_LIMITS, TALLY_LIMITS } from '../../../src/core/tallies/tallyLimits.ts';
import { asRad, radians } from '../../../src/core/units.ts';
import { anyTally, anyTests } from '../../support/tallies.ts';

const said = { id: 't-1', date: '2026-03-04', seen: '' } as const;
const strip = { ...said, thickness: 0.84, lying: 'flat' } as const;
const flexed = { ...strip, kind: 'flexes', ways: 'one way', cycles: 700, ended: 'broke' } as const;

/** One that can be used of each kind, strips bent in both ways. */
const SOUND = {
  over: { ...flexed, bend: { way: 'over', radius: 5 } },
  to: { ...flexed, bend: { way: 'to', turn: radians(90), length: 10 } },
  thickness: { ...said, kind: 'thickness', countOf: 'lines', count: 2, set: 0.84, measured: 0.88 },
  mark: { ...strip, kind: 'mark', radius: 5, looks: 'whitened' },
  // 5 g on a bar of 71 × 6 × 0.84 mm of some 2 000 MPa.
  sag: { ...strip, kind: 'sag', force: 0.05, sag: 10, length: 71, depth: 6 },
  hold: { ...said, kind: 'hold', thickness: 0.84, radius: 5, hours: 24, held: radians(120), left: radians(9) },
  pull: { ...said, kind: 'pull', direction: 'along lines', strength: 40, modulus: 2000 },
} as const satisfies Readonly<Record<string, Tally>>;
type Name = keyof typeof SOUND;

/** The tally with one field put in the place of another; `bend.radius` is one of its bend. */
function withField(name: Name, path: string, value: unknown): Tally {
  const tally: Readonly<Record<string, unknown>> = SOUND[name];
  const [outer = '', inner] = path.split('.');
  const next = inner === undefined ? value : { ...(tally[outer] as object), [inner]: value };
  return { ...tally, [outer]: next } as unknown as Tally;
}

const problemsAt = (field: string, tally: Tally) => checkTally(tally).filter((problem) => problem.field === field);
const first = (name: Name, field: string, value: unknown): Problem | undefined =>
  problemsAt(field, withField(name, field, value))[0];

type Figure = keyof typeof TALLY_LIMITS;
const FIGURES: readonly (readonly [Name, string, Figure])[] = [
  ['over', 'thickness', 'thickness'],
  ['over', 'bend.radius', 'radius'],
  ['over', 'cycles', 'cycles'],
  ['to', 'thickness', 'thickness'],
  ['to', 'bend.length', 'length'],
  ['thickness', 'count', 'count'],
  ['thickness', 'set', 'set'],
  ['thickness', 'measured', 'measured'],
  ['mark', 'radius', 'radius'],
  ['mark', 'thickness', 'thickness'],
  ['sag', 'force', 'force'],
  ['sag', 'sag', 'sag'],
  ['sag', 'length', 'length'],
  ['sag', 'thickness', 'thickness'],
  ['sag', 'depth', 'depth'],
  ['hold', 'radius', 'radius'],
  ['hold', 'thickness', 'thickness'],
  ['hold', 'hours', 'hours'],
  ['pull', 'strength', 'strength'],
  ['pull', 'modulus', 'modulus'],
];
const ANGLES = [
  ['to', 'bend.turn', 'turn', 'angle turned'],
  ['hold', 'held', 'held', 'angle held'],
  ['hold', 'left', 'left', 'angle left'],
] as const;

/** Past it by more than round-off and less than anybody measures. */
const PAST = 1e-6;

/** The bar with its end lower by a share of its length. */
const hanging = (share: number) => withField('sag', 'sag', share * 71);

const of = (change: Partial<Tests>): readonly Problem[] =>
  checkTests({ printer: 'left one', spool: '3', like: 'petg', tallies: [], ...change });
const many = (count: number) => Array.from({ length: count }, (_, index) => ({ ...SOUND.pull, id: `t-${index}` }));

describe('a tally', () => {
  it.each(Object.keys(SOUND) as Name[])('of a test that was made has nothing wrong with it: %s', (name) => {
    expect(checkTally(SOUND[name])).toEqual([]);
  });

  it('made at random within reason has nothing wrong with it, whatever its kind', () => {
    const kinds = new Set<TallyKind>();
    fc.assert(
      fc.property(anyTally, (tally) => {
        kinds.add(tally.kind);
        const figures = checkTally(tally).filter(({ code }) => code !== 'below-minimum' && code !== 'above-maximum');
        expect(figures).toEqual([]);
      }),
    );
    expect(kinds.size).toBe(6);
  });

  it.each(FIGURES)('of %s: %s may go to its limits and no further', (name, field, figure) => {
    const { what, min, max, units, because }: Limits = TALLY_LIMITS[figure];
    const step = figure === 'cycles' || figure === 'count' ? 1 : PAST;
    const refused = (value: number) => first(name, field, value);
    for (const limit of [min, max]) expect(refused(limit)?.limit).not.toBe(limit);
    for (const [value, limit, code, cure] of [
      [min * (1 - step), min, 'below-minimum', 'raise it'],
      [max * (1 + step), max, 'above-maximum', 'lower it'],
    ] as const) {
      expect(refused(value)).toMatchObject({ code, field, value, limit });
      const unit = units[0] === '' ? '' : ` ${units[0]}`;
      expect(refused(value)?.message).toContain(`${what}: `);
      expect(refused(value)?.message).toContain(`${limit}${unit} (${because}); ${cure}`);
    }
    expect(refused(Number.NaN)).toMatchObject({ code: 'not-a-number', field, value: 'NaN' });
    expect(refused(Infinity)?.message).toMatch(/: Infinity is not a number; give one from .* to /);
  });

  it.each(ANGLES)('of %s: %s may go to its limits and no further, told in degrees', (name, field, angle, what) => {
    const { min, max } = ANGLE_LIMITS[angle];
    const refused = (value: number) => first(name, field, asRad(value));
    for (const limit of [min, max]) expect(refused(limit)?.limit).not.toBe(limit);
    expect(refused(min - PAST)).toMatchObject({ code: 'below-minimum', limit: min, unit: 'rad' });
    expect(refused(max + PAST)).toMatchObject({ code: 'above-maximum', limit: max, unit: 'rad' });
    expect(refused(max + PAST)?.message).toMatch(new RegExp(`^${what} 360.*° is above 360° \\(.*\\); `));
    expect(refused(Number.NaN)).toMatchObject({ code: 'not-a-number' });
  });

  it.each([
    ['over', 'lying', 'flat, crease, upright'],
    ['over', 'ways', 'one way, both ways'],
    ['over', 'ended', 'broke, whole'],
    ['to', 'bend.way', 'over, to'],
    ['thickness', 'countOf', 'lines, layers'],
    ['mark', 'lying', 'flat, crease, upright'],
    ['mark', 'looks', 'unmarked, whitened, cracked'],
    ['sag', 'lying', 'flat, crease, upright'],
    ['pull', 'direction', 'along lines, across layers'],
  ] as const)('of %s: %s is one of a list', (name, field, limit) => {
    const refused = {
      code: 'not-one-of',
      message: `${field} is “sideways”; give one of ${limit}`,
      value: 'sideways',
      limit,
    };
    expect(first(name, field, 'sideways')).toMatchObject(refused);
    expect(String(first(name, field, 'x'.repeat(1000))?.value)).toHaveLength(40);
  });

  it.each([
    ['over', 'cycles', 'number of flexes: 7.5 is not whole; give a count'],
    ['thickness', 'count', 'number of lines or layers: 7.5 is not whole; give a count'],
  ] as const)('of %s: %s is whole', (name, field, message) => {
    expect(first(name, field, 7.5)).toEqual({ code: 'not-whole', message, field, value: 7.5 });
  });

  it('says in plain words what is past which limit, why, and what helps', () => {
    expect(first('over', 'bend.radius', 0.05)?.message).toBe(
      'radius of the bar: 0.05 mm is below 0.1 mm (a sharper one is an edge, and over a flatter one nothing bends); raise it',
    );
    expect(first('to', 'bend.turn', radians(400))?.message).toBe(
      'angle turned 400° is above 360° (less is no bend, and more than a full turn meets itself); lower it',
    );
  });

  it('of a bend that strains nothing, or more than a fold, is refused for its strain', () => {
    const flat = { ...SOUND.over, thickness: 0.1, bend: { way: 'over', radius: 1000 } } as const;
    expect(checkTally(flat)).toMatchObject([{ code: 'below-minimum', field: 'thickness', limit: 0.0001 }]);
    const folded = { ...SOUND.to, thickness: 2, bend: { way: 'to', turn: radians(180), length: 1 } } as const;
    expect(checkTally(folded)[0]?.message).toBe(
      'strain of this bend: 314.2 % is above 200 % (at less nothing happens, and nothing folds tighter than flat); lower it',
    );
    expect(checkTally({ ...SOUND.mark, thickness: 0.1, radius: 1000 })).toMatchObject([{ code: 'below-minimum' }]);
    expect(checkTally({ ...SOUND.hold, thickness: 0.1, radius: 1000 })).toMatchObject([{ code: 'below-minimum' }]);
  });

  it('of a rung that is not nearly as thick as it was set is refused, since a digit is wrong', () => {
    expect(checkTally({ ...SOUND.thickness, measured: 2.7 })).toEqual([]);
    expect(checkTally({ ...SOUND.thickness, measured: 0.06 })).toEqual([]);
    expect(checkTally({ ...SOUND.thickness, measured: 8.8 })).toMatchObject([
      { code: 'above-maximum', field: 'measured', limit: 2.72 },
    ]);
    expect(checkTally({ ...SOUND.thickness, measured: 0.05 })[0]?.message).toBe(
      'thickness measured: 0.05 mm is below 0.052 mm (no printer that lays less or more prints anything); raise it',
    );
  });

  it('of a bar that hangs further than its weight holds on is refused for its sag', () => {
    expect(problemsAt('sag', hanging(0.9)).map(({ limit }) => limit)).not.toContain(63.9);
    expect(problemsAt('sag', hanging(0.91))).toMatchObject([{ code: 'above-maximum', limit: 63.9 }]);
    expect(problemsAt('sag', hanging(0.91))[0]?.message).toMatch(
      /^sag 64\.61 mm is above 63\.9 mm, nine tenths.*; hang less on it$/,
    );
  });

  it('of a bar whose figures make a stiffness that no plastic has is refused for it', () => {
    // A weight entered in grams for newtons.
    const slip = checkTally({ ...SOUND.sag, force: 5 });
    expect(slip).toMatchObject([{ code: 'above-maximum', field: 'sag' }]);
    expect(slip[0]?.message).toContain('stiffness that these figures make: ');
    expect(checkTally({ ...SOUND.sag, thickness: 15, length: 50 })).toMatchObject([
      { code: 'below-minimum', field: 'sag' },
    ]);
  });

  it('of a strip of which more stays bent than was held is refused', () => {
    expect(checkTally({ ...SOUND.hold, left: SOUND.hold.held })).toEqual([]);
    expect(checkTally({ ...SOUND.hold, left: radians(121) })).toMatchObject([
      { code: 'above-maximum', field: 'left', limit: radians(120), unit: 'rad' },
    ]);
  });

  it('needs a key, a day, and words that fit into one line', () => {
    expect(first('pull', 'id', '')).toMatchObject({
      code: 'missing-field',
      message: 'the tally has no key; give it one',
    });
    expect(first('pull', 'id', 'k'.repeat(60))).toBeUndefined();
    expect(first('pull', 'id', 'k'.repeat(61))).toMatchObject({ code: 'too-large', value: 61, limit: 60 });
    expect(first('pull', 'seen', '👍'.repeat(200))).toBeUndefined();
    expect(first('pull', 'seen', 'x'.repeat(201))?.message).toBe(
      'seen has 201 characters, at most 200 are kept; shorten it',
    );
    for (const text of ['two\nlines', 'a\u0000b', 'a\u2028b', 'half \uD83D']) {
      expect(first('pull', 'seen', text)).toMatchObject({ code: 'not-one-of', field: 'seen' });
    }
    expect(first('pull', 'date', '2026-02-30')?.message).toBe(
      'date “2026-02-30” is no day; write year, month and day as 2026-11-25',
    );
  });
});

describe('the tests of a row', () => {
  it('have nothing wrong with them at random, nor where there are none', () => {
    expect(of({ printer: '', spool: '' })).toEqual([]);
    fc.assert(
      fc.property(anyTests, (tests) => {
        expect(checkTests(tests)).toEqual([]);
      }),
    );
  });

  it('say which tally is wrong', () => {
    expect(of({ tallies: [SOUND.over, { ...SOUND.mark, id: 't-2', radius: 0 }] })).toMatchObject([
      { code: 'below-minimum', field: 'tallies[1].radius' },
    ]);
  });

  it('have no key twice', () => {
    expect(of({ tallies: [SOUND.over, SOUND.mark, SOUND.pull] })).toMatchObject([
      { code: 'given-twice', field: 'tallies[1].id', value: 't-1' },
      { code: 'given-twice', field: 'tallies[2].id' },
    ]);
  });

  it('are not more than a row carries', () => {
    expect(of({ tallies: many(MOST_TALLIES) })).toEqual([]);
    expect(of({ tallies: many(MOST_TALLIES + 1) })).toMatchObject([
      { code: 'too-large', field: 'tallies', value: 501, limit: 500 },
    ]);
  });

  it.each(['printer', 'spool', 'like'] as const)('say the %s in one line', (field) => {
    expect(of({ [field]: 'two\nlines' })).toMatchObject([{ code: 'not-one-of', field }]);
    expect(of({ [field]: 'x'.repeat(201) })).toMatchObject([{ code: 'too-large', field, limit: 200 }]);
  });
});
