/** Times that something is held bent, as one says them. */
import { grouped, NO_BREAK } from './numbers.ts';

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

/** After the hours of a long hold: “, 30 days,”. */
export function inDays(hours: number): string {
  if (hours < 2 * DAY) return '';
  const days = Number((hours / DAY).toPrecision(3));
  return `, ${grouped(days)} days,`;
}
