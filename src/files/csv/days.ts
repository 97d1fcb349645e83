/** Days as spreadsheets of several countries write them. */

const BY_STROKES = /^(\d{1,2})\/(\d{1,2})\/(\d{4})$/;

/** Which comes first in `3/4/2026`. */
type Order = 'day' | 'month' | undefined;

/** A day without the time that some programs put behind it. */
function bare(cell: string): string {
  return cell.trim().replace(/[T ]\d{1,2}:\d{2}.*$/, '');
}

/**
 * Whether the day or the month comes first in days written with strokes, as far as some of them can only mean one.
 *
 * @param cells - a column of days
 */
export function orderOf(cells: readonly string[]): Order {
  const pairs = cells.flatMap((cell) => {
    const [, first, second] = BY_STROKES.exec(bare(cell)) ?? [];
    return first === undefined ? [] : [[Number(first), Number(second)] as const];
  });
  const [dayFirst, monthFirst] = [pairs.some(([first]) => first > 12), pairs.some(([, second]) => second > 12)];
  if (dayFirst === monthFirst) return undefined;
  return dayFirst ? 'day' : 'month';
}

const two = (text: string | undefined) => (text ?? '').padStart(2, '0');
const day = (year: string | undefined, month: string | undefined, date: string | undefined) =>
  `${year}-${two(month)}-${two(date)}`;

/**
 * A day as tallies carry it: of `2026-11-25`, `2026/11/25`, `25.11.2026`, and of days with strokes where their order is known.
 *
 * @param cell - any text
 * @param order - of days with strokes in this column
 * @returns the day, which may not be in any calendar; `undefined` where it cannot be told
 */
export function dayOf(cell: string, order: Order): string | undefined {
  const text = bare(cell);
  const [, year, month, date] = /^(\d{4})[-/](\d{1,2})[-/](\d{1,2})$/.exec(text) ?? [];
  if (year !== undefined) return day(year, month, date);
  const [, ofMonth, ofYear, inYear] = /^(\d{1,2})\.(\d{1,2})\.(\d{4})$/.exec(text) ?? [];
  if (inYear !== undefined) return day(inYear, ofYear, ofMonth);
  const [, first, second, last] = BY_STROKES.exec(text) ?? [];
  if (last === undefined) return undefined;
  const same = Number(first) === Number(second);
  if (order === undefined && !same) return undefined;
  return order === 'day' ? day(last, second, first) : day(last, first, second);
}
