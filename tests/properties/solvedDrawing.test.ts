/** Laws of the drawing of a solved joint: every kind, anywhere on its way, on any width of screen. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { labelBox } from '../../src/ui/drawing/lettering.ts';
import { FRAME, NOMINAL_PX_PER_MM, onSheet, SCALES } from '../../src/ui/drawing/sheet.ts';
import { movedAmount } from '../../src/ui/drawing/solved/movedAmount.ts';
import { gripsOf } from '../../src/ui/drawing/solved/grips.ts';
import { movedMembers, padTransform } from '../../src/ui/drawing/solved/movedPaths.ts';
import { isStrainInPlane, readingOf } from '../../src/ui/drawing/solved/reading.ts';
import { carried, poseIn } from '../../src/ui/drawing/solved/scene.ts';
import { layOutSolved } from '../../src/ui/drawing/solved/solvedLayout.ts';
import { stateAt } from '../../src/ui/drawing/solved/state.ts';
import { INKS, inkOf, strainOfInk } from '../../src/ui/drawing/solved/strainCells.ts';
import { refined, strainField } from '../../src/ui/drawing/solved/strainField.ts';
import { boundsOf, edgesIn } from '../../src/ui/drawing/solved/swept.ts';
import { expectClose } from '../support/close.ts';
import { SOLVED_CASES, type SolvedCase } from '../support/solvedDrawings.ts';

const anyCase = fc.constantFrom(...SOLVED_CASES);
const width = fc.integer({ min: 280, max: 2000 });
/** Shares of the way on a grid, so that its ends and rest are among them. */
const share = fc.integer({ min: 0, max: 40 }).map((n) => n / 40);

const amountAt = ({ travelled: { from, to } }: SolvedCase, at: number) => from + at * (to - from);
const layoutOf = ({ scene, travelled }: SolvedCase, wide: number) =>
  layOutSolved(scene, travelled, wide, NOMINAL_PX_PER_MM, 'mm');

function numbersIn(value: unknown): number[] {
  if (typeof value === 'number') return [value];
  if (typeof value === 'string') return /NaN|Infinity/u.test(value) ? [Number.NaN] : [];
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(numbersIn) : [];
}

const RUNS = { numRuns: 30 };
/** A sheet is laid out in a tenth of a second, and on a busy machine in three. */
const TIME = 30_000;

describe('the drawing of a solved joint', () => {
  it(
    'is laid out in finite numbers, at one of the scales',
    () => {
      fc.assert(
        fc.property(anyCase, width, share, (one, wide, at) => {
          const { scene, travelled: _, ...laid } = layoutOf(one, wide);
          const state = stateAt(one.solved, amountAt(one, at));
          const moved = [
            movedMembers(scene, laid.sheet, state, laid.legend),
            movedAmount(scene, laid.sheet, state, 'mm'),
            readingOf(one.a, state),
          ];
          expect(numbersIn([laid, moved]).filter((value) => !Number.isFinite(value))).toEqual([]);
          expect(SCALES).toContain(laid.sheet.scale);
          expect(laid.sheet.bottom).toBeGreaterThan(laid.sheet.top);
        }),
        RUNS,
      );
    },
    TIME,
  );

  it(
    'keeps the joint, its dimensions and its furniture on the sheet',
    () => {
      fc.assert(
        fc.property(anyCase, width, share, (one, wide, at) => {
          const { scene, sheet, marks, placed } = layoutOf(one, wide);
          // The smallest scale is drawn though it may not fit.
          fc.pre(sheet.scale > (SCALES.at(-1) ?? 0));
          const edges = edgesIn(scene, stateAt(one.solved, amountAt(one, at))).map((point) => onSheet(sheet, point));
          const words = marks.labels
            .map(labelBox)
            .flatMap((box) => [box, { x: box.x + box.width, y: box.y + box.height }]);
          const all = boundsOf([...edges, ...words, ...Object.values(placed)]);
          expect(all.left).toBeGreaterThanOrEqual(FRAME);
          expect(all.right).toBeLessThanOrEqual(sheet.width);
          expect(all.bottom).toBeGreaterThanOrEqual(sheet.top);
          expect(all.top).toBeLessThanOrEqual(sheet.bottom);
        }),
        RUNS,
      );
    },
    TIME,
  );

  it(
    'carries pads as rigid bodies, by the same move in the picture as in the part',
    () => {
      fc.assert(
        fc.property(anyCase, width, share, (one, wide, at) => {
          const { scene, sheet } = layoutOf(one, wide);
          const state = stateAt(one.solved, amountAt(one, at));
          for (const pad of scene.pads.filter(({ moves }) => moves)) {
            const [a, b] = [pad.loops[0]?.[0], pad.loops[0]?.at(-1)];
            if (!a || !b) continue;
            const now = poseIn(pad, state);
            const [p, q] = [carried(pad, now, a), carried(pad, now, b)];
            const rounding = { abs: 1e-9, because: 'round-off of a turn' };
            expectClose(Math.hypot(p.x - q.x, p.y - q.y), Math.hypot(a.x - b.x, a.y - b.y), rounding);
            const seen = transformed(padTransform(sheet, pad, state), onSheet(sheet, a));
            const there = onSheet(sheet, p);
            const px = { abs: 0.15, because: 'px and degrees are written to hundredths and thousandths' };
            expectClose(seen.x, there.x, px);
            expectClose(seen.y, there.y, px);
          }
        }),
        RUNS,
      );
    },
    TIME,
  );

  it(
    'colours strain by the inks of the ramp and no others',
    () => {
      fc.assert(
        fc.property(anyCase, width, share, (one, wide, at) => {
          const { scene, sheet, legend } = layoutOf(one, wide);
          const inks = Array.from({ length: INKS }, (_, ink) => strainOfInk(ink, legend));
          expect(inks).toEqual(inks.toSorted((p, q) => p - q));
          expect(inks.map((strain) => inkOf(strain, legend))).toEqual(inks.map((_, ink) => ink));
          const { cells } = movedMembers(scene, sheet, stateAt(one.solved, amountAt(one, at)), legend);
          for (const { strain } of cells) expect(inks).toContain(strain);
        }),
        RUNS,
      );
    },
    TIME,
  );

  it(
    'offers handles whose values lie between their ends',
    () => {
      fc.assert(
        fc.property(anyCase, width, (one, wide) => {
          for (const { value, min, max } of gripsOf(layoutOf(one, wide))) {
            expect(value).toBeGreaterThanOrEqual(min);
            expect(value).toBeLessThanOrEqual(max);
          }
        }),
        RUNS,
      );
    },
    TIME,
  );
});

