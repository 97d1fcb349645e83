import { describe, expect, it } from 'vitest';
import { counted, keyOf } from '../../../../src/ui/tests/tally/counting.ts';
import { isTalliesName } from '../../../../src/ui/app/fileKind.ts';
import { barPlan } from '../../../../src/ui/tests/curve/barPlan.ts';
import { nextSpool, spoolName } from '../../../../src/ui/text/testsText.ts';
import { radians } from '../../../../src/core/units.ts';

const press = (key: string, more: object = {}) =>
  keyOf({ key, ctrlKey: false, metaKey: false, altKey: false, repeat: false, ...more });

describe('a count under the hand', () => {
  it('knows its four keys and no others', () => {
    expect([' ', 'b', 'B', 's', 'Backspace', 'a', 'Enter'].map((key) => press(key))).toEqual([
      'bent',
      'broke',
      'broke',
      'stop',
      'back',
      undefined,
      undefined,
    ]);
  });

  it('does not take a key that is held down for many bends, nor one that is pressed with another', () => {
    expect(press(' ', { repeat: true })).toBeUndefined();
    expect(press('s', { ctrlKey: true })).toBeUndefined();
  });

  it('never falls below what the strip stood before', () => {
    expect(counted({ cycles: 1460, from: 't' }, -1, 1460)).toEqual({ cycles: 1460, from: 't' });
    expect(counted({ cycles: 1461, from: 't' }, -1, 1460)).toEqual({ cycles: 1460, from: 't' });
    expect(counted({ cycles: 0 }, -1, 0)).toEqual({ cycles: 0 });
  });
});

describe('spools', () => {
  it('are named apart, and counted on', () => {
    expect(spoolName('PETG', 'spool 3', [])).toBe('PETG, spool 3');
    expect(spoolName('PETG', 'spool 3', ['PETG, spool 3'])).toBe('PETG, spool 3 (2)');
    expect(nextSpool('spool 3')).toBe('spool 4');
    expect(nextSpool('the grey one')).toBe('the grey one 2');
  });
});

describe('a strip over a bar', () => {
  const stops = { repeated: 0.01, yield: 0.03, full: 0.05 };
  const strip = { bend: { way: 'over', radius: 5 }, thickness: 0.84, strain: 0.0775 } as const;

  it('is drawn at the scale it says, and no wider than its paper', () => {
    for (const width of [320, 500, 797]) {
      const plan = barPlan(strip, { width, pxPerMm: 4, stops });
      expect(plan.thick).toBeCloseTo(0.84 * plan.scale * 4, 9);
      expect(plan.inner).toBeCloseTo(5 * plan.scale * 4, 9);
      expect(plan.width).toBeLessThanOrEqual(width);
    }
  });

  it('is bent to the length along its middle where its ends are turned', () => {
    const bend = { way: 'to', turn: radians(120), length: 12 } as const;
    const plan = barPlan({ ...strip, bend }, { width: 600, pxPerMm: 4, stops });
    const middle = (plan.inner + plan.thick / 2) / (plan.scale * 4);
    expect(middle * bend.turn).toBeCloseTo(12, 9);
  });
});

it('knows a table of tallies by the ending of its name', () => {
  expect(isTalliesName('mine.CSV')).toBe(true);
  expect(isTalliesName('mine.csv.stl')).toBe(false);
});
