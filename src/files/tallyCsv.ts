/** Tallies as a table that any spreadsheet opens: one row a tally, a head in words with units, angles in degrees. */
import { MOST_TALLIES, type Tally } from '../core/material/tally.ts';
import type { OwnFilament } from '../core/material/types.ts';
import type { Problem } from '../core/problems.ts';
import { fail, failIfAny, ok, type Result } from '../core/result.ts';
import { checkTally } from '../core/tallies/checkTally.ts';
import { readTable, type Table } from './csv/columns.ts';
import { orderOf } from './csv/days.ts';
import { csvText, guarded, writeRows } from './csv/table.ts';
import { cellsOf, headOf, TALLY_COLUMNS, type TallyField } from './csv/tallyColumns.ts';
import { tallyOf, type Told } from './csv/tallyRow.ts';
import { capped } from './shape.ts';

const FIELDS = Object.keys(TALLY_COLUMNS) as TallyField[];

/**
 * The tallies of a row as the text of a table. The same ones give the same text; a row without any gives a head to fill in.
 *
 * @param row - of the user's own
 * @returns separated by commas, lines end in CR LF; columns that no tally fills are left out
 */
export function writeTallies({ own: { tests } }: Pick<OwnFilament, 'own'>): string {
  const place = { printer: tests?.printer ?? '', spool: tests?.spool ?? '' };
  const rows = (tests?.tallies ?? []).map((tally) => ({ ...cellsOf(tally), ...place }));
  const filled = FIELDS.filter((field) => rows.some((row) => (row[field] ?? '') !== ''));
  const fields = rows.length === 0 ? FIELDS : filled;
  return writeRows([fields.map(headOf), ...rows.map((row) => fields.map((field) => guarded(row[field] ?? '')))]);
}

const WANTED = `${['kind', 'date', 'thickness', 'radius', 'turn', 'length', 'cycles', 'ended']
  .map((field) => `“${headOf(field as TallyField)}”`)
  .join(', ')}; tallies written here show all of them`;

/** Why nothing can be read of a table, as far as its head says. */
function unfit({ columns, strange, rows, heads }: Table<TallyField>): Problem | undefined {
  if (heads.length === 0) return { code: 'unreadable', message: 'The table is empty; begin it with a row of heads' };
  const strains = strange.some((head) => /strain/i.test(head));
  if (strains && columns.radius === undefined && columns.turn === undefined) {
    const message = `The table says how far strips were strained, not how they were bent, and a tally keeps what was measured; give columns ${WANTED}`;
    return { code: 'unreadable', message };
  }
  if (Object.keys(columns).length < 2) {
    return { code: 'unreadable', message: `The head of the table is not one of tallies; give columns ${WANTED}` };
  }
  return rows.length > 0 ? undefined : { code: 'unreadable', message: 'The table has a head and no rows below it' };
}

function leftOut(line: number, why: readonly string[]): Problem {
  return { code: 'left-out', message: `line ${line} was left out: ${why.join('; ')}`, field: `line ${line}` };
}

function strangers({ strange }: Table<TallyField>): readonly Problem[] {
  return strange.map((head) => {
    const field = head.replaceAll(/\s+/g, ' ').slice(0, 40);
    return { code: 'unknown-field', message: `column “${field}” is not known here and was left out`, field };
  });
}

function takenForGranted({ assumed }: Told): readonly Problem[] {
  return Array.from(assumed, ([what, rows]) => {
    const message = `${rows === 1 ? 'one row does' : `${rows} rows do`} not say it, and ${what} was taken; change it where it is not so`;
    return { code: 'left-out', message } as const;
  });
}

/** Rows of several spools come onto one, which the user may not want. */
function spools(table: Table<TallyField>): readonly Problem[] {
  const { spool } = table.columns;
  const names = new Set(spool === undefined ? [] : table.rows.map(({ cells }) => cells[spool.index]?.trim() ?? ''));
  if (names.size < 2) return [];
  const message = `The table names ${names.size} spools, and all of its tallies were read; bring them in one spool at a time`;
  return [{ code: 'left-out', message, field: 'spool' }];
}

interface Gathered {
  readonly tallies: readonly Tally[];
  readonly refused: readonly Problem[];
}

/**
 * The key of a row; where it has none, one of what it says, so that the same table brought in twice brings nothing new. A row
 * that was copied in a spreadsheet is another strip.
 */
function keyFor({ id, ...said }: Tally, taken: ReadonlySet<string>): string {
  if (id !== '' && !taken.has(id)) return id;
  const stem = `csv-${digest(JSON.stringify(said))}`;
  for (let n = 1; ; n += 1) {
    const key = n === 1 ? stem : `${stem}-${n}`;
    if (!taken.has(key)) return key;
  }
}

/** A short text that two different ones hardly share: two sums after Fowler, Noll and Vo. */
function digest(text: string): string {
  const sum = (from: number) =>
    Array.from(text).reduce((all, sign) => Math.imul(all ^ (sign.codePointAt(0) ?? 0), 0x01_00_01_93) >>> 0, from);
  return sum(0x81_1c_9d_c5).toString(36) + sum(0x05_0c_5d_1f).toString(36);
}

function gather(table: Table<TallyField>, told: Told): Gathered {
  const [tallies, refused, keys]: [Tally[], Problem[], Set<string>] = [[], [], new Set()];
  for (const row of table.rows) {
    const read = tallyOf(table, row, told);
    if (read.faults !== undefined) {
      refused.push(leftOut(row.line, read.faults));
      continue;
    }
    const id = keyFor(read.tally, keys);
    const tally = { ...read.tally, id };
    const faults = checkTally(tally).map(({ message }) => message);
    if (faults.length > 0) refused.push(leftOut(row.line, faults));
    else if (tallies.length === MOST_TALLIES)
      refused.push(leftOut(row.line, [`${MOST_TALLIES} tallies are kept at most`]));
    else tallies.push(tally);
    keys.add(id);
  }
  return { tallies, refused };
}

/**
 * Tallies from a table: columns in any order, separated by commas, semicolons or tabs. Rows that cannot be tallies are left
 * out and told, by line, among the notes, as are columns that are not known. Never throws, whatever the text.
 *
 * Problems: `too-large`, `unreadable`, and `left-out` where no row can be read.
 *
 * @param given - the file, or its text
 */
export function readTallies(given: string | Uint8Array): Result<readonly Tally[]> {
  const text = csvText(given);
  if (!text.ok) return text;
  const table = readTable(text.value, TALLY_COLUMNS);
  const problem = unfit(table);
  if (problem) return fail(problem);
  const { date } = table.columns;
  const dates = date === undefined ? [] : table.rows.map(({ cells }) => cells[date.index] ?? '');
  const told: Told = { order: orderOf(dates), assumed: new Map() };
  const { tallies, refused } = gather(table, told);
  if (tallies.length === 0)
    return failIfAny(capped(refused)) ?? fail({ code: 'unreadable', message: 'no row was read' });
  return ok(tallies, capped([...refused, ...strangers(table), ...spools(table), ...takenForGranted(told)]));
}
