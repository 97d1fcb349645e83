import { describe, expect, it } from 'vitest';
import { isDay } from '../../../src/core/tallies/day.ts';

const two = (value: number) => String(value).padStart(2, '0');

/** Every way to write a month from nought to thirteen and a day from nought to thirty-two. */
function candidates(year: number): readonly string[] {
  const months = Array.from({ length: 14 }, (_, month) => month);
  const days = Array.from({ length: 33 }, (_, day) => day);
  return months.flatMap((month) => days.map((day) => `${year}-${two(month)}-${two(day)}`));
}

/** Whether the calendar of the language has the day. */
function inCalendar(text: string): boolean {
  const time = Date.parse(`${text}T00:00:00Z`);
  return Number.isFinite(time) && new Date(time).toISOString().startsWith(text);
}

describe('a day of the calendar', () => {
  it.each([1980, 1999, 2000, 2024, 2025, 2026, 2096, 2100, 2200])('in %d is one where the calendar has it', (year) => {
    const all = candidates(year);
    expect(all.filter(isDay)).toEqual(all.filter(inCalendar));
    expect(all.filter(isDay).length).toBeGreaterThanOrEqual(365);
  });

  it('is none in a year before there were such printers, nor long after', () => {
    expect(['1979-12-31', '1980-01-01', '2200-12-31', '2201-01-01'].map(isDay)).toEqual([false, true, true, false]);
  });

  it.each([
    '',
    '2026',
    '2026-3-4',
    '26-03-04',
    '04.03.2026',
    '2026-03-04T00:00',
    ' 2026-03-04',
    '2026-03-04\n',
    '٢٠٢٦-٠٣-٠٤',
  ])('is not written as %j', (text) => expect(isDay(text)).toBe(false));
});
