import { describe, expect, it } from 'vitest';
import type { Tally, TallyKind } from '../../../../src/core/material/tally.ts';
import { PIECE_IDS, type PieceId } from '../../../../src/core/coupons/piece.ts';
import { radians } from '../../../../src/core/units.ts';
import { pageTables, type PageTable } from '../../../../src/ui/text/pieceBoxesText.ts';
import { ASKED, pieceFor } from './asked.ts';

/** One tally of every kind with nothing left out, so that their fields can be told apart from outside the page. */
const COMMON = { id: 't-1', date: '2026-11-25', seen: '' };
const TALLIES: Readonly<Record<Exclude<TallyKind, 'pull'>, Tally>> = {
  flexes: {
    ...COMMON,
    kind: 'flexes',
    bend: { way: 'over', radius: 5 },
    thickness: 0.84,
    lying: 'flat',
    ways: 'one way',
    cycles: 900,
    ended: 'broke',
  },
  thickness: { ...COMMON, kind: 'thickness', countOf: 'lines', count: 2, set: 0.84, measured: 0.86 },
  mark: { ...COMMON, kind: 'mark', radius: 5, thickness: 0.84, lying: 'flat', looks: 'whitened' },
  sag: { ...COMMON, kind: 'sag', lying: 'flat', force: 0.05, sag: 8, length: 71, thickness: 0.84, depth: 6 },
  hold: { ...COMMON, kind: 'hold', radius: 20, thickness: 0.84, hours: 24, held: radians(140), left: radians(30) },
};
const KINDS: Readonly<Record<PieceId, readonly TallyKind[]>> = {
  ladder: ['thickness'],
  comb: ['flexes'],
  radii: ['mark', 'flexes'],
  bar: ['sag'],
  hold: ['hold'],
  creases: ['flexes'],
};
/** The date stands once in the head of the page; the rest is the program's own. */
const NOT_ASKED = ['id', 'kind', 'date'];
const OPEN: Readonly<Record<string, readonly string[]>> = {
  thickness: ['measured', 'seen'],
  flexes: ['cycles', 'ended', 'seen'],
  mark: ['looks', 'seen'],
  sag: ['force', 'sag', 'seen'],
  hold: ['hours', 'left', 'seen'],
};

const fieldsOf = ({ facts, columns }: PageTable) => [...facts, ...columns].flatMap(({ fields }) => fields);
const isOpen = ({ rows }: PageTable, at: number) => rows.every((row) => row[at] === undefined);

describe.each(PIECE_IDS)('the page of %s', (id) => {
  const tables = pageTables(pieceFor(id), ASKED, 'mm');

  it('asks for the kinds of tally that its piece gives', () => {
    expect(tables.map(({ kind }) => kind)).toEqual(KINDS[id]);
  });

  it('asks for every field of the tally, and for none that it lacks', () => {
    for (const table of tables) {
      const tally = TALLIES[table.kind as Exclude<TallyKind, 'pull'>];
      const wanted = Object.keys(tally).filter((field) => !NOT_ASKED.includes(field));
      expect([...new Set(fieldsOf(table))].toSorted()).toEqual(wanted.toSorted());
    }
  });

  it('leaves empty what the test is to tell, in every row', () => {
    for (const table of tables) {
      for (const field of OPEN[table.kind] ?? []) {
        const at = table.columns.findIndex(({ fields }) => fields.some((one) => one === field));
        expect(at, `${table.kind}: ${field}`).toBeGreaterThanOrEqual(0);
        expect(isOpen(table, at), `${table.kind}: ${field}`).toBe(true);
      }
    }
  });

  it('has rows as wide as its columns, and a row for every strip or corner', () => {
    const piece = pieceFor(id);
    for (const { kind, columns, rows } of tables) {
      for (const row of rows) expect(row).toHaveLength(columns.length);
      const specimens = kind === 'mark' ? piece.corners.length : piece.strips.length;
      expect(rows.length).toBeGreaterThanOrEqual(specimens);
    }
  });
});

const choices = (table: PageTable | undefined, field: string) =>
  [...(table?.columns ?? []), ...(table?.facts ?? [])].find(({ fields }) => fields.some((one) => one === field))
    ?.choices;

describe('what is ticked', () => {
  it('names all that a tally may say, as the tally says it', () => {
    const [marked, flexed] = pageTables(pieceFor('radii'), ASKED, 'mm');
    expect(choices(marked, 'looks')).toEqual(['unmarked', 'whitened', 'cracked']);
    expect(choices(flexed, 'ended')).toEqual(['broke', 'still whole']);
    expect(choices(flexed, 'ways')).toEqual(['one way', 'both ways']);
  });

  it('goes from the largest radius to the smallest', () => {
    const radii = pageTables(pieceFor('radii'), ASKED, 'mm')[0]?.rows.map((row) =>
      Number.parseFloat(row[1]?.slice(2) ?? ''),
    );
    expect(radii).toEqual(
      pieceFor('radii')
        .corners.map(({ radius }) => radius)
        .toSorted((a, b) => b - a),
    );
  });

  it('speak of inches where the sheet does, 25.4 mm each; radii as they are marked on the piece', () => {
    const [ladder] = pageTables(pieceFor('ladder'), ASKED, 'inch');
    expect(ladder?.columns.map(({ head }) => head)).toContain('Mean, in');
    const set = ladder?.rows.map((row) => Number(row[2]));
    // Two lines of 0.42 mm are 0.84 / 25.4 = 0.0331 in.
    expect(set?.[1]).toBeCloseTo(0.0331, 4);
    const [bar] = pageTables(pieceFor('bar'), ASKED, 'inch');
    expect(bar?.columns.map(({ head }) => head)).toEqual([
      'Time',
      'Weight, g',
      'Before, in',
      'Under it, in',
      'Sag, in',
      'Seen',
    ]);
    const [marked] = pageTables(pieceFor('radii'), ASKED, 'inch');
    // 32 / 25.4 = 1.2598.
    expect(marked?.rows[0]?.[1]?.replaceAll('\u00a0', ' ')).toBe('R 32 mm, 1.2598 in');
  });
});

const facts = (id: PieceId, at = 0) => pageTables(pieceFor(id), ASKED, 'mm')[at]?.facts.map(({ name }) => name);

describe('the order of facts', () => {
  it('is that of the sentence in which Tests asks for them', () => {
    expect(facts('comb')).toEqual(['Thick as set', 'Turned to', 'Bent', 'Printed']);
    expect(facts('bar')).toEqual(['Thick as set', 'Deep', 'Clamp to eye', 'Printed']);
    expect(facts('hold')).toEqual(['Thick as set', 'Held at', 'Slot']);
    expect(facts('radii', 1)).toEqual(['Thick as set', 'Bent', 'Printed']);
  });
});
