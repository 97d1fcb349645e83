/** Days as tallies carry them, without a clock. */
import { YEARS } from './tallyLimits.ts';

const LENGTHS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] as const;

function isLeap(year: number): boolean {
  return year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);
}

/**
 * Whether a text is a day of the calendar.
 *
 * @param text - such as `2026-11-25` [-]
 * @returns false for a thirtieth of February, and for years in which nobody prints [-]
 *
 * @example isDay('2024-02-29') // → true
 * @example isDay('2026-02-29') // → false
 */
export function isDay(text: string): boolean {
  const [, year, month, day] = (/^(\d{4})-(\d{2})-(\d{2})$/.exec(text) ?? []).map(Number);
  if (year === undefined || month === undefined || day === undefined) return false;
  const longest = (LENGTHS[month - 1] ?? 0) + (month === 2 && isLeap(year) ? 1 : 0);
  return year >= YEARS.min && year <= YEARS.max && day >= 1 && day <= longest;
}
