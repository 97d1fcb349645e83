/** “After one bend”: what stays and between what it lies, in words. */
import { describe, expect, it } from 'vitest';
import type { Assessment } from '../../../src/core/design/assessment.ts';
import { radians } from '../../../src/core/units.ts';
import { plainly } from '../../../src/ui/text/said.ts';
import { afterBendSaid, leftText } from '../../../src/ui/text/setText.ts';
import { assessed, LEAF } from '../../support/joints.ts';

const plain = (a: Assessment) => afterBendSaid(a, 'mm').map((said) => plainly(said).replaceAll('\u00a0', ' '));
const withSet = (amount: number, low: number, high: number): Assessment => {
  const a = assessed(LEAF);
  const set = { amount: radians(amount), fraction: amount / 35, low: radians(low), high: radians(high) };
  return { ...a, set };
};

describe('after one bend', () => {
  it('about how much stays, between what, and what springs back', () => {
    expect(plain(withSet(2.04, 0, 5))).toEqual([
      'About 2°, between 0° and 5°, stay bent at once; plastics creep back further.',
      'It springs back 33° of the 35°.',
    ]);
  });

  it('nothing by usual figures, and up to something by the worst', () => {
    expect(plain(withSet(0, 0, 0.44))).toEqual([
      'By usual figures of PETG nothing stays bent; by the worst of them up to 0.4° do.',
    ]);
  });

  it('nothing at all', () => {
    expect(plain(withSet(0, 0, 0))[0]).toMatch(/^Nothing stays bent: even by the least yield stress of PETG/);
  });

  it('every figure has its mark', () => {
    for (const a of [withSet(2, 0, 5), withSet(0, 0, 1)]) {
      const [first] = afterBendSaid(a, 'mm');
      expect(first?.some((piece) => typeof piece !== 'string' && piece.mark === a.provenance.effort)).toBe(true);
    }
  });

  it('small angles to a tenth, travels to a hundredth', () => {
    const travel = { ...assessed(LEAF).drive, measure: 'travel' } as const;
    expect(leftText(radians(12.34), assessed(LEAF).drive, 'mm')).toBe('12°');
    expect(leftText(0.123, travel, 'mm')).toBe('0.12\u00a0mm');
  });
});
