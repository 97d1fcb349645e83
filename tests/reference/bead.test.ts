/**
 * Source [bead-section]: geometry of an extruded bead with a stadium section. The figures of checkvalues/L.json were
 * computed outside this program from the rectangle and the circle that make the stadium and from conservation of volume.
 * Fair, because it is the same geometry in separate code; tolerances are those of the rows (round-off).
 */
import { describe, expect, it } from 'vitest';
import { beadArea, beadOverlap, beadSpacing, beadWidthFromFlow, laidWidth } from '../../src/core/print/bead.ts';
import { nearestLines, thicknessOfLines, type LineSettings } from '../../src/core/print/wholeLines.ts';
import { checkValues, expectRow, input } from '../support/checkValues.ts';
import { expectClose } from '../support/close.ts';

const nominal = (lineWidth: number): LineSettings => ({ lineWidth, layerHeight: 0.2, fitRule: 'nominal' });

describe('section of one bead', () => {
  it.each(checkValues('L', 'L-A-'))('$id: area, spacing, overlap', (row) => {
    const [w, h] = [input(row, 'w_mm'), input(row, 'h_mm')];
    expectRow(row, beadArea(w, h), beadSpacing(w, h), beadOverlap(h));
  });

  it.each(checkValues('L', 'L-w-'))('$id: area and width from the feed of filament', (row) => {
    const h = input(row, 'h_mm');
    const width = beadWidthFromFlow(input(row, 'filament_mm'), input(row, 'E_per_mm'), h);
    expectRow(row, beadArea(width, h), width);
  });

  it.each(checkValues('L', 'L-E-'))('$id: the feed computed for a width lays that width', (row) => {
    const feed = row.expected[0] ?? Number.NaN;
    const width = beadWidthFromFlow(input(row, 'filament_mm'), feed, input(row, 'h_mm'));
    expectClose(width, input(row, 'w_mm'), { rel: 1e-12, because: 'round-off through a feed and back' });
  });
});

describe('width of what is laid, however little', () => {
  const LAID = { rel: 1e-12, because: 'round-off through an area and back' } as const;

  it.each(checkValues('L', 'L-w-'))('$id: of a wide bead it is that of the stadium', (row) => {
    const h = input(row, 'h_mm');
    const width = laidWidth(input(row, 'filament_mm'), input(row, 'E_per_mm'), h);
    expectRow(row, beadArea(width, h), width);
  });

  it.each(checkValues('L', 'L-E-'))('$id: the feed computed for a width lays that width', (row) => {
    const feed = row.expected[0] ?? Number.NaN;
    expectClose(laidWidth(input(row, 'filament_mm'), feed, input(row, 'h_mm')), input(row, 'w_mm'), LAID);
  });

  /** The area of an ellipse, π·a·b with half axes a and b, and of a circle: elementary geometry. */
  it.each([0.02, 0.1, 0.19, 0.2])('an ellipse %f mm wide and 0.2 mm high is told by its area', (width) => {
    const area = Math.PI * (width / 2) * 0.1;
    expectClose(laidWidth(1.75, area / (Math.PI * 0.875 ** 2), 0.2), width, LAID);
  });

  it('meets the stadium where it is as wide as high, and is nothing of nothing', () => {
    const round = (0.1 / 0.875) ** 2;
    const smooth = { abs: 1e-8, because: 'a step of a millionth of the feed' } as const;
    expectClose(laidWidth(1.75, round * (1 - 1e-9), 0.2), laidWidth(1.75, round * (1 + 1e-9), 0.2), smooth);
    expect(laidWidth(1.75, 0, 0.2)).toBe(0);
  });
});

describe('lines side by side', () => {
  it.each(checkValues('L', 'L-n-'))('$id: nominal and overlapped thickness', (row) => {
    const [n, w, h] = [input(row, 'n'), input(row, 'w_mm'), input(row, 'h_mm')];
    const lines = (fitRule: LineSettings['fitRule']) => thicknessOfLines(n, { lineWidth: w, layerHeight: h, fitRule });
    expectRow(row, lines('nominal'), lines('overlapped'));
  });

  it.each(checkValues('L', 'L-round-'))('$id: nearest count, with stiffness by the cube and strain', (row) => {
    const t = input(row, 't_mm');
    const { count, thickness } = nearestLines(t, nominal(input(row, 'w_mm')));
    expectRow(row, count, thickness, (thickness / t) ** 3, thickness / t);
  });

  /** Source [common-practice]: a profile with 0.42 mm lines; no source, not a measured fact. */
  it.each([
    { n: 2, thickness: 0.84 },
    { n: 3, thickness: 1.26 },
    { n: 4, thickness: 1.68 },
    { n: 5, thickness: 2.1 },
  ])('$n lines of 0.42 mm are $thickness mm', ({ n, thickness }) => {
    expectClose(thicknessOfLines(n, nominal(0.42)), thickness, { printedTo: 2 });
    expect(nearestLines(thickness, nominal(0.42))).toMatchObject({ count: n, tie: false });
  });
});
