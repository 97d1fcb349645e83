/** The catalogue of kinds: which can do what is asked, and how its rows are walked by keyboard. */
import { describe, expect, it } from 'vitest';
import { FAMILIES } from '../../../src/core/flexures/index.ts';
import { familyOf } from '../../../src/core/flexures/known.ts';
import { LYINGS } from '../../../src/core/print/profile.ts';
import { ANYTHING, driveFor, letterTo, stepTo, whyNot } from '../../../src/ui/joints/kindsAsked.ts';

const idsThatCan = (asked: Parameters<typeof whyNot>[1]) =>
  FAMILIES.filter((family) => whyNot(family, asked) === undefined).map(({ id }) => id);

describe('what is asked of a kind', () => {
  it('anything is what every kind can do', () => {
    expect(idsThatCan(ANYTHING)).toHaveLength(FAMILIES.length);
  });

  it('turning and moving across are read off the drives, and the drive taken measures what was asked', () => {
    for (const doing of ['turn', 'travel'] as const) {
      for (const family of FAMILIES) {
        const can = family.drives.some(({ measure }) => measure === doing);
        expect(whyNot(family, { ...ANYTHING, doing }) === undefined).toBe(can);
        if (can) expect(driveFor(family, { ...ANYTHING, doing }).measure).toBe(doing);
      }
    }
    expect(driveFor(familyOf({ family: 'straightLeaf' }), { ...ANYTHING, doing: 'travel' }).id).toBe('pushed');
  });

  it('only what has a second place of rest can stay there', () => {
    expect(idsThatCan({ ...ANYTHING, doing: 'stay' })).toEqual(['snapArch', 'toggle']);
  });

  it('a kind that cannot lie so says how it can, in its own words', () => {
    for (const lying of LYINGS) {
      expect(idsThatCan({ ...ANYTHING, lying })).toEqual(
        FAMILIES.filter(({ lyings }) => lyings.includes(lying)).map(({ id }) => id),
      );
    }
    const asked = { ...ANYTHING, lying: 'crease' } as const;
    expect(whyNot(familyOf({ family: 'cellPanel' }), asked)).toBe(
      'Cannot be printed thin in the build direction, only on its edge or on its end.',
    );
    expect(whyNot(familyOf({ family: 'spiral' }), { ...asked, lying: 'upright' })).toBe(
      'Cannot be printed upright, only flat.',
    );
  });
});

describe('walking the rows', () => {
  it('goes by row and column, and never off the edge', () => {
    expect(stepTo(0, 'right', 11, 2)).toBe(1);
    expect(stepTo(1, 'right', 11, 2)).toBe(1);
    expect(stepTo(2, 'left', 11, 2)).toBe(2);
    expect(stepTo(1, 'down', 11, 2)).toBe(3);
    expect(stepTo(9, 'down', 11, 2)).toBe(9);
    expect(stepTo(8, 'down', 11, 2)).toBe(10);
    expect(stepTo(1, 'up', 11, 2)).toBe(1);
    expect(stepTo(5, 'first', 11, 2)).toBe(0);
    expect(stepTo(5, 'last', 11, 2)).toBe(10);
    expect(stepTo(4, 'down', 11, 1)).toBe(5);
  });

  it('a letter goes to the next name, round to the front, and stays where none begins so', () => {
    const names = ['straight leaf', 'crease', 'crossed leaves', 'spiral'];
    expect(letterTo(0, 'c', names)).toBe(1);
    expect(letterTo(1, 'c', names)).toBe(2);
    expect(letterTo(2, 'C', names)).toBe(1);
    expect(letterTo(3, 's', names)).toBe(0);
    expect(letterTo(2, 'x', names)).toBe(2);
  });
});
