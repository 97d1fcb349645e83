import { describe, expect, it } from 'vitest';
import { FILAMENTS } from '../../../src/core/material/filaments.ts';
import type { Filament, FurtherRow, Quantity } from '../../../src/core/material/types.ts';
import { wholeRow } from '../../../src/core/material/wholeRow.ts';
import { filament } from '../../support/filament.ts';

const ROWS = import.meta.glob<Readonly<Record<string, Filament>>>('../../../src/core/material/rows/*.ts', {
  eager: true,
});
const FURTHER = import.meta.glob<Readonly<Record<string, FurtherRow>>>('../../../src/core/material/further/*.ts', {
  eager: true,
});

/** The properties of a row without their notes. */
const bare = (properties: Filament['properties']) =>
  Object.fromEntries(
    Object.entries<Quantity>(properties as never).map(([name, { note: _note, ...rest }]) => [name, rest]),
  );

describe.each(FILAMENTS)('the whole row of $id', (row) => {
  const whole = wholeRow(row);

  it('keeps every figure that answers rest on, and says more than that', () => {
    expect(bare(whole.properties)).toMatchObject(bare(row.properties));
    expect(Object.keys(whole.properties).length).toBeGreaterThan(Object.keys(row.properties).length);
    const { note, ...life } = whole.life;
    expect(life).toEqual(row.life);
    expect(note).toBeTruthy();
  });

  it('is whole once, however often it is asked for', () => {
    expect(wholeRow(whole)).toEqual(whole);
  });
});

describe('a note of a row', () => {
  it('comes with the whole row, to the figure it is about', () => {
    expect(filament('tpu95a').properties.yieldStrain.note).toBeUndefined();
    expect(wholeRow(filament('tpu95a')).properties.yieldStrain.note).toContain('onset of marked set');
  });

  it('is never about a figure that the row does not have, and no figure stands in both places', () => {
    expect(Object.keys(FURTHER)).toHaveLength(FILAMENTS.length);
    for (const [path, module] of Object.entries(FURTHER)) {
      const [further] = Object.values(module);
      const [row] = Object.values(ROWS[path.replace('/further/', '/rows/')] ?? {});
      const answering = Object.keys(row?.properties ?? {});
      expect(Object.keys(further?.notes ?? {}).filter((name) => !answering.includes(name))).toEqual([]);
      expect(Object.keys(further?.properties ?? {}).filter((name) => answering.includes(name))).toEqual([]);
    }
  });
});
