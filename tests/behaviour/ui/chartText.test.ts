import { describe, expect, it } from 'vitest';
import { radians } from '../../../src/core/units.ts';
import { effortReading, lengthReading, lifeReading, limitLabel, ownName } from '../../../src/ui/text/chartText.ts';
import { NO_BREAK, THIN } from '../../../src/ui/text/numbers.ts';

const plain = (text: string) => text.replaceAll(NO_BREAK, ' ').replaceAll(THIN, ' ');

describe('readings of the curves', () => {
  it('say cycles with the strain for half and its spread', () => {
    expect(plain(lifeReading(5000, { low: 0.019, typical: 0.0262, high: 0.035 }))).toBe(
      '5 000 cycles: 2.62 % for half, 1.90 to 3.50',
    );
    expect(plain(lifeReading(1, { low: 0.2, typical: 0.4, high: 0.6 }))).toMatch(/^1 cycle: /);
  });

  it('give no strain where nobody has counted', () => {
    expect(plain(lifeReading(3e6, undefined))).toBe('3 000 000 cycles: nobody has counted so far');
  });

  it('say length, strain and limits, and the count of another curve', () => {
    expect(plain(lengthReading(14.5, 'mm', undefined, 0.0177, { kept: 3, of: 5 }))).toBe(
      '14.50 mm: 1.77 %, 3 of 5 limits kept',
    );
    expect(plain(lengthReading(14.5, 'inch', '3 lines', 0.0266, { kept: 2, of: 5 }))).toBe(
      '0.5709 in, 3 lines: 2.66 %, 2 of 5 limits kept',
    );
  });

  it('say angle and torque with its spread, and when it stays bent', () => {
    const effort = { typical: 19.43, low: 17.1, high: 22.04 };
    expect(plain(effortReading(radians(22.5), effort, false, 'turn', 'mm'))).toBe('22.5°: 19.4 N·mm, 17.1 to 22.0');
    expect(plain(effortReading(radians(60), effort, true, 'turn', 'mm'))).toMatch(/; stays bent$/);
  });

  it('say no more figures beside a line than it needs', () => {
    expect(plain(limitLabel('stays bent', 0.035))).toBe('stays bent 3.5 %');
    expect(plain(limitLabel('again and again', 0.0147))).toBe('again and again 1.47 %');
    expect(plain(limitLabel('breaks', 0.77))).toBe('breaks 77 %');
  });

  it('call a measured section what it is', () => {
    expect(ownName(2, 'lines', false)).toBe('2 lines');
    expect(ownName(1, 'lines', true)).toBe('as measured');
  });
});
