import { describe, expect, it } from 'vitest';
import type { Movement, Swing } from '../../../src/core/design/joint.ts';
import { checkMovement, checkSurroundings } from '../../../src/core/design/movementLimits.ts';
import { CENTRED, PUSHED, TURNED } from '../../../src/core/flexures/commonDrives.ts';
import { crease } from '../../../src/core/flexures/crease.ts';
import { straightLeaf } from '../../../src/core/flexures/straightLeaf.ts';
import { radians } from '../../../src/core/units.ts';

const WANTED: Movement = {
  drive: 'turned',
  amount: radians(35),
  ways: 'one way',
  cycles: 5000,
  held: false,
  chance: 0.9,
};

const SMALLER: Swing = { amount: radians(10), ways: 'one way', cycles: 20_000 };

describe('what a movement may ask for', () => {
  it.each([
    ['the least angle', { amount: radians(0.1) }],
    ['a full turn', { amount: radians(360) }],
    ['one flex', { cycles: 1 }],
    ['1e9 flexes', { cycles: 1e9 }],
    ['half of the prints', { chance: 0.5 }],
    ['99 in 100', { chance: 0.99 }],
    ['the least push', { drive: 'pushed', amount: PUSHED.min }],
    ['a right angle about a pin', { drive: 'centred', amount: CENTRED.max }],
    ['the least effort', { effortAtMost: 0.001 }],
    ['to stay where it snapped to', { stays: true }],
    ['a swing as far to the other side as it may', { ways: 'between' as const, least: radians(-35) }],
    ['a swing that never comes to rest', { ways: 'between' as const, least: radians(34) }],
    ['another end that no swing of this kind has', { least: radians(90) }],
    ['a minute of holding', { heldHours: 1 / 60 }],
    ['ten years of holding', { heldHours: 87_600 }],
    ['twelve movements beside it', { also: Array.from({ length: 12 }, () => SMALLER) }],
    ['one as large', { also: [{ ...SMALLER, amount: radians(35) }] }],
  ])('%s is allowed', (_, change) => {
    expect(checkMovement({ ...WANTED, ...change }, straightLeaf)).toEqual([]);
  });

  it.each([
    ['no angle', { amount: 0 }, 'below-minimum', 'movement.amount'],
    ['an angle to the other side', { amount: radians(-35) }, 'below-minimum', 'movement.amount'],
    ['more than a turn', { amount: radians(360.1) }, 'above-maximum', 'movement.amount'],
    ['an angle that is none', { amount: Number.NaN }, 'not-a-number', 'movement.amount'],
    ['an endless angle', { amount: Infinity }, 'not-a-number', 'movement.amount'],
    ['no flex', { cycles: 0 }, 'below-minimum', 'movement.cycles'],
    ['too many flexes', { cycles: 1e9 + 1 }, 'above-maximum', 'movement.cycles'],
    ['half a flex', { cycles: 1.5 }, 'not-whole', 'movement.cycles'],
    ['flexes that are no number', { cycles: Number.NaN }, 'not-a-number', 'movement.cycles'],
    ['less than half of the prints', { chance: 0.49 }, 'below-minimum', 'movement.chance'],
    ['a push of nothing', { drive: 'pushed', amount: 0 }, 'below-minimum', 'movement.amount'],
    ['a turn past a right angle about a pin', { drive: 'centred', amount: 1.6 }, 'above-maximum', 'movement.amount'],
    ['a way to move it that nobody knows', { drive: 'thrown' }, 'not-one-of', 'movement.drive'],
    ['no effort', { effortAtMost: 0 }, 'below-minimum', 'movement.effortAtMost'],
    ['an effort that is no number', { effortAtMost: Number.NaN }, 'not-a-number', 'movement.effortAtMost'],
    [
      'a swing further back than forth',
      { ways: 'between' as const, least: radians(-36) },
      'below-minimum',
      'movement.least',
    ],
    ['a swing from beyond', { ways: 'between' as const, least: radians(36) }, 'above-maximum', 'movement.least'],
    ['a swing to nowhere', { ways: 'between' as const, least: radians(35) }, 'above-maximum', 'movement.least'],
    [
      'another end that is no number',
      { ways: 'between' as const, least: Number.NaN },
      'not-a-number',
      'movement.least',
    ],
    ['half a minute of holding', { heldHours: 1 / 120 }, 'below-minimum', 'movement.heldHours'],
    ['holding for ever', { heldHours: Infinity }, 'not-a-number', 'movement.heldHours'],
    ['thirteen beside it', { also: Array.from({ length: 13 }, () => SMALLER) }, 'above-maximum', 'movement.also'],
    [
      'one beside it that is larger',
      { also: [SMALLER, { ...SMALLER, amount: radians(36) }] },
      'above-maximum',
      'movement.also[1].amount',
    ],
    ['one beside it that is none', { also: [{ ...SMALLER, amount: 0 }] }, 'below-minimum', 'movement.also[0].amount'],
    [
      'one that goes to the other side',
      { also: [{ ...SMALLER, ways: 'both ways' as const }] },
      'below-minimum',
      'movement.also[0].ways',
    ],
    [
      'one that goes further back',
      { also: [{ ...SMALLER, ways: 'between' as const, least: -0.1 }] },
      'below-minimum',
      'movement.also[0].least',
    ],
    ['half a flex beside it', { also: [{ ...SMALLER, cycles: 0.5 }] }, 'below-minimum', 'movement.also[0].cycles'],
    ['every print', { chance: 1 }, 'above-maximum', 'movement.chance'],
    ['a chance that is no number', { chance: Number.NaN }, 'not-a-number', 'movement.chance'],
  ])('%s is refused', (_, change, code, field) => {
    expect(checkMovement({ ...WANTED, ...change }, straightLeaf)).toMatchObject([{ code, field }]);
  });

  it('says angles in degrees and compares them in radians', () => {
    expect(checkMovement({ ...WANTED, amount: radians(400) }, straightLeaf)).toEqual([
      {
        code: 'above-maximum',
        message:
          'angle 400° is above 360° (less is no movement, and past a full turn the pads run into each other); lower it',
        field: 'movement.amount',
        value: radians(400),
        limit: TURNED.max,
        unit: 'rad',
      },
    ]);
  });

  it('says travels in millimetres', () => {
    const [problem] = checkMovement({ ...WANTED, drive: 'pushed', amount: 120 }, straightLeaf);
    expect(problem?.message).toMatch(/^travel 120 mm is above 100 mm \(/);
  });

  it('names the ways in which it can be moved', () => {
    expect(checkMovement({ ...WANTED, drive: 'pushed' }, crease)).toEqual([
      {
        code: 'not-one-of',
        message: 'A crease cannot be “pushed”; choose from turned',
        field: 'movement.drive',
        value: 'pushed',
        limit: 'turned',
      },
    ]);
  });

  it('is judged figure by figure', () => {
    const bad = { ...WANTED, amount: 0, cycles: 0, chance: 0 };
    expect(checkMovement(bad, straightLeaf).map(({ field }) => field)).toEqual([
      'movement.amount',
      'movement.cycles',
      'movement.chance',
    ]);
  });
});

describe('where it may be used', () => {
  it.each([-40, 23, 150])('%s °C is allowed', (temperatureC) => {
    expect(checkSurroundings({ temperatureC, moisture: 'damp' })).toEqual([]);
  });

  it('a room is taken where nothing is said', () => {
    expect(checkSurroundings(undefined)).toEqual([]);
  });

  it.each([
    [-41, 'below-minimum'],
    [151, 'above-maximum'],
    [Number.NaN, 'not-a-number'],
  ])('%s °C is refused', (temperatureC, code) => {
    const refused = checkSurroundings({ temperatureC, moisture: 'damp' });
    expect(refused).toMatchObject([{ code, field: 'surroundings.temperatureC' }]);
    expect(refused[0]!.message).toMatch(/150 °C|-40 °C/);
  });
});
