import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { judgeAll } from '../../../src/core/inspect/judge.ts';
import { scaleChart, widthChart } from '../../../src/core/inspect/scaleChart.ts';
import { isWhole, tallyOf } from '../../../src/core/inspect/verdicts.ts';
import { expectClose } from '../../support/close.ts';
import {
  anyFlexures,
  AS_DROPPED,
  ASKED,
  BOX,
  creaseOf,
  THREE_LEAVES,
  THREE_LEAVES_BOX,
} from '../../support/flexures.ts';

const because = 'round-off of one quotient';

describe('the charts of the three leaves of the look notes', () => {
  const scales = scaleChart(THREE_LEAVES, THREE_LEAVES_BOX, AS_DROPPED);
  const widths = widthChart(THREE_LEAVES, THREE_LEAVES_BOX, AS_DROPPED);

  it('have a row for each thickness', () => {
    expect(scales.rows.map(({ numbers, thickness }) => [numbers, thickness])).toEqual([
      [[1], 0.42],
      [[2], 0.84],
      [[3], 1.26],
    ]);
    const [{ points }] = scales.rows as [(typeof scales.rows)[number]];
    // 0.42 mm at 0.8 and 4 times in lines of 0.56 mm, and one line between.
    points.forEach(({ at, count }, i) => {
      expectClose(at, [0.8, 4 / 3, 4][i]!, { abs: 1e-12, because });
      expectClose(count, [0.6, 1, 3][i]!, { abs: 1e-12, because });
    });
  });

  it('mark every whole count', () => {
    const marks = scales.rows[1]!.marks.map(({ at, count, isEven }) => [Number(at.toFixed(4)), count, isEven]);
    expect(marks).toEqual([
      [1.3333, 2, true],
      [2, 3, false],
      [2.6667, 4, true],
      [3.3333, 5, false],
      [4, 6, true],
    ]);
    // 0.84 mm between lines of 0.2 and 1 mm.
    expect(widths.rows[1]!.marks.map(({ at, count }) => [Number(at.toFixed(3)), count])).toEqual([
      [0.21, 4],
      [0.28, 3],
      [0.42, 2],
      [0.84, 1],
    ]);
  });

  it('say where all are whole at once', () => {
    expect(scales.allWhole.map(({ at, counts, isEven }) => [Number(at.toFixed(3)), counts, isEven])).toEqual([
      [1.333, [1, 2, 3], false],
      [2.667, [2, 4, 6], true],
      [4, [3, 6, 9], false],
    ]);
    expect(widths.allWhole.map(({ at, counts, isEven }) => [Number(at.toFixed(3)), counts, isEven])).toEqual([
      [0.21, [2, 4, 6], true],
      [0.42, [1, 2, 3], false],
    ]);
  });

  it('say what the nozzle lays, and what it lays well', () => {
    expectClose(widths.span.max, 1, { abs: 1e-12, because });
    expectClose(widths.well.min, 0.36, { abs: 1e-12, because });
    expect([widths.now, scales.now]).toEqual([0.56, 1]);
  });
});

describe('the charts of any part', () => {
  it('tell a mark and a place where all are whole as the judge does', () => {
    fc.assert(
      fc.property(anyFlexures(4), (flexures) => {
        const chart = scaleChart(flexures, BOX, AS_DROPPED);
        const judge = (scale: number) => judgeAll(flexures, BOX, { ...AS_DROPPED, scale }, ASKED, 'part.stl');
        for (const { numbers, marks } of chart.rows) {
          for (const { at, count } of marks.slice(0, 3)) {
            const { landing } = judge(at).find(({ flexure }) => flexure.number === numbers[0])!;
            expect([isWhole(landing), landing.nearest]).toEqual([true, count]);
          }
        }
        for (const { at } of chart.allWhole.slice(0, 5)) expect(tallyOf(judge(at)).whole).toBe(flexures.length);
      }),
      { numRuns: 30 },
    );
  });

  it('leave layers out of the widths of lines, which they do not ask for', () => {
    const widths = widthChart([creaseOf()], BOX, AS_DROPPED);
    expect([widths.rows, widths.allWhole]).toEqual([[], []]);
    expect(scaleChart([creaseOf()], BOX, AS_DROPPED).rows[0]?.countOf).toBe('layers');
  });
});
