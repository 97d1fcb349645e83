import { readFileSync } from 'node:fs';
import { expectClose } from './close.ts';
import { noteResidual } from './residuals.ts';

/** One row of a section of `tests/reference/checkvalues`: figures that were computed or read outside this program. */
export interface CheckValue {
  readonly id: string;
  readonly quantity: string;
  readonly inputs: Readonly<Record<string, number | string | readonly number[]>>;
  /** NaN where the row says that there is no such figure. */
  readonly expected: readonly number[];
  readonly tolerance: { readonly rel: number; readonly abs: number };
  readonly source: string;
}

type Stored = Omit<CheckValue, 'expected'> & { readonly expected: number | readonly (number | null)[] };

type Section = 'A' | 'B' | 'C' | 'D' | 'E' | 'F' | 'G' | 'H' | 'I' | 'J' | 'K' | 'L' | 'M';

/** The rows of a section whose id starts like this; none is a mistake, so that no test passes by comparing nothing. */
export function checkValues(section: Section, start: string): readonly CheckValue[] {
  const path = new URL(`../reference/checkvalues/${section}.json`, import.meta.url);
  const { rows } = JSON.parse(readFileSync(path, 'utf8')) as { rows: readonly Stored[] };
  const found = rows.filter((row) => row.id.startsWith(start));
  if (found.length === 0) throw new Error(`no check value starts with ${start}`);
  return found.map((row) => ({ ...row, expected: [row.expected].flat().map((value) => value ?? Number.NaN) }));
}

/** An input of a row by its name, a number; `inf` is one too. */
export function input(row: CheckValue, name: string): number {
  const value = row.inputs[name] === 'inf' ? Number.POSITIVE_INFINITY : row.inputs[name];
  if (typeof value !== 'number') throw new Error(`${row.id} has no number ${name}`);
  return value;
}

/** A list among the inputs of a row. */
export function numbers(row: CheckValue, name: string): readonly number[] {
  const value = row.inputs[name];
  if (typeof value !== 'object') throw new Error(`${row.id} has no list ${name}`);
  return value;
}

/** Compares figures with those of a row, in order, within the tolerance that the row itself states. */
export function expectRow(row: CheckValue, ...actual: readonly number[]): void {
  for (const [index, value] of actual.entries()) {
    const expected = row.expected[index];
    if (expected === undefined) throw new Error(`${row.id} has no figure ${index}`);
    noteResidual(/^[A-Z]-[A-Za-z]*/.exec(row.id)?.[0] ?? row.id, value, expected);
    const abs = row.tolerance.abs + row.tolerance.rel * Math.abs(expected);
    expectClose(value, expected, { abs, because: `stated by ${row.id}: ${row.source}` });
  }
}
