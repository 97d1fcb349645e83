import { describe, expect, it } from 'vitest';
import type { Movement } from '../../../src/core/design/joint.ts';
import { checkMovement, MOVEMENT_LIMITS } from '../../../src/core/design/movementLimits.ts';
import { asRad, radians } from '../../../src/core/units.ts';

const WANTED: Movement = { angle: radians(35), ways: 'one way', cycles: 5000, held: false, chance: 0.9 };

describe('what a movement may ask for', () => {
  it.each([
    ['the least angle', { angle: radians(0.1) }],
    ['a full turn', { angle: radians(360) }],
    ['one flex', { cycles: 1 }],
    ['1e9 flexes', { cycles: 1e9 }],
    ['half of the prints', { chance: 0.5 }],
    ['99 in 100', { chance: 0.99 }],
  ])('%s is allowed', (_, change) => {
    expect(checkMovement({ ...WANTED, ...change })).toEqual([]);
  });

  it.each([
    ['no angle', { angle: asRad(0) }, 'below-minimum', 'movement.angle'],
    ['an angle to the other side', { angle: radians(-35) }, 'below-minimum', 'movement.angle'],
    ['more than a turn', { angle: radians(360.1) }, 'above-maximum', 'movement.angle'],
    ['an angle that is none', { angle: asRad(Number.NaN) }, 'not-a-number', 'movement.angle'],
    ['an endless angle', { angle: asRad(Infinity) }, 'not-a-number', 'movement.angle'],
    ['no flex', { cycles: 0 }, 'below-minimum', 'movement.cycles'],
    ['too many flexes', { cycles: 1e9 + 1 }, 'above-maximum', 'movement.cycles'],
    ['half a flex', { cycles: 1.5 }, 'not-whole', 'movement.cycles'],
    ['flexes that are no number', { cycles: Number.NaN }, 'not-a-number', 'movement.cycles'],
    ['less than half of the prints', { chance: 0.49 }, 'below-minimum', 'movement.chance'],
    ['every print', { chance: 1 }, 'above-maximum', 'movement.chance'],
    ['a chance that is no number', { chance: Number.NaN }, 'not-a-number', 'movement.chance'],
  ])('%s is refused', (_, change, code, field) => {
    expect(checkMovement({ ...WANTED, ...change })).toMatchObject([{ code, field }]);
  });

  it('says angles in degrees and compares them in radians', () => {
    expect(checkMovement({ ...WANTED, angle: radians(400) })).toEqual([
      {
        code: 'above-maximum',
        message:
          'angle 400° is above 360° (less is no movement, and past a full turn the pads run into each other); lower it',
        field: 'movement.angle',
        value: radians(400),
        limit: MOVEMENT_LIMITS.angle.max,
      },
    ]);
  });

  it('is judged figure by figure', () => {
    const bad = { ...WANTED, angle: asRad(0), cycles: 0, chance: 0 };
    expect(checkMovement(bad).map(({ field }) => field)).toEqual([
      'movement.angle',
      'movement.cycles',
      'movement.chance',
    ]);
  });
});
