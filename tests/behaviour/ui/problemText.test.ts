import { describe, expect, it } from 'vitest';
import { PROBLEM_CODES, type Problem } from '../../../src/core/problems.ts';
import { radians } from '../../../src/core/units.ts';
import { PROBLEM_TEXT, problemText } from '../../../src/ui/text/problemText.ts';

const SENTENCE = /^[A-Z0-9“].*\.$/su;

describe('every problem is worded', () => {
  it.each(PROBLEM_CODES)('%s is a sentence, with and without its value and limit', (code) => {
    const bare: Problem = { code, message: 'something is wrong' };
    const full: Problem = { ...bare, field: 'sizes.length', value: 1.5, limit: 2.5 };
    for (const problem of [bare, full]) {
      for (const unit of ['mm', 'inch'] as const) {
        const text = PROBLEM_TEXT[code](problem, unit);
        expect(text).toMatch(SENTENCE);
        expect(text).not.toMatch(/undefined|NaN|Infinity|\[object/);
      }
    }
  });

  it('gives lengths in the chosen unit', () => {
    const problem: Problem = { code: 'below-minimum', message: '', field: 'sizes.length', value: 1.27, limit: 2.54 };
    expect(problemText(problem, 'mm')).toBe('Flexing length cannot be under 2.54\u00a0mm; 1.27\u00a0mm is.');
    expect(problemText(problem, 'inch')).toBe('Flexing length cannot be under 0.1000\u00a0in; 0.0500\u00a0in is.');
  });

  it('gives angles in degrees and counts grouped', () => {
    const angle = { code: 'above-maximum', message: '', field: 'movement.amount', unit: 'rad' } as const;
    expect(problemText({ ...angle, value: radians(400), limit: radians(360) }, 'mm')).toContain('over 360°; 400° is');
    const cycles = { code: 'not-whole', message: '', field: 'joints[2].movement.cycles', value: 2.5 } as const;
    expect(problemText(cycles, 'mm')).toBe('Number of flexes must be whole, not 2.5.');
  });

  it('tells which of several movements is meant, and its other end with its sign', () => {
    const far = { code: 'above-maximum', message: '', field: 'movement.also[0].amount', unit: 'rad' } as const;
    expect(problemText({ ...far, value: radians(40), limit: radians(35) }, 'mm')).toBe(
      'Angle of movement 2 cannot be over 35°; 40° is.',
    );
    const back = { code: 'below-minimum', message: '', field: 'movement.also[2].ways' } as const;
    expect(problemText({ ...back, value: -4, limit: -1.5 }, 'mm')).toBe(
      'Way back of movement 4 cannot be under −1.50\u00a0mm; −4.00\u00a0mm is.',
    );
    const warm = { code: 'above-maximum', message: '', field: 'surroundings.temperatureC' } as const;
    expect(problemText({ ...warm, value: 400, limit: 150 }, 'inch')).toBe(
      'Temperature cannot be over 150\u00a0°C; 400\u00a0°C is.',
    );
    const long = { code: 'below-minimum', message: '', field: 'movement.heldHours' } as const;
    expect(problemText({ ...long, value: 0, limit: 1 / 60 }, 'mm')).toBe(
      'Time held bent cannot be under 0.02\u00a0h; 0\u00a0h is.',
    );
  });

  it('calls the field what its place calls it', () => {
    const problem: Problem = { code: 'not-whole', message: '', field: 'sizes.lines', value: 2.5 };
    expect(problemText(problem, 'mm', 'Lines across the leaf')).toBe('Lines across the leaf must be whole, not 2.5.');
  });
});
