import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Box } from '../../../src/ui/charts/frame.ts';
import { inkMap } from '../../../src/ui/charts/inkMap.ts';
import { crosses, labelBox, LINE_WEIGHT, placeLabels, type LabelWish } from '../../../src/ui/charts/labels.ts';
import { lettersWidth } from '../../../src/ui/charts/letters.ts';
import { around, clearPaper, inkOf, markBox, offChart, spreadEnds } from '../../../src/ui/charts/spots.ts';

const BOX: Box = { left: 46, right: 366, top: 8, bottom: 226 };
const NOTHING = { inks: [], marks: [] };

function wish(key: string, spots: LabelWish['spots'], more: Partial<LabelWish> = {}): LabelWish {
  return { key, text: 'stays bent', look: 'ink', spots, ...more };
}

const areaOf = (placed: { text: string; x: number; y: number; anchor: 'start' | 'middle' | 'end' }) =>
  labelBox(lettersWidth(placed.text, 12), placed, 12);

describe('placing labels', () => {
  it('takes the first place when nothing is in the way', () => {
    const [placed] = placeLabels([wish('a', [{ x: 100, y: 50, anchor: 'start' }])], NOTHING, BOX);
    expect(placed).toMatchObject({ key: 'a', x: 100, y: 50, anchor: 'start', covers: false });
  });

  it('moves off a drawn line, and says when it could not', () => {
    const line = [
      { x: 46, y: 50 },
      { x: 366, y: 50 },
    ];
    const drawn = { inks: inkOf(line, BOX, LINE_WEIGHT), marks: [] };
    const two = wish('a', [
      { x: 100, y: 54, anchor: 'start' },
      { x: 100, y: 100, anchor: 'start' },
    ]);
    expect(placeLabels([two], drawn, BOX)[0]).toMatchObject({ y: 100, covers: false });
    expect(placeLabels([wish('a', two.spots.slice(0, 1))], drawn, BOX)[0]).toMatchObject({ y: 54, covers: true });
  });

  it('never leaves the paper', () => {
    const spots = [
      { x: 340, y: 50, anchor: 'start' },
      { x: 340, y: 50, anchor: 'end' },
    ] as const;
    expect(placeLabels([wish('a', spots)], NOTHING, BOX)[0]?.anchor).toBe('end');
    expect(placeLabels([wish('a', spots.slice(0, 1))], NOTHING, BOX)).toEqual([]);
  });

  it('gives the first choice to what comes first, and leaves out what is spare', () => {
    const spot = [{ x: 100, y: 50, anchor: 'start' }] as const;
    const placed = placeLabels([wish('a', spot), wish('b', spot, { spare: true })], NOTHING, BOX);
    expect(placed.map(({ key }) => key)).toEqual(['a']);
  });

  it('keeps clear of marks and looks far afield only when it must', () => {
    const at = { x: 200, y: 100 };
    const near = wish('a', around(at, 14), { far: () => clearPaper(at, 9, BOX) });
    expect(placeLabels([near], { inks: [], marks: [markBox(at, 10)] }, BOX)[0]?.leader).toBeUndefined();
    const crowd = markBox(at, 60);
    const placed = placeLabels([near], { inks: [], marks: [markBox(at, 10), crowd] }, BOX)[0];
    expect(placed?.leader).toBeDefined();
  });

  it('never lays a spare label over another', () => {
    const spot = fc.record({
      x: fc.integer({ min: 60, max: 350 }),
      y: fc.integer({ min: 20, max: 220 }),
      anchor: fc.constantFrom('start' as const, 'end' as const, 'middle' as const),
    });
    fc.assert(
      fc.property(fc.array(fc.array(spot, { minLength: 1, maxLength: 4 }), { maxLength: 8 }), (all) => {
        const wishes = all.map((spots, i) => wish(String(i), spots, { spare: true }));
        const areas = placeLabels(wishes, NOTHING, BOX).map(areaOf);
        areas.forEach((a, i) =>
          areas.slice(i + 1).forEach((b) => {
            const apart = a.right <= b.left || b.right <= a.left || a.bottom <= b.top || b.bottom <= a.top;
            expect(apart).toBe(true);
          }),
        );
      }),
    );
  });
});

describe('a leader and an area', () => {
  const area: Box = { left: 10, right: 20, top: 10, bottom: 20 };

  it('cross when the line passes through, not when it ends before or goes by', () => {
    expect(crosses({ x: 0, y: 15 }, { x: 30, y: 15 }, area)).toBe(true);
    expect(crosses({ x: 0, y: 0 }, { x: 30, y: 30 }, area)).toBe(true);
    expect(crosses({ x: 0, y: 15 }, { x: 9, y: 15 }, area)).toBe(false);
    expect(crosses({ x: 0, y: 5 }, { x: 30, y: 5 }, area)).toBe(false);
    expect(crosses({ x: 0, y: 12 }, { x: 12, y: 0 }, area)).toBe(false);
  });
});

describe('the table of what is drawn', () => {
  it('adds up the weight of everything in an area and nothing else', () => {
    const inks = [
      { x: 50, y: 50, weight: 12 },
      { x: 60, y: 52, weight: 3 },
      { x: 300, y: 200, weight: 7 },
    ];
    const weigh = inkMap(inks, BOX);
    expect(weigh({ left: 46, right: 100, top: 40, bottom: 60 })).toBe(15);
    expect(weigh({ left: 290, right: 310, top: 190, bottom: 210 })).toBe(7);
    expect(weigh({ left: 100, right: 200, top: 100, bottom: 150 })).toBe(0);
    expect(weigh(BOX)).toBe(22);
  });
});

describe('points outside the paper', () => {
  it('stand at the edge they left by, with the arrowhead looking after them', () => {
    expect(offChart({ x: 200, y: 100 }, BOX)).toBeUndefined();
    expect(offChart({ x: 900, y: 100 }, BOX)).toEqual({ at: { x: 359, y: 100 }, turnDeg: 0 });
    expect(offChart({ x: -900, y: 100 }, BOX)).toEqual({ at: { x: 53, y: 100 }, turnDeg: 180 });
    expect(offChart({ x: 200, y: -50 }, BOX)).toEqual({ at: { x: 200, y: 15 }, turnDeg: -90 });
    expect(offChart({ x: 200, y: 400 }, BOX)).toEqual({ at: { x: 200, y: 219 }, turnDeg: 90 });
  });
});

describe('labels at the ends of curves', () => {
  it('keep their heights where there is room and their distance where there is not', () => {
    expect(spreadEnds([50, 100, 150], 12, 230)).toEqual([50, 100, 150]);
    expect(spreadEnds([210, 215, 220], 12, 230)).toEqual([196, 208, 220]);
    expect(spreadEnds([228, 240], 12, 230)).toEqual([218, 230]);
  });
});
