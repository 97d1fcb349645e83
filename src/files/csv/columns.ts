/** Which column of a table holds what: by the words and the unit at its head, in any order and any case of letters. */
import { type CsvRow, readRows, SEPARATORS, type Separator } from './table.ts';

type Convert = (value: number) => number;

/** Units by how they are written, and what turns their figures into ours; the first is meant where a head says none. */
export type Units = Readonly<Record<string, Convert>>;

const times =
  (factor: number): Convert =>
  (value) =>
    value * factor;
const same: Convert = (value) => value;

const over =
  (divisor: number): Convert =>
  (value) =>
    value / divisor;

const inDegrees: Convert = (value) => (value * Math.PI) / 180;

export const LENGTHS: Units = {
  mm: same,
  cm: times(10),
  m: times(1000),
  μm: over(1000),
  um: over(1000),
  in: times(25.4),
  inch: times(25.4),
};
export const ANGLES: Units = { '°': inDegrees, deg: inDegrees, degrees: inDegrees, rad: same };
const GRAVITY = 9.80665;
export const FORCES: Units = {
  n: same,
  kn: times(1000),
  g: times(GRAVITY / 1000),
  kg: times(GRAVITY),
};
export const HOURS: Units = { h: same, hours: same, min: over(60), s: over(3600), days: times(24) };
export const SECONDS: Units = { s: same, ms: over(1000), min: times(60) };
export const STRESSES: Units = { mpa: same, 'n/mm2': same, gpa: times(1000), kpa: over(1000), pa: over(1e6) };
export const SHARES: Units = { '': same, '%': over(100), 'mm/mm': same, 'm/m': same, με: over(1e6) };
export const COUNTS: Units = { '': same };

/** What a column may be called, without its unit; the first is what we write. */
export interface Column {
  readonly names: readonly [string, ...string[]];
  /** None where it holds words. */
  readonly units?: Units;
}

interface FoundColumn {
  readonly index: number;
  readonly convert: Convert;
}

export interface Table<K extends string> {
  readonly separator: Separator;
  readonly heads: readonly string[];
  readonly columns: Readonly<Partial<Record<K, FoundColumn>>>;
  /** Heads that are not known. */
  readonly strange: readonly string[];
  readonly rows: readonly CsvRow[];
}

/** A head in plain small letters, with a space before its unit. */
function plainHead(head: string): string {
  const small = head.normalize('NFKC').toLowerCase();
  return small
    .replaceAll(/[_()[\]{},;:"']/g, ' ')
    .replaceAll(/([°%])/g, ' $1 ')
    .replaceAll(/\s+/g, ' ')
    .trim();
}

function conversion(head: string, { names, units }: Column): Convert | undefined {
  const plain = plainHead(head);
  const all = units ?? { '': same };
  return names
    .filter((name) => plain === name || plain.startsWith(`${name} `))
    .map((name) => plain.slice(name.length).trim())
    .map((unit) => (unit === '' ? Object.values(all)[0] : Object.hasOwn(all, unit) ? all[unit] : undefined))
    .find((convert) => convert !== undefined);
}

function columnsOf<K extends string>(heads: readonly string[], known: Readonly<Record<K, Column>>) {
  const columns: Partial<Record<K, FoundColumn>> = {};
  const strange: string[] = [];
  for (const [index, head] of heads.entries()) {
    const found = (Object.keys(known) as K[]).flatMap((key) => {
      const convert = key in columns ? undefined : conversion(head, known[key]);
      return convert === undefined ? [] : [{ key, convert }];
    })[0];
    if (found) columns[found.key] = { index, convert: found.convert };
    else if (head.trim() !== '') strange.push(head.trim());
  }
  return { columns, strange };
}

/** Some spreadsheets name the separator in a line of its own. */
const NAMES_ITS_SEPARATOR = /^sep=[,;\t]\r?\n/i;

/**
 * A table under that separator with which most of its heads are known.
 *
 * @param text - the whole table
 * @param known - columns to look for
 */
export function readTable<K extends string>(text: string, known: Readonly<Record<K, Column>>): Table<K> {
  const named = NAMES_ITS_SEPARATOR.exec(text)?.[0] ?? '';
  const first = text.slice(named.length).search(/\S/);
  const [begins] = /^[^\r\n]*/.exec(text.slice(named.length + Math.max(0, first))) ?? [''];
  const headsWith = (separator: Separator) => readRows(begins, separator)[0]?.cells ?? [];
  const knownWith = (separator: Separator) => Object.keys(columnsOf(headsWith(separator), known).columns).length;
  const separator = SEPARATORS.reduce((best, one) => (knownWith(one) > knownWith(best) ? one : best));
  const [head, ...rows] = readRows(text.slice(named.length), separator);
  const heads = head?.cells ?? [];
  const below = rows.map((row) => ({ ...row, line: row.line + (named === '' ? 0 : 1) }));
  return { separator, heads, rows: below, ...columnsOf(heads, known) };
}
