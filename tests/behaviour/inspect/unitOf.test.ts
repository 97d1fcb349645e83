import { describe, expect, it } from 'vitest';
import type { LengthUnit } from '../../../src/core/inspect/lengthUnit.ts';
import { unitOf } from '../../../src/core/inspect/unitOf.ts';

describe('the unit of a part', () => {
  it.each<[longest: number, unit: LengthUnit, orElse: readonly LengthUnit[], what: string]>([
    [82, 'millimetre', [], 'a gripper in mm, its size beyond doubt'],
    [400, 'millimetre', [], 'as large as a large plate'],
    [12, 'millimetre', ['inch', 'centimetre'], 'a clip of 12 mm, a lid of 12 inches or a box of 12 cm'],
    [1.811, 'inch', ['centimetre'], 'a leaf of 46 mm drawn in inches'],
    [5, 'inch', ['millimetre', 'centimetre'], 'a bracket five inches long: 5 mm is hardly a part'],
    [0.046, 'metre', ['foot'], 'a leaf of 46 mm drawn in metres'],
    [46_000, 'micron', [], 'the same in microns'],
    [1000, 'millimetre', [], 'larger than any printer, and most likely what it is'],
    [0, 'millimetre', [], 'nothing'],
  ])('%d is read in %s', (longest, unit, orElse) => {
    expect(unitOf(longest)).toEqual({ unit, by: 'sized', orElse });
  });

  it('is what the file states, and doubted only where nobody prints that size', () => {
    expect(unitOf(1.8, 'inch')).toEqual({ unit: 'inch', by: 'stated', orElse: [] });
    expect(unitOf(12, 'millimetre')).toEqual({ unit: 'millimetre', by: 'stated', orElse: [] });
    expect(unitOf(1.8, 'millimetre')).toEqual({ unit: 'millimetre', by: 'stated', orElse: ['inch', 'centimetre'] });
  });

  it('is what the user tells, whatever the file states', () => {
    expect(unitOf(82, 'millimetre', 'metre')).toEqual({ unit: 'metre', by: 'told', orElse: [] });
  });
});
