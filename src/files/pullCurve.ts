/** The table that a pulling test leaves: force beside stretch or time, of one bar. */
import type { Problem } from '../core/problems.ts';
import { fail, ok, type Result } from '../core/result.ts';
import { pulledBar, type Pulled, type PulledBar } from '../core/tallies/pulledBar.ts';
import { FORCES, LENGTHS, readTable, SECONDS, SHARES, type Column, type Table } from './csv/columns.ts';
import { csvText, figureOf, type CsvRow } from './csv/table.ts';
import { TALLY_COLUMNS } from './csv/tallyColumns.ts';
import { capped } from './shape.ts';

/** What the table does not say of the bar. */
export interface PulledSpecimen {
  /** Of its narrow part [mm²]. */
  readonly area: number;
  /** Over which stretch is counted [mm]; needed with an extension or a time. */
  readonly gaugeLength?: number;
  /** How fast the grips part [mm/min]; needed with a time. */
  readonly mmPerMinute?: number;
}

const PULL_COLUMNS = {
  force: { names: ['force', 'load', 'pull'], units: FORCES },
  strain: { names: ['strain', 'tensile strain'], units: SHARES },
  extension: { names: ['extension', 'stretch', 'travel', 'displacement', 'elongation'], units: LENGTHS },
  time: { names: ['time', 't'], units: SECONDS },
} as const satisfies Readonly<Record<string, Column>>;

type Field = keyof typeof PULL_COLUMNS;

/** Turns a row into a strain, or says why the table has none. */
type Stretch = { readonly field: Field; readonly per: number } | { readonly lacks: string };

function stretchOf({ columns, heads }: Table<Field>, { gaugeLength, mmPerMinute }: PulledSpecimen): Stretch {
  const { strain, extension, time } = columns;
  if (strain && /[%/ε]/.test((heads[strain.index] ?? '').normalize('NFKC'))) return { field: 'strain', per: 1 };
  if (strain) return { lacks: 'the strain has no unit; head its column “strain %” or “strain mm/mm”' };
  const isLong = gaugeLength !== undefined && gaugeLength > 0;
  if (extension) {
    if (isLong) return { field: 'extension', per: 1 / gaugeLength };
    return { lacks: 'an extension is a strain only over a length; give the gauge length' };
  }
  if (!time) return { lacks: 'the table has forces alone; give a column “extension mm” or “strain %”' };
  if (isLong && mmPerMinute !== undefined && mmPerMinute > 0) {
    return { field: 'time', per: mmPerMinute / 60 / gaugeLength };
  }
  return { lacks: 'time alone does not tell how far the bar was stretched; give the gauge length and the speed' };
}

function valueOf(table: Table<Field>, row: CsvRow, field: Field): number | undefined {
  const column = table.columns[field];
  const value = column && figureOf(row.cells[column.index] ?? '', table.separator);
  return value === undefined ? undefined : column?.convert(value);
}

function readingsOf(table: Table<Field>, stretch: Stretch) {
  const readings: Pulled[] = [];
  const refused: Problem[] = [];
  for (const row of table.rows) {
    const force = valueOf(table, row, 'force');
    const far = 'field' in stretch ? valueOf(table, row, stretch.field) : undefined;
    if (force === undefined || ('field' in stretch && far === undefined)) {
      const message = `line ${row.line} was left out: it holds no figures; write figures alone`;
      refused.push({ code: 'left-out', message, field: `line ${row.line}` });
      continue;
    }
    readings.push({ force, ...('field' in stretch && far !== undefined ? { strain: far * stretch.per } : {}) });
  }
  return { readings, refused };
}

/**
 * Whether a table is one of forces by its head: a force beside a stretch or a time, and none of what was done, as tallies have it.
 *
 * @param given - the file, or its text
 */
export function saysForces(given: string | Uint8Array): boolean {
  const text = csvText(given);
  if (!text.ok) return false;
  const { force, strain, extension, time, kind } = readTable(text.value, {
    ...PULL_COLUMNS,
    kind: TALLY_COLUMNS.kind,
  }).columns;
  return force !== undefined && kind === undefined && (strain ?? extension ?? time) !== undefined;
}

/**
 * Strength, and stiffness where the stretch is known, from the table of one pulled bar. Never throws, whatever the text.
 *
 * Problems: `too-large`, `unreadable`, `missing-field` where there is no force, and those of `pulledBar`. Notes tell rows that
 * were left out, and why there is no stiffness.
 *
 * @param given - the file, or its text; one row a reading, under a head such as `time s, force N`
 * @param specimen - area [mm²], gauge length [mm] and speed [mm/min]
 */
export function readPullCurve(given: string | Uint8Array, specimen: PulledSpecimen): Result<PulledBar> {
  const text = csvText(given);
  if (!text.ok) return text;
  const table = readTable(text.value, PULL_COLUMNS);
  if (table.columns.force === undefined) {
    const message = 'force is missing; give it in a column “force N”, beside “extension mm”, “strain %” or “time s”';
    return fail({ code: 'missing-field', message, field: 'force' });
  }
  const stretch = stretchOf(table, specimen);
  const { readings, refused } = readingsOf(table, stretch);
  const bar = pulledBar(readings, specimen.area);
  if (!bar.ok) return bar;
  const lacks: readonly Problem[] =
    'lacks' in stretch
      ? [{ code: 'missing-field', message: `no stiffness can be told: ${stretch.lacks}`, field: 'modulus' }]
      : [];
  return ok(bar.value, capped([...lacks, ...bar.notes, ...refused]));
}
