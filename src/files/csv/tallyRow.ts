/** A tally from one row of a table, or everything for which the row cannot be one. */
import type { Bend, Tally, TallyKind } from '../../core/material/tally.ts';
import { asRad } from '../../core/units.ts';
import { words } from '../names.ts';
import type { Table } from './columns.ts';
import { dayOf, type orderOf } from './days.ts';
import { figureOf, unguarded, type CsvRow } from './table.ts';
import {
  ASIDE_SAID,
  COUNT_OF_SAID,
  DIRECTION_SAID,
  ENDED_SAID,
  headOf,
  KIND_SAID,
  LOOKS_SAID,
  LYING_SAID,
  TALLY_COLUMNS,
  WAYS_SAID,
  type TallyField,
  type Words,
} from './tallyColumns.ts';

/** What is told of a table as a whole: how its days are written, and which values were taken for granted. */
export interface Told {
  readonly order: ReturnType<typeof orderOf>;
  /** Rows for which a column was taken to say this. */
  readonly assumed: Map<string, number>;
}

/** The column that only one kind of test fills. */
const TELLING: Readonly<Record<TallyKind, TallyField>> = {
  flexes: 'cycles',
  mark: 'looks',
  sag: 'sag',
  hold: 'left',
  pull: 'strength',
  thickness: 'measured',
};

const SHORT = 40;
const quoted = (text: string) => `“${text.slice(0, SHORT)}”`;

/** Reads the cells of one row and gathers what is wrong with them. */
class RowReader {
  readonly faults: string[] = [];
  readonly #table: Table<TallyField>;
  readonly #row: CsvRow;
  readonly #told: Told;

  constructor(table: Table<TallyField>, row: CsvRow, told: Told) {
    this.#table = table;
    this.#row = row;
    this.#told = told;
  }

  text(field: TallyField): string {
    const column = this.#table.columns[field];
    return column === undefined ? '' : unguarded((this.#row.cells[column.index] ?? '').trim());
  }

  has(field: TallyField): boolean {
    return this.text(field) !== '';
  }

  /** A figure in our unit; what is missing or no number is told, and stands as nought until then. */
  figure(field: TallyField): number {
    const text = this.text(field);
    if (text === '') return this.#lacks(field);
    const counts = field === 'cycles' || field === 'count';
    const value = counts && /\d[.,]\d{3}$/.test(text) ? undefined : figureOf(text, this.#table.separator);
    if (value !== undefined) return this.#table.columns[field]?.convert(value) ?? value;
    const how = counts ? 'a whole number without marks between thousands' : this.#howFigures();
    this.faults.push(`${TALLY_COLUMNS[field].names[0]} ${quoted(text)} is no number that can be told; write ${how}`);
    return 0;
  }

  #howFigures(): string {
    return this.#table.separator === ',' ? 'figures alone, with a point' : 'figures alone, with a point or a comma';
  }

  #lacks(field: TallyField): 0 {
    this.faults.push(`${TALLY_COLUMNS[field].names[0]} is missing; give it in a column “${headOf(field)}”`);
    return 0;
  }

  one<T extends string>(field: TallyField, options: Words<T>, usual?: NoInfer<T>): T {
    const all = Object.keys(options) as [T, ...T[]];
    const text = this.text(field).toLowerCase();
    const found = all.find((option) => options[option].includes(text));
    if (found !== undefined) return found;
    if (text !== '') {
      const known = all.map((option) => options[option][0]).join(', ');
      this.faults.push(`${TALLY_COLUMNS[field].names[0]} is ${quoted(this.text(field))}; give one of ${known}`);
    } else if (usual === undefined) this.#lacks(field);
    else this.#assume(`${TALLY_COLUMNS[field].names[0]} “${usual}”`);
    return usual ?? all[0];
  }

  #assume(what: string): void {
    this.#told.assumed.set(what, (this.#told.assumed.get(what) ?? 0) + 1);
  }