/** What a transform of a translation, a turn and a translation does to a point. */
function transformed(transform: string, { x, y }: { x: number; y: number }) {
  const [toX = 0, toY = 0, turn = 0, fromX = 0, fromY = 0] = (transform.match(/-?[\d.]+/gu) ?? []).map(Number);
  const [c, s] = [Math.cos((turn * Math.PI) / 180), Math.sin((turn * Math.PI) / 180)];
  const [dx, dy] = [x + fromX, y + fromY];
  return { x: toX + c * dx - s * dy, y: toY + s * dx + c * dy };
}

describe.each(SOLVED_CASES)('the states of $name', ({ a, solved, scene, travelled }) => {
  it('are those of the way at its points, and as printed at rest', () => {
    for (const point of [...solved.forward.points].filter(({ amount }) => amount <= travelled.wanted)) {
      const state = stateAt(solved, point.amount);
      const first = solved.forward.points.find(({ amount }) => Math.abs(amount) >= Math.abs(point.amount));
      const [end, known] = [state.shapes[0]?.x.at(-1), first?.shapes[0]?.x.at(-1)];
      expectClose(end ?? Number.NaN, known ?? Number.NaN, { abs: 1e-9, because: 'round-off of a mixture' });
      expectClose(state.within, first?.peakWithin ?? Number.NaN, { rel: 1e-12, because: 'round-off of a mixture' });
    }
    for (const pad of scene.pads) expect(poseIn(pad, stateAt(solved, 0))).toEqual(pad.printed);
  });

  it('strain most where and as much as the assessment says', () => {
    if (!isStrainInPlane(a)) return;
    const ways = travelled.from < 0 ? [solved.forward, ...(solved.back ? [solved.back] : [])] : [solved.forward];
    const states = ways
      .flatMap(({ points }) => points)
      .filter(({ amount }) => Math.abs(amount) <= travelled.wanted * (1 + 1e-9));
    const peaks = states.flatMap(({ shapes }) =>
      shapes.map((shape, i) => {
        const fine = refined(shape, 0.2);
        const field = strainField(fine, scene.members[i]!, a);
        return Math.max(...fine.x.flatMap((_, k) => [field(k, 0.5), field(k, -0.5)]));
      }),
    );
    expectClose(Math.max(...peaks), a.strain.peak, {
      rel: 0.02,
      because:
        'the crest between two samples is a parabola to the solver and a corner here; fillets fade over the leaf beside them',
    });
  });
});
