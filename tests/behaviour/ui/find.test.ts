import { describe, expect, it } from 'vitest';
import { checkWanted } from '../../../src/core/find/checkWanted.ts';
import { SHORTCOMINGS, type Miss } from '../../../src/core/find/findAnswer.ts';
import { wantedOf } from '../../../src/core/find/wantedOf.ts';
import { radians } from '../../../src/core/units.ts';
import { demoPart } from '../../../src/store/demoPart.ts';
import { designName, groupsOf, isOpen, isThrough, keyOf, OPEN } from '../../../src/ui/find/designs.ts';
import { nearestMisses } from '../../../src/ui/find/NearestMisses.tsx';
import { withAmount, withDepth, withEffortWish, withSetWish, withStays } from '../../../src/ui/find/wantedChange.ts';
import { CHOICES, valueSpec, type WantedOf } from '../../../src/ui/find/wantedSpecs.ts';
import { carriedText, tickedText, wantedProblem } from '../../../src/ui/text/findText.ts';
import { foundName } from '../../../src/ui/text/foundText.ts';
import { allowText, missText, noneText, reasonText, shortText } from '../../../src/ui/text/findWhyText.ts';
import { answer, design, figures } from '../../support/found.ts';
import { changed, LEAF } from '../../support/joints.ts';

const WANTED = wantedOf(LEAF);
const plainly = (text: string) => text.replaceAll(/[\u00a0\u2009]/g, ' ');

describe('designs as they are listed', () => {
  const found = [
    design(12, { effort: 3 }, 'pla'),
    design(9, { effort: 8 }),
    design(9, { effort: 5 }, 'pla'),
    design(15, { effort: 2 }),
  ];

  it('come smallest first, then softest, one for each kind and filament', () => {
    const groups = groupsOf(found);
    expect(
      groups.map(({ rank, first: { design: one } }) => [rank, one.joint.profile.filament, one.figures.size]),
    ).toEqual([
      [1, 'pla', 9],
      [2, 'petg', 9],
    ]);
    expect(groups.map(({ more }) => more.map(({ design: one }) => one.figures.size))).toEqual([[12], [15]]);
  });

  it('are told by what they are, whatever object they come in', () => {
    const again = structuredClone(found);
    expect(again.map(({ joint }) => keyOf(joint))).toEqual(found.map(({ joint }) => keyOf(joint)));
    expect(new Set(found.map(({ joint }) => keyOf(joint))).size).toBe(found.length);
  });

  it('are let through up to the very limit', () => {
    const one = figures({ size: 9, chance: 0.97, effort: 5 });
    expect(isThrough(one, OPEN)).toBe(true);
    expect(isThrough(one, { size: 9, chance: 0.97, effortAtLeast: 5, effortAtMost: 5 })).toBe(true);
    expect(isThrough(one, { size: 8.9 })).toBe(false);
    expect(isThrough(one, { chance: 0.98 })).toBe(false);
    expect(isThrough(one, { effortAtLeast: 5.1 })).toBe(false);
    expect(isThrough(one, { effortAtMost: 4.9 })).toBe(false);
    expect(isOpen({ size: undefined })).toBe(true);
    expect(isOpen({ size: 3 })).toBe(false);
  });

  it.each(demoPart().joints)('have a name: $family', (joint) => {
    expect(designName(joint, 'mm')).toMatch(/^\p{Lu}[\p{L} -]+, \d+ (line|layer)s?/u);
    expect(designName(joint, 'mm')).not.toMatch(/NaN|undefined/);
  });
});

