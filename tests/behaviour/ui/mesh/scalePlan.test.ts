import { describe, expect, it } from 'vitest';
import { scaleChart } from '../../../../src/core/inspect/scaleChart.ts';
import { scalePlan, scalesShown } from '../../../../src/ui/mesh/scalePlan.ts';
import { expectClose } from '../../../support/close.ts';
import { AS_DROPPED, BOX, straight, THREE_LEAVES, THREE_LEAVES_BOX } from '../../../support/flexures.ts';

const SHOWN = scalesShown(1);
const three = scaleChart(THREE_LEAVES, THREE_LEAVES_BOX, AS_DROPPED, SHOWN);
const many = scaleChart(
  Array.from({ length: 20 }, (_, i) => straight({ number: i + 1, thickness: 0.4 + 0.05 * i })),
  BOX,
  AS_DROPPED,
  SHOWN,
);

const numbered = (plan: ReturnType<typeof scalePlan>) =>
  plan.lines.filter(({ balloon }) => balloon !== undefined).map(({ numbers }) => numbers[0]);

describe('the chart of lines against scale', () => {
  it('numbers each of few lines, and of many the outer ones and the one that is looked at', () => {
    expect(numbered(scalePlan(three, 2, 600))).toEqual([1, 2, 3]);
    expect(numbered(scalePlan(many, 7, 600))).toEqual([1, 7, 20]);
    expect(scalePlan(many, 7, 600).lines.filter(({ dots }) => dots.length > 0)).toHaveLength(1);
  });

  it('keeps balloons and figures apart, and within the chart', () => {
    const plan = scalePlan(three, 1, 360);
    const ys = plan.lines.flatMap(({ balloon }) => (balloon ? [balloon.y] : [])).toSorted((a, b) => a - b);
    ys.slice(1).forEach((y, i) => expect(y - ys[i]!).toBeGreaterThanOrEqual(22 - 1e-9));
    expect(ys[0]).toBeGreaterThanOrEqual(plan.box.top);
    expect(ys.at(-1)).toBeLessThanOrEqual(plan.box.bottom);
  });

  it('ends a line where it leaves the chart at the top', () => {
    const thick = scaleChart([straight({ number: 1, thickness: 5 })], BOX, AS_DROPPED, SHOWN);
    const plan = scalePlan(thick, 1, 600);
    const [, x, y] = /L([\d.]+) ([\d.]+)$/.exec(plan.lines[0]!.d) ?? [];
    // Twelve lines of 0.56 mm are 6.72 mm: 5 mm is that at 1.344 times.
    expectClose(Number(x), plan.x(1.344), { abs: 0.06, because: 'paths are written to a tenth of a pixel' });
    expectClose(Number(y), plan.box.top, { abs: 0.06, because: 'paths are written to a tenth of a pixel' });
  });

  it('says what is counted', () => {
    expect(scalePlan(three, 1, 600).valueText).toBe('1 times: 0.75, 1.50 and 2.25 lines across');
  });
});
