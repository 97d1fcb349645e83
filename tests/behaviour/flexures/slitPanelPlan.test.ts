import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { slitPanel, type SlitPanelSizes } from '../../../src/core/flexures/slitPanel.ts';
import { slitPanelPlan } from '../../../src/core/flexures/slitPanelPlan.ts';
import { isRefusal } from '../../../src/core/flexures/checkSizes.ts';
import { bounds, pathArea } from '../../../src/core/geometry/flatten.ts';
import { isInside, pathLoop } from '../../../src/core/geometry/loop.ts';
import { isClosed } from '../../../src/files/outlineSegments.ts';
import { expectClose } from '../../support/close.ts';

const SIZES: SlitPanelSizes = { layers: 6, rows: 4, pitch: 3, slitWidth: 0.8, slit: 20, bridge: 2, depth: 66 };
const EXACT = { rel: 1e-9, because: 'round-off of sums of some thousand pieces' } as const;
const areaOf = (sizes: SlitPanelSizes) => slitPanelPlan(sizes).reduce((sum, path) => sum + pathArea(path), 0);
const holesOf = (sizes: SlitPanelSizes) => slitPanelPlan(sizes).slice(1);

/** A slit w wide and s long with round ends, of which so many lie in the sheet. */
const slitArea = (w: number, s: number, ends: number) => w * s - (ends * (4 - Math.PI) * (w / 2) ** 2) / 2;

describe('the plan of a slit panel', () => {
  it('of whole slits and bridges has them in every other row, and halves at the edges of the rows between', () => {
    // Rows 0 and 2: three whole slits. Rows 1 and 3: two whole ones, and two halves that are open at the edges.
    expect(holesOf(SIZES)).toHaveLength(2 * 3 + 2 * 2);
    const whole = 10 * slitArea(0.8, 20, 2);
    const open = 4 * slitArea(0.8, 33 - 23, 1);
    expectClose(areaOf(SIZES), 12 * 66 - whole - open, EXACT);
    expect(bounds(slitPanelPlan(SIZES))).toEqual({ left: 0, right: 12, bottom: -33, top: 33 });
  });

  it('leaves bridges of the said width, half a bridge at an edge, and a strip of the pitch less the slit', () => {
    const boxes = holesOf(SIZES).map((path) => bounds([path]));
    const [a, b] = boxes;
    expectClose((b?.bottom ?? 0) - (a?.top ?? 0), 2, EXACT);
    expectClose((a?.bottom ?? 0) + 33, 1, EXACT);
    const rows = [...new Set(boxes.map(({ left }) => left.toFixed(6)))].map(Number);
    expect(rows).toEqual([1.1, 4.1, 7.1, 10.1]);
    expectClose((a?.right ?? 0) - (a?.left ?? 0), 0.8, EXACT);
  });

  it('of any width is centred, and leaves out splinters of bridges and nicks of slits', () => {
    // Slits of row 0 end 0.5 mm short of the edge, half of half a bridge: they run into it.
    expect(holesOf({ ...SIZES, rows: 1, depth: 2 * 32.5 })).toHaveLength(1);
    expect(areaOf({ ...SIZES, rows: 1, depth: 65 })).toBeCloseTo(
      3 * 65 - slitArea(0.8, 20, 2) - 2 * slitArea(0.8, 20.5, 1),
      9,
    );
    // The next slit would begin 0.3 mm inside the edge, less than its round end.
    expectClose(areaOf({ ...SIZES, rows: 1, depth: 68.6 }), 3 * 68.6 - 3 * slitArea(0.8, 20, 2), EXACT);
  });

  it('rounds the sides of a slit that is wider than long', () => {
    const wide = { ...SIZES, slitWidth: 5, pitch: 7, slit: 3, bridge: 1, depth: 4, rows: 1 };
    expectClose(areaOf(wide), 7 * 4 - (5 * 3 - (4 - Math.PI) * 1.5 ** 2), EXACT);
  });
});

/** Sizes on the grid of their steps, up to the limits, that the family does not refuse. */
const { layers: _, ...drawnSizes } = slitPanel.parameters;
const anySizes = fc
  .record(
    Object.fromEntries(
      Object.entries(drawnSizes).map(([name, { min, max, step }]) => {
        const most = name === 'depth' ? 60 : max;
        return [name, fc.integer({ min: 0, max: Math.floor((most - min) / step) }).map((n) => min + n * step)];
      }),
    ),
  )
  .map((sizes) => ({ ...SIZES, ...sizes }))
  .filter((sizes) => !slitPanel.check(sizes, 1.2, { lineWidth: 0.42, layerHeight: 0.2 }).some(isRefusal));

describe('the plan of any panel that is not refused', () => {
  it('is closed, of finite places, one outline round slits that run the other way and lie within it, apart', () => {
    fc.assert(
      fc.property(anySizes, (sizes) => {
        const [outer, ...holes] = slitPanelPlan(sizes);
        if (!outer) throw new Error('no outline');
        expect([outer, ...holes].every(isClosed)).toBe(true);
        expect(pathArea(outer)).toBeGreaterThan(0);
        const sheet = pathLoop(outer, 0.1);
        expect(sheet.every(({ x, y }) => Number.isFinite(x) && Number.isFinite(y))).toBe(true);
        const boxes = holes.map((path) => bounds([path]));
        for (const [i, path] of holes.entries()) {
          const isWithin = pathArea(path) < 0 && pathLoop(path, 0.1).every((corner) => isInside([sheet], corner));
          const [a, b] = [boxes[i], boxes[i + 1]];
          const isApart = !a || !b || b.left >= a.right + 0.8 || b.bottom >= a.top + sizes.bridge - 1e-6;
          if (!isWithin || !isApart) throw new Error(`slit ${i} of ${holes.length}`);
        }
      }),
      { numRuns: 60 },
    );
  });

  it('has every row of slits cut and every row of bridges whole: it hangs together and can twist', () => {
    fc.assert(
      fc.property(anySizes, (sizes) => {
        const [outer, ...holes] = slitPanelPlan(sizes);
        if (!outer) throw new Error('no outline');
        const loops = [outer, ...holes].map((path) => pathLoop(path, 0.1));
        for (let row = 0; row < sizes.rows; row += 1) {
          const x = (row + 0.5) * sizes.pitch;
          // Bridges lie about the middle of the sheet in odd rows, and half a period off it in even ones.
          const bridge = row % 2 === 0 ? (sizes.slit + sizes.bridge / 2) / 2 : 0;
          const slit = row % 2 === 0 ? 0 : (sizes.slit / 2 + sizes.bridge) / 2;
          expect([isInside(loops, { x, y: bridge }), isInside(loops, { x, y: slit })]).toEqual([true, false]);
        }
      }),
      { numRuns: 60 },
    );
  });
});