describe('a brief that is changed', () => {
  it('takes smaller swings and what may stay bent along when it is moved less far', () => {
    const also = [{ amount: radians(30), ways: 'one way', cycles: 10 } as const];
    const wanted = { ...WANTED, movement: { ...WANTED.movement, also }, setAtMost: radians(20) };
    const next = withAmount(wanted, radians(10));
    expect(next.movement.also?.[0]?.amount).toBe(radians(10));
    expect(next.setAtMost).toBe(radians(10));
    expect(withAmount(wanted, radians(40)).movement.also).toEqual(also);
    expect(checkWanted(next)).toEqual([]);
  });

  it('is no deeper at least than there is depth', () => {
    expect(withDepth(WANTED, 2)).toMatchObject({ depthAtLeast: 2, room: { depth: 2 } });
    expect(withDepth(WANTED, 9).depthAtLeast).toBe(WANTED.depthAtLeast);
  });

  it.each(['any', 'most', 'least', 'between'] as const)('may wish for an effort: %s', (wish) => {
    const free = withEffortWish(WANTED, 'any');
    for (const from of [WANTED, free, { ...free, effortAtLeast: 300 }]) {
      const next = withEffortWish(from, wish);
      expect(checkWanted(next)).toEqual([]);
      expect(next.movement.effortAtMost !== undefined).toBe(wish === 'most' || wish === 'between');
      expect(next.effortAtLeast !== undefined).toBe(wish === 'least' || wish === 'between');
    }
  });

  it('may limit what stays bent, and whether it stays', () => {
    expect(checkWanted(withSetWish(WANTED, true))).toEqual([]);
    expect('setAtMost' in withSetWish(withSetWish(WANTED, true), false)).toBe(false);
    expect(withStays(WANTED, true).movement.stays).toBe(true);
    expect('stays' in withStays(withStays(WANTED, false), undefined).movement).toBe(false);
  });
});

/** A brief on screen, and what it is changed to. */
function put(wanted = WANTED) {
  const taken: (typeof WANTED)[] = [];
  const of: WantedOf = { wanted, unit: 'mm', put: (next) => void taken.push(next) };
  return { of, taken };
}

describe('the live values of the sentence', () => {
  it.each([
    ['amount', radians(40), ['movement', 'amount']],
    ['cycles', 7, ['movement', 'cycles']],
    ['along', 33, ['room', 'along']],
    ['across', 33, ['room', 'across']],
    ['depth', 5, ['room', 'depth']],
    ['depthAtLeast', 5, ['depthAtLeast']],
    ['effortAtMost', 5, ['movement', 'effortAtMost']],
    ['effortAtLeast', 5, ['effortAtLeast']],
    ['setAtMost', 0.1, ['setAtMost']],
    ['lineWidth', 0.5, ['profile', 'lineWidth']],
    ['layerHeight', 0.1, ['profile', 'layerHeight']],
  ] as const)('change %s and stay readable', (name, value, path) => {
    const { of, taken } = put(withSetWish(withEffortWish(WANTED, 'between'), true));
    const spec = valueSpec(name, of);
    expect(spec.figure).not.toMatch(/NaN|undefined/);
    expect(spec.take(value, spec.value)).toBeUndefined();
    const reached = path.reduce<unknown>((at, key) => (at as Record<string, unknown>)[key], taken[0]);
    expect(reached).toBe(value);
  });

  it.each(Object.entries(CHOICES))('offer what stands among the choices of %s', (name, spec) => {
    const { of, taken } = put();
    const { value, options, take } = spec(of);
    expect(options.map((one) => one.value)).toContain(value);
    for (const option of options) take(option.value);
    // Back as far as the other side is asked with a value of its own.
    expect(
      taken.filter((next) => checkWanted(next).length > 0),
      name,
    ).toEqual([]);
    expect(new Set(taken.map((next) => JSON.stringify(next))).size).toBe(options.length);
  });
});

