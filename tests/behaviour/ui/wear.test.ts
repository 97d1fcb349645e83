/** “Who wears it” and “How both ways counts”: what is read off a life answer. */
import { describe, expect, it } from 'vitest';
import type { Joint } from '../../../src/core/design/joint.ts';
import { radians } from '../../../src/core/units.ts';
import { decadesOf, ratioRulesOf } from '../../../src/ui/life/ratioRules.ts';
import { ratioText, ruleLife, shareOf, lifeFigure } from '../../../src/ui/text/wearText.ts';
import { assessed, changed, LEAF } from '../../support/joints.ts';

const plain = (text: string) => text.replaceAll(/[\u00a0\u2009]/g, ' ');
const BOTH = changed(LEAF, { movement: { ways: 'both ways' } });

const lives = (medians: readonly (number | undefined)[]) =>
  medians.map((median) => ({ name: '', median, used: false }));

function rulesOf(joint: Joint) {
  const found = ratioRulesOf(assessed(joint));
  if (!found) throw new Error('a swing that does not begin at rest has its rules');
  return found;
}

describe('how both ways counts', () => {
  it('says nothing of flexes that all begin at rest', () => {
    const also = [{ amount: radians(10), ways: 'one way', cycles: 10 }] as const;
    expect(ratioRulesOf(assessed(changed(LEAF, { movement: { also } })))).toBeUndefined();
  });

  it('marks the rule that answers rest on, whose life is that of the table', () => {
    const { rules, wear } = rulesOf(BOTH);
    const used = rules.filter((rule) => rule.used);
    expect(used).toHaveLength(1);
    expect(used[0]?.median).toBeCloseTo(wear.median, 3);
    expect(rules).toHaveLength(5);
  });

  it('lasts longer by the largest strain alone than by the range, both ways', () => {
    const [largest, between, range] = rulesOf(BOTH).rules.map(({ median }) => median ?? Number.NaN);
    expect(largest).toBeGreaterThan(between ?? 0);
    expect(between).toBeGreaterThan(range ?? 0);
  });

  it('and shorter where it never comes to rest', () => {
    const [largest, , range] = rulesOf(changed(LEAF, { movement: { ways: 'between', least: radians(15) } })).rules;
    expect(largest?.median).toBeLessThan(range?.median ?? 0);
  });

  it('looks at the flex that wears most of those that do not begin at rest', () => {
    const also = [
      { amount: radians(2), ways: 'both ways', cycles: 10 },
      { amount: radians(30), ways: 'both ways', cycles: 10_000 },
    ] as const;
    expect(rulesOf(changed(BOTH, { movement: { cycles: 10, also } })).at).toBe(2);
  });

  it('has an axis of whole decades that holds every life that is printed', () => {
    expect(decadesOf(lives([3200, 7800, 21_000]), 1e6)).toEqual([3, 5]);
    expect(decadesOf(lives([1.5, 4e7, undefined]), 1e6)).toEqual([0, 6]);
    expect(decadesOf(lives([1e9]), 1e6)).toEqual([5, 7]);
  });
});

describe('who wears it', () => {
  it('prints no life past the data and none of what the first flex breaks', () => {
    const { life } = assessed(LEAF);
    expect(lifeFigure(life.maxReportableCycles * 1.01, life.maxReportableCycles)).toBe('beyond the data');
    expect(lifeFigure(0, life.maxReportableCycles)).toBe('first flex');
    expect(plain(lifeFigure(24_404, life.maxReportableCycles))).toBe('24 000');
    expect(ruleLife(undefined, life)).toBe('not known');
  });

  it('says shares and ratios plainly', () => {
    expect([0, 0.001, 0.334, 1].map((share) => plain(shareOf(share)))).toEqual(['0 %', 'under 1 %', '33 %', '100 %']);
    expect([-1, -0.984, 0, -0.001, 0.5].map(ratioText)).toEqual(['−1', '−0.98', '0', '0', '0.5']);
  });
});
