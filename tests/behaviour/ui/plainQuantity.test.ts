import { expect, it, vi } from 'vitest';
import { readQuantity } from '../../../src/ui/controls/quantity.ts';

// Stands in for the part that works out sums, and fails when anything loads it.
vi.mock('../../../src/ui/controls/mathEngine.ts', () => {
  throw new Error('loaded');
});

it.each(['12', '12.5', '0,5', '5 000', '+5\u2009000', '12 mm', '0.5 in', '0.5"', 'nonsense', '', '1e400'])(
  'reads or refuses %s at once, without loading the part for sums',
  (text) => {
    expect(readQuantity(text, 'length', 'mm')).not.toBeInstanceOf(Promise);
  },
);

it('says so when the part for sums cannot be loaded', async () => {
  const reading = await readQuantity('3/8 in + 2', 'length', 'mm', 'Leaf length');
  expect(reading).toMatchObject({
    ok: false,
    problems: [{ message: expect.stringContaining('did not load; write one number') as string }],
  });
});
