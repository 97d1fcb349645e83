/** How counts of flexes and times held are said where room is short. */
import { cycles, grouped, NO_BREAK } from './numbers.ts';

/** “10 000”, “1 M”. */
export function manyCycles(count: number): string {
  return count >= 1e6 ? `${count / 1e6}${NO_BREAK}M` : grouped(count);
}

/** Folds by a curve, which end where counting does: “210”, “over 1 M”, “none”. */
export function foldsFigure(folds: number, maxReportableCycles: number): string {
  if (folds >= maxReportableCycles) return `over ${manyCycles(maxReportableCycles)}`;
  return folds < 1 ? 'none' : cycles(folds);
}

/** “5 000 cycles”, “2.5 cycles”: where a curve is read. */
export function readAtText(at: number): string {
  return `${at >= 10 ? cycles(at) : Number(at.toFixed(1))} cycles`;
}

export const HOURS = `${NO_BREAK}h`;

const DAY = 24;
const SPANS = [
  { hours: 365 * DAY, one: 'year' },
  { hours: 30 * DAY, one: 'month' },
  { hours: 7 * DAY, one: 'week' },
] as const;
const A_DAY = { hours: DAY, one: 'day' } as const;

/** “1 min”, “6 h”, “a day”, “3 months”: a time as one says it, rounded to what is read off a curve. */
export function spanText(hours: number): string {
  if (hours < 0.99) return `${Math.max(1, Math.round(hours * 60))}${NO_BREAK}min`;
  if (hours < 0.95 * DAY) return `${Number(hours.toPrecision(2))}${HOURS}`;
  const span = SPANS.find((one) => hours >= 0.95 * one.hours) ?? A_DAY;
  const count = Number((hours / span.hours).toPrecision(2));
  return count === 1 ? `a ${span.one}` : `${count} ${span.one}s`;
}

/** The same under an axis: “1 min”, “6 h”, “1 day”. */
export function spanFigure(hours: number): string {
  return spanText(hours).replace(/^a /, '1 ');
}
