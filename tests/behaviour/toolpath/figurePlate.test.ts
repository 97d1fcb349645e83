import { describe, expect, it } from 'vitest';
import type { LayerPlan } from '../../../src/core/inspect/toolpath/checkedToolpath.ts';
import { checkBox } from '../../../src/core/inspect/toolpath/drawnPlace.ts';
import { radians } from '../../../src/core/units.ts';
import { NOMINAL_PX_PER_MM, onSheet } from '../../../src/ui/drawing/sheet.ts';
import { draggedBox } from '../../../src/ui/toolpath/figures/plateBox.ts';
import { onPlate, planAt, plateExtent, platePlan } from '../../../src/ui/toolpath/figures/platePlan.ts';
import { expectClose } from '../../support/close.ts';
import { laidLeaf } from '../../support/laidSamples.ts';
import { turned } from '../../support/toolpaths.ts';

/** Two pads of 4 by 6 mm with a leaf of 12 by 0.84 mm between them. */
const outline = [
  { x: -4, y: -3 },
  { x: 0, y: -3 },
  { x: 0, y: -0.42 },
  { x: 12, y: -0.42 },
  { x: 12, y: -3 },
  { x: 16, y: -3 },
  { x: 16, y: 3 },
  { x: 12, y: 3 },
  { x: 12, y: 0.42 },
  { x: 0, y: 0.42 },
  { x: 0, y: 3 },
  { x: -4, y: 3 },
];
const plans: readonly LayerPlan[] = [
  { bottom: 0, z: 1, outlines: [outline] },
  { bottom: 1, z: 6, outlines: [outline] },
];

describe('the layer from above', () => {
  it('is that at the height that is looked at, or the nearest', () => {
    expect([0.2, 1, 1.2, 6, 9].map((z) => planAt(plans, z)?.z)).toEqual([1, 1, 6, 6, 6]);
    expect(planAt([], 1)).toBeUndefined();
  });

  it.each([328, 590, 1200])('shows all of it and every balloon on %i px', (width) => {
    const { place } = laidLeaf(4).placed;
    const passed = [{ why: 'free-end', thickness: 0.4, at: { x: 14, y: 1, z: 0.5 } }] as const;
    const extent = plateExtent(plans);
    const plan = platePlan({ plans, extent, z: 0.6, places: [place], passedOver: passed }, width, NOMINAL_PX_PER_MM);
    const { sheet, balloons } = plan;
    expect(plan.passed).toHaveLength(1);
    for (const { x, y } of [...balloons, ...plan.passed.map(({ balloon }) => balloon)]) {
      expect(x).toBeGreaterThan(10);
      expect(x).toBeLessThan(width - 10);
      expect(y).toBeGreaterThan(sheet.top + 10);
      expect(y).toBeLessThan(sheet.bottom - 10);
    }
    for (const point of outline) {
      const at = onSheet(sheet, point);
      expect(at.x).toBeGreaterThan(0);
      expect(at.x).toBeLessThan(width);
      expectClose(onPlate(sheet, at).x, point.x, { abs: 1e-9, because: 'rounding' });
    }
  });
});

describe('a box dragged from root to root', () => {
  it.each([0, 37, 90, 145, 200])('takes its thickness from what stands there, turned by %i°', (degrees) => {
    const to = turned(radians(degrees), 110, 95);
    const box = draggedBox(to({ x: 0, y: 0.05 }), to({ x: 12, y: 0.05 }), [outline.map(to)])!;
    expectClose(box.thickness, 0.84, {
      abs: 0.011,
      because: 'rounded to a hundredth; the angle to a tenth of a degree',
    });
    expectClose(box.length, 12, { abs: 0.006, because: 'rounded to a hundredth' });
    const middle = to({ x: 6, y: 0.05 });
    expectClose(Math.hypot(box.x - middle.x, box.y - middle.y), 0, { abs: 0.008, because: 'rounded to a hundredth' });
    expect(checkBox({ ...box, bottom: 0, top: 6 })).toEqual([]);
  });

  it('is a millimetre thick where nothing thin stands, and none where it is a press', () => {
    expect(draggedBox({ x: 0, y: 8 }, { x: 5, y: 8 }, [outline])?.thickness).toBe(1);
    expect(draggedBox({ x: 0, y: 0 }, { x: 0.1, y: 0 }, [outline])).toBeUndefined();
  });
});
