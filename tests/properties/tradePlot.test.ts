import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { wantedOf } from '../../src/core/find/wantedOf.ts';
import { labelBox } from '../../src/ui/charts/labels.ts';
import { lettersWidth } from '../../src/ui/charts/letters.ts';
import { movedTo } from '../../src/ui/charts/stops.ts';
import { chanceStops, effortStops, sizeStops, unlessEnd } from '../../src/ui/find/brushBars.ts';
import { groupsOf, isThrough, keyOf, OPEN } from '../../src/ui/find/designs.ts';
import {
  chanceTicks,
  effortSpan,
  effortTicks,
  heightOf,
  ringRadius,
  sizeTicks,
  tradeFrame,
} from '../../src/ui/find/tradeFrame.ts';
import { marksOf, nearestMark, stairOf, tradeLabels } from '../../src/ui/find/tradeMarks.ts';
import { design } from '../support/found.ts';
import { changed, LEAF } from '../support/joints.ts';

const sizes = fc.integer({ min: 4, max: 200 }).map((tenths) => tenths / 10);
const chances = fc.integer({ min: 950, max: 1000 }).map((thousandths) => thousandths / 1000);
const efforts = fc.integer({ min: -20, max: 30 }).map((tenths) => 10 ** (tenths / 10));
const filaments = fc.constantFrom('pla', 'petg', 'pa12', 'pp');
const designs = fc.array(
  fc
    .tuple(sizes, chances, efforts, filaments, fc.boolean())
    .map(([size, chance, effort, filament, isBest]) => design(size, { chance, effort }, filament, isBest)),
  { minLength: 1, maxLength: 40 },
);
const papers = fc.constantFrom({ width: 330, height: 360 }, { width: 680, height: 470 }, { width: 980, height: 600 });
const WANTED = wantedOf(LEAF);

function drawn(found: readonly ReturnType<typeof design>[], size: { width: number; height: number }, brush = OPEN) {
  const frame = tradeFrame(size, found, WANTED);
  const all = found.map((one) => ({ key: keyOf(one.joint), design: one }));
  const marks = marksOf(groupsOf(found), all, frame, ringRadius(found), brush);
  return { frame, marks };
}

describe('room against chance', () => {
  it('draws every design inside the plot, larger where it pushes harder', () => {
    fc.assert(
      fc.property(designs, papers, (found, paper) => {
        const { frame, marks } = drawn(found, paper);
        const { left, right, top, bottom } = frame.box;
        for (const { x, y } of marks) {
          expect(x).toBeGreaterThanOrEqual(left);
          expect(x).toBeLessThanOrEqual(right);
          expect(y).toBeGreaterThanOrEqual(top);
          expect(y).toBeLessThanOrEqual(bottom);
        }
        const radii = marks
          .toSorted((a, b) => a.design.figures.effort - b.design.figures.effort)
          .map(({ radius }) => radius);
        expect(radii).toEqual(radii.toSorted((a, b) => a - b));
      }),
    );
  });

  it('joins the heavy rings by a stair that never goes down, and above which no heavy ring lies', () => {
    fc.assert(
      fc.property(designs, papers, (found, paper) => {
        const { marks } = drawn(found, paper);
        const stair = stairOf(marks);
        stair.slice(1).forEach(({ x, y }, at) => {
          expect(x).toBeGreaterThanOrEqual(stair[at]?.x ?? Number.NaN);
          expect(y).toBeLessThanOrEqual(stair[at]?.y ?? Number.NaN);
        });
        for (const mark of marks.filter(({ isBest }) => isBest)) {
          const reached = stair.filter(({ x }) => x <= mark.x).map(({ y }) => y);
          // A hundredth of a pixel is no step.
          expect(Math.min(...reached)).toBeLessThanOrEqual(mark.y + 0.011);
        }
      }),
    );
  });

  it('lays no number over a ring that is shown, nor over another word', () => {
    fc.assert(
      fc.property(designs, papers, (found, paper) => {
        const { frame, marks } = drawn(found, paper);
        const words = { wantedChance: WANTED.movement.chance, unit: 'mm' } as const;
        const labels = tradeLabels(marks, stairOf(marks), frame, words);
        const ranks = new Set(marks.filter(({ rank }) => rank !== undefined).map(({ key }) => key));
        const boxes = labels.map((label) => ({
          key: label.key,
          box: labelBox(
            lettersWidth(label.text, label.look === 'pencil' ? 13 : 12),
            label,
            label.look === 'pencil' ? 13 : 12,
          ),
        }));
        for (const { key, box } of boxes.filter((one) => ranks.has(one.key))) {
          for (const { x, y, radius } of marks) {
            const isOver =
              x + radius > box.left && x - radius < box.right && y + radius > box.top && y - radius < box.bottom;
            expect(isOver).toBe(false);
          }
          for (const other of boxes.filter((one) => one.key !== key)) {
            const isOver =
              other.box.left < box.right &&
              box.left < other.box.right &&
              other.box.top < box.bottom &&
              box.top < other.box.bottom;
            expect(isOver).toBe(false);
          }
        }
      }),
    );
  });

  it('marks under a pointer only what is shown', () => {
    fc.assert(
      fc.property(designs, papers, sizes, (found, paper, size) => {
        const { marks } = drawn(found, paper, { size });
        for (const mark of marks) {
          const under = nearestMark(marks, mark);
          expect(under === undefined || isThrough(under.design.figures, { size })).toBe(true);
          if (mark.isThrough) expect(under).toBeDefined();
        }
      }),
    );
  });
});

