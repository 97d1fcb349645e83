/** Other filaments in the place of a joint's own: the same answer as if the joint were made of them. */
import { describe, expect, it } from 'vitest';
import { inOrder, ORDERS, standingOf } from '../../../src/core/design/acrossFilaments.ts';
import { warmestFor } from '../../../src/core/design/warmest.ts';
import { suitsOf, SUITS } from '../../../src/core/life/suits.ts';
import { soundness } from '../../../src/core/material/choose.ts';
import { fromMemory, TRAITS, traitOf } from '../../../src/core/material/compare.ts';
import { FILAMENTS } from '../../../src/core/material/filaments.ts';
import { wholeRow } from '../../../src/core/material/wholeRow.ts';
import { filament } from '../../support/filament.ts';
import { assessed, changed, LEAF } from '../../support/joints.ts';

const ROWS = FILAMENTS.map(wholeRow);
const JOINTS = [
  ['one way', LEAF],
  ['both ways', changed(LEAF, { movement: { ways: 'both ways' } })],
  ['upright', changed(LEAF, { profile: { lying: 'upright' }, sizes: { length: 30 } })],
  ['held', changed(LEAF, { movement: { held: true } })],
  ['past all counting', changed(LEAF, { movement: { cycles: 3_000_000 } })],
  ['hard', changed(LEAF, { sizes: { length: 3 } })],
] as const;

describe.each(JOINTS)('a leaf, %s', (_, joint) => {
  const a = assessed(joint);

  it.each(ROWS.map((row) => [row.id, row] as const))('lives in %s as the leaf made of it does', (id, row) => {
    const made = assessed(changed(joint, { profile: { filament: id } }));
    const { life, grade, severity } = standingOf(a, row);
    // The strain of an arc is the same in every filament, to the last digit.
    expect(life).toEqual(made.life);
    expect(severity * a.strain.peak).toBeCloseTo(made.life.equivalentStrain, 12);
    // A verdict may be worse for how it pushes, prints or stands the warmth, and better for nothing.
    const worst = ['pass', 'beyond', 'caution', 'fail'];
    expect(worst.indexOf(grade)).toBeLessThanOrEqual(worst.indexOf(made.verdict.grade));
  });

  it('grades its own filament as its verdict does', () => {
    if (['life', 'beyond data', 'within all limits', 'yield', 'break'].includes(a.verdict.reason)) {
      expect(standingOf(a, a.filament).grade).toBe(a.verdict.grade);
    }
  });
});

describe('orders', () => {
  const a = assessed(LEAF);
  const standing = (row: (typeof ROWS)[number]) => standingOf(a, row);

  it.each(ORDERS)('by %s keep every filament, once', (order) => {
    const ids = inOrder(ROWS, order, standing).map(({ id }) => id);
    expect(ids.toSorted()).toEqual(ROWS.map(({ id }) => id).toSorted());
    expect(inOrder(inOrder(ROWS, order, standing), order, standing).map(({ id }) => id)).toEqual(ids);
  });

  it('by life do not tell apart what lies past the data', () => {
    const easy = assessed(changed(LEAF, { sizes: { length: 150 } }));
    const past = ROWS.filter((row) => {
      const { life } = standingOf(easy, row);
      return life.median > life.maxReportableCycles && life.maxReportableCycles === 1e6;
    });
    expect(past.length).toBeGreaterThan(3);
    const ordered = inOrder(past, 'life', (row) => standingOf(easy, row));
    expect(ordered).toEqual(past);
  });

  it('by strain stood again and again begin with TPU and end with ABS or PLA, as their rows say', () => {
    const ids = inOrder(ROWS, 'repeated', standing).map(({ id }) => id);
    expect(ids.slice(0, 2)).toEqual(['tpu95a', 'pp']);
    expect(ids.slice(-2).toSorted()).toEqual(['abs', 'pla']);
  });

  it('by life follow the notes on fatigue: pla, abs, asa, petg, pa12, pa6, pp', () => {
    const known = ['pp', 'pa6', 'pa12', 'petg', 'asa', 'abs', 'pla'];
    const ids = inOrder(ROWS, 'life', standing).map(({ id }) => id);
    expect(ids.filter((id) => known.includes(id))).toEqual(known);
  });
});

describe('what is from memory', () => {
  it('is counted value by value', () => {
    let [memory, all] = [0, 0];
    for (const row of ROWS) {
      for (const trait of TRAITS) {
        const quantity = traitOf(row, trait);
        if (!quantity) continue;
        all += 1;
        if (soundness(quantity.provenance) === 'memory') memory += 1;
      }
    }
    expect(fromMemory(ROWS)).toEqual({ memory, all });
    // One filament has no layers.
    expect(all).toBe(ROWS.length * TRAITS.length - 1);
    expect(memory).toBeGreaterThan(all / 2);
  });
});

function suits(id: Parameters<typeof filament>[0], use: string): boolean | undefined {
  return suitsOf(wholeRow(filament(id))).find((one) => one.use === use)?.suits;
}

describe('what a filament suits', () => {
  it('agrees with practice and the fold test', () => {
    expect(['pp', 'tpu95a'].map((id) => suits(id as 'pp', 'full folds'))).toEqual([true, true]);
    expect(['pla', 'abs', 'asa', 'petg', 'pc'].map((id) => suits(id as 'pla', 'full folds'))).toEqual(
      Array.from({ length: 5 }, () => false),
    );
    // Nylon has about a thousand full folds, which is neither few nor many.
    expect(suits('pa6', 'full folds')).toBeUndefined();
    expect(suits('pp', 'stiff springs')).toBe(false);
    expect(suits('pp', 'being held')).toBe(false);
    expect(suits('pla', 'warm places')).toBe(false);
    expect(suits('pa6', 'damp and dry')).toBe(false);
  });

  it('says nothing twice, and only what its limits decide', () => {
    for (const row of ROWS) {
      const uses = suitsOf(row).map(({ use }) => use);
      expect(new Set(uses).size).toBe(uses.length);
      const stiff = suitsOf(row).find(({ use }) => use === 'stiff springs');
      if (stiff) {
        expect(stiff.suits).toBe(stiff.figure >= SUITS.springs.stiff);
        expect(stiff.suits || stiff.figure < SUITS.springs.soft).toBe(true);
      }
    }
  });
});

describe('the warmest that a joint may get', () => {
  it.each(FILAMENTS.map(({ id }) => [id]))('is where the verdict still says nothing of warmth: %s', (id) => {
    const joint = changed(LEAF, { profile: { filament: id } });
    const warmest = warmestFor(joint, assessed(joint).filament);
    const at = (temperatureC: number) =>
      assessed({ ...joint, surroundings: { temperatureC, moisture: 'damp' } }).warmth.grade;
    expect(at(warmest)).toBe('pass');
    expect(at(warmest + 1)).not.toBe('pass');
  });
});
