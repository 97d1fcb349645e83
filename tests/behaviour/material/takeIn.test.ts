import { describe, expect, it } from 'vitest';
import { withValue } from '../../../src/core/material/ownFilament.ts';
import { findFilament, ownFilaments, putOnShelf, withOnShelf } from '../../../src/core/material/shelf.ts';
import { takeIn } from '../../../src/core/material/takeIn.ts';
import type { OwnFilament } from '../../../src/core/material/types.ts';
import { ownPetg } from '../../support/ownFilaments.ts';

function stiffer(row: OwnFilament, typical: number): OwnFilament {
  const { low: _low, high: _high, ...modulus } = { ...row.properties.youngsModulus, typical };
  const next = withValue(row, 'youngsModulus', { typical }, modulus.provenance);
  if (!next.ok) throw new Error(next.problems[0].message);
  return next.value;
}

function taken(shelf: readonly OwnFilament[], incoming: readonly OwnFilament[]) {
  const result = takeIn(shelf, incoming);
  if (!result.ok) throw new Error(result.problems[0].message);
  const { ids, added, shelf: after } = result.value;
  return { after, added, ids: Object.fromEntries(ids) };
}

describe('rows that come with a part', () => {
  const blue = ownPetg();

  it('are added where they are not known', () => {
    expect(taken([], [blue])).toEqual({ after: [blue], added: [blue], ids: { 'own-petg': 'own-petg' } });
  });

  it('add nothing where they are there word for word', () => {
    expect(taken([blue], [ownPetg()])).toEqual({ after: [blue], added: [], ids: { 'own-petg': 'own-petg' } });
  });

  it('come in under another key and name where theirs stands for something else, which stays as it is', () => {
    const other = stiffer(blue, 2100);
    const { after, added, ids } = taken([blue], [other]);
    expect(after[0]).toBe(blue);
    expect(added).toEqual([{ ...other, id: 'own-petg-2', name: 'PETG blue (2)', fullName: 'PETG blue (2)' }]);
    expect(ids).toEqual({ 'own-petg': 'own-petg-2' });
  });

  it('that came so before are found again, and a third one gets the next number', () => {
    const [second, third] = [stiffer(blue, 2100), stiffer(blue, 2200)];
    const { after } = taken([blue], [second]);
    expect(taken(after, [second])).toMatchObject({ added: [], ids: { 'own-petg': 'own-petg-2' } });
    expect(taken(after, [third]).added).toMatchObject([{ id: 'own-petg-3', name: 'PETG blue (3)' }]);
  });

  it('keep a key that an address holds, however long it was', () => {
    const long = ownPetg(`own-${'x'.repeat(40)}`);
    const [added] = taken([long], [stiffer(long, 2100)]).added;
    expect(added?.id).toBe(`own-${'x'.repeat(38)}-2`);
  });

  it('are refused past as many as are kept', () => {
    const full = Array.from({ length: 200 }, (_, n) => ownPetg(`own-${n}`, `PETG ${n}`));
    expect(takeIn(full, [ownPetg('own-3', 'PETG 3')]).ok).toBe(true);
    expect(takeIn(full, [blue])).toMatchObject({
      ok: false,
      problems: [{ code: 'too-large', value: 201, limit: 200 }],
    });
  });
});

describe('the shelf', () => {
  it('holds rows only while something is done with them, and is then as it was, even when that breaks', () => {
    putOnShelf([ownPetg('own-a', 'A')]);
    const before = ownFilaments();
    const other = ownPetg('own-a', 'Other');
    expect(withOnShelf([other], () => findFilament('own-a')?.name)).toBe('Other');
    expect(() =>
      withOnShelf([other], () => {
        throw new Error('broken');
      }),
    ).toThrow('broken');
    expect(ownFilaments()).toBe(before);
    putOnShelf([]);
    expect(findFilament('own-a')).toBeUndefined();
  });
});