describe('the axes of what was found', () => {
  it('figure within their ends, and begin under what is wanted', () => {
    fc.assert(
      fc.property(designs, papers, fc.constantFrom(0.5, 0.8, 0.95, 0.99), (found, paper, chance) => {
        const wanted = wantedOf(changed(LEAF, { movement: { chance } }));
        const frame = tradeFrame(paper, found, wanted);
        expect(frame.lowChance).toBeLessThan(chance);
        expect(heightOf(frame, chance)).toBeLessThan(frame.box.bottom);
        expect(chanceTicks(frame).length).toBeGreaterThan(3);
        const [low = 0, high = 0] = frame.x.domain();
        for (const { at } of sizeTicks(frame, 'mm', paper)) expect(at).toBeGreaterThanOrEqual(low);
        for (const { at } of sizeTicks(frame, 'mm', paper)) expect(at).toBeLessThanOrEqual(high);
      }),
    );
  });

  it('have figures enough on the axis of efforts', () => {
    fc.assert(
      fc.property(designs, (found) => {
        const span = effortSpan(found);
        const ticks = effortTicks(span);
        expect(ticks.length).toBeLessThan(12);
        for (const { at } of ticks) expect(at >= span[0] && at <= span[1]).toBe(true);
      }),
    );
  });
});

describe('the bars of the brush', () => {
  const stops = fc.oneof(
    designs.map((found) => effortStops(found)),
    fc.constantFrom(0.4, 0.6, 0.7, 0.8).map((low) => chanceStops(low)),
    fc
      .tuple(sizes, fc.constantFrom('mm' as const, 'inch' as const))
      .map(([size, unit]) => sizeStops([0, 1 + size], unit)),
  );

  it('can stand in rising places, and go from one end to the other by keys', () => {
    fc.assert(
      fc.property(stops, (places) => {
        expect(places).toEqual([...new Set(places)].toSorted((a, b) => a - b));
        let at = places[0] ?? Number.NaN;
        for (let press = 0; press < places.length; press += 1) at = movedTo(places, at, { by: 1 });
        expect(at).toBe(places.at(-1));
        expect(unlessEnd(at, places.at(-1) ?? Number.NaN)).toBeUndefined();
        expect(unlessEnd(places[0] ?? Number.NaN, places.at(-1) ?? Number.NaN)).toBe(places[0]);
      }),
    );
  });
});
