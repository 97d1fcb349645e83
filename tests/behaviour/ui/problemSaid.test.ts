import { expect, it } from 'vitest';
import type { Problem } from '../../../src/core/problems.ts';
import { problemSaid } from '../../../src/ui/text/problemSaid.ts';

const NARROW: Problem = {
  code: 'below-minimum',
  message: 'length 1.27 mm is below 2.54 mm (so it is); raise it',
  field: 'sizes.length',
  value: 1.27,
  limit: 2.54,
};

it('says what is wrong in the core’s words until those of the screen have come', async () => {
  expect(problemSaid(NARROW, 'inch')).toBe('Length 1.27 mm is below 2.54 mm (so it is); raise it.');
  const { problemText } = await import('../../../src/ui/text/problemText.ts');
  expect(problemSaid(NARROW, 'inch')).toBe('Flexing length cannot be under 0.1000\u00a0in; 0.0500\u00a0in is.');
  expect(problemSaid(NARROW, 'inch', 'Leaf length')).toBe(problemText(NARROW, 'inch', 'Leaf length'));
});
