/** Which row of the table a row goes back to, and how much of what is said of its curve still holds. */
import { FILAMENTS } from './filaments.ts';
import type { CurveFigure } from './ownLimits.ts';
import { isOwn } from './shelf.ts';
import type { Filament, RowId } from './types.ts';

/** What fixes the course of a curve; the rest is its spread and its ends. */
const COURSE: readonly CurveFigure[] = ['A', 'b', 'B', 'c'];

function tableRow(row: Filament): Filament | undefined {
  const id = isOwn(row) ? row.own.from : row.id;
  return FILAMENTS.find((one) => one.id === id);
}

/**
 * The row of the table that a row is, or goes back to through however many copies.
 *
 * @param row - row of the table, or one of the user's own [-]
 * @returns its key, or `undefined` where the table has no such row
 */
export function plasticOf(row: Filament): RowId | undefined {
  return tableRow(row)?.id as RowId | undefined;
}

/**
 * Whether figures of a life curve are still those that the table judged.
 *
 * @param row - row of the table, or one of the user's own [-]
 * @param figures - which of them [-]
 * @returns false where the table has no such row [-]
 */
export function isAsJudged(row: Filament, ...figures: readonly CurveFigure[]): boolean {
  const table = tableRow(row);
  return table !== undefined && figures.every((name) => row.life[name] === table.life[name]);
}

/**
 * The row of the table on whose evidence a curve stands: what set the course of a curve says nothing of another course.
 *
 * @param row - row of the table, or one of the user's own [-]
 * @returns its key, or `undefined` where the user has changed the course of the curve
 */
export function evidenceFrom(row: Filament): RowId | undefined {
  return isAsJudged(row, ...COURSE) ? plasticOf(row) : undefined;
}