describe('words of the finder', () => {
  it('name what was found after what it is for, once', () => {
    expect(foundName('crease', 'Rain-flap hinge')).toBe('Crease for the rain-flap hinge');
    expect(foundName('spiral', 'Crease for the rain-flap hinge 2')).toBe('Spiral for the rain-flap hinge');
    expect(foundName('crease', 'PETG clip')).toBe('Crease for the PETG clip');
    expect(foundName('crease', '')).toBe('Crease');
  });

  it('tell what is ticked', () => {
    const all = { families: WANTED.families.length, filaments: WANTED.filaments.length };
    expect(tickedText(WANTED, all)).toBe('any kind, any filament, flat or as a crease');
    const few = { ...WANTED, families: ['crease'], filaments: ['pla', 'petg'], lyings: [] };
    expect(tickedText(few, all)).toBe(`1 kind, 2 of ${all.filaments} filaments, lying in no way`);
  });

  it('tell what is carried along', () => {
    expect(carriedText(WANTED, 'mm')).toBe('');
    const also = [{ amount: radians(10), ways: 'both ways', cycles: 100_000 } as const];
    const movement = { ...WANTED.movement, also, held: true, heldHours: 720 };
    const wanted = { ...WANTED, movement, surroundings: { temperatureC: 40, moisture: 'dry' } as const };
    expect(plainly(carriedText(wanted, 'mm'))).toBe(
      'Carried along from the joint: it also goes 10° both ways, 100 000 times, it is held bent for a month at a time and it is used at 40 °C at most in dry air.',
    );
  });

  it('say what is wrong with a brief in the chosen unit', () => {
    const { room } = WANTED;
    const [wide] = checkWanted({ ...WANTED, room: { ...room, across: 508 } });
    const [deep] = checkWanted({ ...WANTED, depthAtLeast: 12.7 });
    const [none] = checkWanted({ ...WANTED, filaments: [] });
    if (!wide || !deep || !none) throw new Error('nothing is wrong');
    expect(plainly(wantedProblem(wide, 'turn', 'inch'))).toBe(
      'Room across it cannot be over 11.811 in; 20 in is.'.replace('20 in', '20.00 in'),
    );
    expect(plainly(wantedProblem(deep, 'turn', 'mm'))).toBe('Depth at least cannot be over 6 mm; 12.7 mm is.');
    expect(wantedProblem(none, 'turn', 'mm')).toMatch(/ticked/);
  });
});

const miss = (reason: Miss['short'][0]['reason'], value: number, limit: number): Miss => ({
  joint: LEAF,
  figures: figures(),
  short: [{ reason, value, limit }],
});

describe('why designs fall short', () => {
  const of = { measure: 'turn', unit: 'mm' } as const;
  it.each(SHORTCOMINGS)('is said in words: %s', (reason) => {
    expect(reasonText(reason)).toMatch(/^\p{Lu}/u);
    expect(shortText(miss(reason, 0.5, 0.6), of)).not.toMatch(/NaN|undefined|null/);
  });

  it('never reads as if nothing were short', () => {
    expect(plainly(shortText(miss('along', 8.004, 8), of))).toBe('needs 8.004 mm along, 8.000 mm is wanted');
    expect(plainly(shortText(miss('hard', 40.01, 40), of))).toBe('pushes back 40.01 N·mm, 40 N·mm is the most');
    expect(plainly(shortText(miss('life', 0.94996, 0.95), of))).toBe(
      'is a hair short of the 95 in 100 that are wanted',
    );
    expect(plainly(shortText(miss('life', 0.9431, 0.95), of))).toBe('lasts in 94 in 100, 95 in 100 are wanted');
  });

  it('is told whole, and as what would help', () => {
    const short = miss('along', 11.03, 8);
    expect(plainly(missText('Leaf, 2 lines, 9.50 mm', 'PLA', short, of))).toBe(
      'Leaf, 2 lines, 9.50 mm, PLA: needs 11.0 mm along, 8.0 mm is wanted',
    );
    expect(plainly(noneText('leaf', 'PLA', short, of))).toBe('No leaf in PLA fits in 8.0 mm along; 11.0 mm would.');
  });

  it('is answered by what the button does', () => {
    const { room, movement } = WANTED;
    const allow = (change: Partial<typeof WANTED>) => plainly(allowText(WANTED, { ...WANTED, ...change }, 'mm'));
    expect(allow({ room: { ...room, along: 11 } })).toBe('Allow 11 mm along');
    expect(allow({ movement: { ...movement, effortAtMost: 41.2 } })).toBe('Allow 41.2 N·mm');
    expect(allow({ supports: true })).toBe('Allow supports');
    expect(allow({ room: { ...room, depth: 7 }, movement: { ...movement, chance: 0.8 } })).toBe(
      'Allow 7 mm of depth and 80 in 100',
    );
  });

  it('tells no miss twice where nothing was found', () => {
    const [one, other] = [
      miss('along', 11, 8),
      { ...miss('life', 0.9, 0.95), joint: changed(LEAF, { sizes: { length: 5 } }) },
    ];
    const failed = [
      { reason: 'along', alone: 3, withOthers: 9, nearest: structuredClone(one) },
      { reason: 'life', alone: 3, withOthers: 9, nearest: other },
      { reason: 'tall', alone: 0, withOthers: 9 },
    ] as const;
    expect(nearestMisses(answer({ closest: one, failed }))).toEqual([one, other]);
    expect(nearestMisses(answer())).toEqual([]);
  });
});
