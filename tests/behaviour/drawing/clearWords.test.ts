/**
 * Words on the drawing touch neither the joint at rest nor as bent, nor each other, at any angle of the travel.
 * The outline is followed here point by point; the layout itself keeps a coarse grid of cells.
 */
import { describe, expect, it } from 'vitest';
import { flatten } from '../../../src/core/geometry/flatten.ts';
import { rollPoint } from '../../../src/core/geometry/roll.ts';
import { asRad } from '../../../src/core/units.ts';
import { angleMarks } from '../../../src/ui/drawing/angleDimension.ts';
import type { Layout } from '../../../src/ui/drawing/layout.ts';
import { grown, labelBox, overlap, type Box, type Label } from '../../../src/ui/drawing/lettering.ts';
import { densified } from '../../../src/ui/drawing/polygon.ts';
import { radiusMarks } from '../../../src/ui/drawing/radiusLeader.ts';
import { onSheet } from '../../../src/ui/drawing/sheet.ts';
import { DRAWN, laidOut, WIDTHS } from '../../support/drawings.ts';

const FRACTIONS = Array.from({ length: 24 }, (_, i) => (i + 1) / 24);

/** The outline at a fraction of the travel on the sheet, a point every px or so. */
function outlineAt({ figure, sheet }: Layout, fraction: number) {
  const edge = densified(flatten(figure.outline, 0.005), 1 / sheet.pxPerMm);
  return edge.map((point) => onSheet(sheet, rollPoint(point, figure.length, asRad(figure.angle * fraction))));
}

function movingLabels({ figure, sheet, angle, radius, unit }: Layout, fraction: number): readonly Label[] {
  const bend = radius ? radiusMarks(figure, sheet, radius, fraction, unit).labels : [];
  return [...angleMarks(figure, sheet, angle, fraction).labels, ...bend];
}

/** Section, legend and life size, without the clear edge that is kept round them. */
function furniture({ placed, section, legend, lifeSize }: Layout): readonly (readonly [string, Box])[] {
  return [
    ['section', { ...placed.section, width: section.width, height: section.height }],
    ['legend', { ...placed.legend, width: legend.width, height: legend.height }],
    ...(placed.lifeSize && lifeSize ? [['life size', { ...placed.lifeSize, ...lifeSize }] as const] : []),
  ];
}

const contains = ({ x, y, width, height }: Box, p: { readonly x: number; readonly y: number }) =>
  p.x > x && p.x < x + width && p.y > y && p.y < y + height;

const CASES = DRAWN.flatMap(([name, joint]) => WIDTHS.map((width) => ({ name, joint, width })));

describe.each(CASES)('$name on $width px', ({ joint, width }) => {
  const layout = laidOut(joint, width);
  const still = layout.marks.labels.map((label) => [label.text, labelBox(label)] as const);

  it('keeps words that stay off the joint wherever it is', () => {
    const touched = [0, ...FRACTIONS].flatMap((fraction) => {
      const outline = outlineAt(layout, fraction);
      return [...still, ...furniture(layout)].flatMap(([text, box]) =>
        outline.some((point) => contains(box, point)) ? [`${text} at ${fraction.toFixed(2)}`] : [],
      );
    });
    expect(touched).toEqual([]);
  });

  it('keeps words that move along off the joint at rest and as bent', () => {
    const rest = outlineAt(layout, 0);
    const touched = FRACTIONS.flatMap((fraction) => {
      const bent = outlineAt(layout, fraction);
      return movingLabels(layout, fraction).flatMap((label) =>
        [...rest, ...bent].some((point) => contains(labelBox(label), point))
          ? [`${label.text} at ${fraction.toFixed(2)}`]
          : [],
      );
    });
    expect(touched).toEqual([]);
  });

  it('keeps all words and furniture apart', () => {
    const clashes = FRACTIONS.flatMap((fraction) => {
      const moving = movingLabels(layout, fraction).map((label) => [label.text, labelBox(label)] as const);
      const all = [...still, ...furniture(layout), ...moving];
      return all.flatMap(([text, box], i) =>
        all
          .slice(i + 1)
          .flatMap(([other, box2]) => (overlap(grown(box, -1), grown(box2, -1)) ? [`${text} on ${other}`] : [])),
      );
    });
    expect([...new Set(clashes)]).toEqual([]);
  });

  it('keeps everything on the sheet', () => {
    const { sheet } = layout;
    const page: Box = { x: 0, y: sheet.top, width: sheet.width, height: sheet.bottom - sheet.top };
    const outside = [
      ...[0, ...FRACTIONS].flatMap((fraction) => outlineAt(layout, fraction)).filter((point) => !contains(page, point)),
      ...[...still, ...furniture(layout)].filter(
        ([, { x, y, width: w, height: h }]) => !contains(page, { x, y }) || !contains(page, { x: x + w, y: y + h }),
      ),
    ];
    expect(outside).toEqual([]);
  });
});
