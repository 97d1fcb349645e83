import { describe, expect, it } from 'vitest';
import { lettersWidth } from '../../../src/ui/charts/letters.ts';
import { AXIS, axisOf, planAxis } from '../../../src/ui/joints/axisPlan.ts';
import { assessed, changed, LEAF } from '../../support/joints.ts';

const before = assessed(LEAF);
const longer = assessed(changed(LEAF, { sizes: { length: 13 } }));
const hard = assessed(changed(LEAF, { sizes: { length: 30 }, movement: { effortAtMost: 5 } }));
const shallower = assessed(changed(hard.joint, { sizes: { depth: 2 } }));
const otherFilament = assessed(changed(LEAF, { profile: { filament: 'pa12' } }));

/** The least paper between neighbouring labels, and beyond the ends of the axis. */
function room(labels: readonly { readonly x: number; readonly text: string }[], width: number): number {
  const boxes = labels
    .map(({ x, text }) => ({ x, half: lettersWidth(text, AXIS.letter) / 2 }))
    .toSorted((a, b) => a.x - b.x);
  const between = boxes.slice(1).map((box, at) => box.x - box.half - ((boxes[at]?.x ?? 0) + (boxes[at]?.half ?? 0)));
  return Math.min(...boxes.flatMap(({ x, half }) => [x - half, width - x - half]), ...between);
}

describe('the axis of a way out', () => {
  it.each([240, 292, 356, 900])('keeps its labels apart and on the paper, %d px wide', (width) => {
    for (const after of [longer, otherFilament]) {
      for (const inWords of [true, false]) {
        const plan = planAxis(axisOf(before, after), width, inWords);
        expect(room(plan.limits, width)).toBeGreaterThanOrEqual(-1e-9);
        expect(room(plan.figures, width)).toBeGreaterThanOrEqual(-1e-9);
      }
    }
  });

  it('has a ring to the right of the dot when the strain falls', () => {
    const plan = planAxis(axisOf(before, longer), 356, false);
    expect(plan.after).toBeLessThan(plan.before);
    expect(plan.same).toBe(false);
  });

  it('moves the limits and not the dot for another filament', () => {
    const plan = planAxis(axisOf(before, otherFilament), 356, false);
    expect(plan.same).toBe(true);
    expect(plan.figures).toHaveLength(1);
    expect(plan.limits.map(({ text }) => text)).toEqual(['2.52', '6']);
  });

  it('says what the ticks mean only where there is room', () => {
    expect(planAxis(axisOf(before, longer), 356, true).limits[0]?.text).toBe('1.47 again and again');
    expect(planAxis(axisOf(before, longer), 180, true).limits[0]?.text).toBe('1.47');
  });

  it.each([240, 356])(
    'shows effort where that is what is wrong, and keeps its one limit on the paper, %d px wide',
    (width) => {
      expect(hard.verdict.reason).toBe('effort');
      const plan = planAxis(axisOf(hard, shallower), width, true);
      expect(plan.limits.map(({ text }) => text)).toEqual(['5.00 at most']);
      expect(room(plan.limits, width)).toBeGreaterThanOrEqual(-1e-9);
      const [limit = Number.NaN] = plan.ticks;
      expect(plan.before).toBeGreaterThan(limit);
      expect(plan.after).toBeLessThan(limit);
      expect(axisOf(hard, shallower).label).toMatch(/^Effort [\d.]+\u00a0N·mm before, [\d.]+\u00a0N·mm after; 5\.00/);
    },
  );
});