  day(): string {
    const text = this.text('date');
    const day = dayOf(text, this.#told.order);
    if (day !== undefined) return day;
    if (text === '') this.#lacks('date');
    else this.faults.push(`date ${quoted(text)} cannot be told; write year, month and day as 2026-11-25`);
    return '';
  }

  kind(): TallyKind | undefined {
    if (this.has('kind')) {
      const said = this.one('kind', KIND_SAID);
      return this.faults.length > 0 ? undefined : said;
    }
    const kinds = (Object.keys(TELLING) as TallyKind[]).filter((kind) => this.has(TELLING[kind]));
    if (kinds.length === 1) return kinds[0];
    this.#lacks('kind');
    return undefined;
  }

  bend(): Bend {
    if (this.has('radius') && this.has('turn')) {
      this.faults.push('bar radius and turned both stand there; leave one of them empty');
    }
    if (this.has('turn')) return { way: 'to', turn: asRad(this.figure('turn')), length: this.figure('length') };
    if (this.has('radius')) return { way: 'over', radius: this.figure('radius') };
    const columns = `“${headOf('radius')}”, or “${headOf('turn')}” and “${headOf('length')}”`;
    this.faults.push(`nothing says how it was bent; give ${columns}`);
    return { way: 'over', radius: 0 };
  }
}

type Kinds = {
  readonly [K in TallyKind]: (row: RowReader) => Omit<Extract<Tally, { kind: K }>, 'id' | 'date' | 'seen'>;
};

const lying = (row: RowReader) => row.one('lying', LYING_SAID, 'flat');

const READ: Kinds = {
  flexes: (row) => ({
    kind: 'flexes',
    bend: row.bend(),
    thickness: row.figure('thickness'),
    lying: lying(row),
    ways: row.one('ways', WAYS_SAID, 'one way'),
    cycles: row.figure('cycles'),
    ended: row.one('ended', ENDED_SAID),
  }),
  thickness: (row) => ({
    kind: 'thickness',
    countOf: row.one('countOf', COUNT_OF_SAID),
    count: row.figure('count'),
    set: row.figure('set'),
    measured: row.figure('measured'),
  }),
  mark: (row) => ({
    kind: 'mark',
    radius: row.figure('radius'),
    thickness: row.figure('thickness'),
    lying: lying(row),
    looks: row.one('looks', LOOKS_SAID),
  }),
  sag: (row) => ({
    kind: 'sag',
    lying: lying(row),
    force: row.figure('force'),
    sag: row.figure('sag'),
    length: row.figure('length'),
    thickness: row.figure('thickness'),
    depth: row.figure('depth'),
  }),
  hold: (row) => ({
    kind: 'hold',
    radius: row.figure('radius'),
    thickness: row.figure('thickness'),
    hours: row.figure('hours'),
    held: asRad(row.figure('held')),
    left: asRad(row.figure('left')),
  }),
  pull: (row) => ({
    kind: 'pull',
    direction: row.one('direction', DIRECTION_SAID),
    strength: row.figure('strength'),
    ...(row.has('modulus') ? { modulus: row.figure('modulus') } : {}),
  }),
};

/** A tally without its key, where the row names none. */
export type ReadRow =
  { readonly tally: Tally; readonly faults?: undefined } | { readonly faults: readonly [string, ...string[]] };

/**
 * A tally from a row of a table; its figures have not been judged.
 *
 * @param table - whose columns have been found
 * @param row - one of its rows
 * @param told - what is known of the table, and grows by what was taken for granted
 * @returns the tally, with an empty key where the row has none, or what is wrong with the row
 */
export function tallyOf(table: Table<TallyField>, row: CsvRow, told: Told): ReadRow {
  if (row.isOpen)
    return { faults: ['a quotation mark is never closed, so that no row below it can be read; close it'] };
  const reader = new RowReader(table, row, told);
  const kind = reader.kind();
  const read = kind === undefined ? undefined : READ[kind](reader);
  const isAside = reader.one('leftOut', ASIDE_SAID, 'no') === 'yes';
  const common = { id: reader.text('id'), date: reader.day(), seen: words(reader.text('seen')) };
  const [first, ...more] = reader.faults;
  if (first !== undefined) return { faults: [first, ...more] };
  return { tally: { ...read, ...common, ...(isAside ? { leftOut: true } : {}) } as Tally };
}
