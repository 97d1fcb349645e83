import type { Point } from '../../core/geometry/outline.ts';
import type { Figure } from './figure.ts';
import { onSheet, type Sheet } from './sheet.ts';

/** How far up the face of the pad the zone is drawn beyond the fillet [mm]. */
const UP_THE_FACE = 0.4;
const ARC_STEPS = 8;

/**
 * The zone to keep start points out of: a line along the leaf and round both roots, `offset` px off the surface,
 * on the lower side where the pad stands out there, else on the upper.
 */
export function keepOutLine(figure: Figure, sheet: Sheet, offset: number): Point[] {
  const { thickness, fillet, length, box, padBelow } = figure;
  const off = offset / sheet.pxPerMm;
  const side = padBelow ? -1 : 1;
  const face = padBelow ? -box.bottom : box.top;
  const far = Math.min(face, thickness / 2 + fillet + Math.max(UP_THE_FACE, off));
  const radius = fillet - off;
  const turn = (i: number) => (i / ARC_STEPS) * (Math.PI / 2);
  const root: Point[] =
    radius > 0
      ? Array.from({ length: ARC_STEPS + 1 }, (_, i) => ({
          x: -radius * Math.cos(turn(i)),
          y: thickness / 2 + fillet - radius * Math.sin(turn(i)),
        }))
      : [{ x: -radius, y: thickness / 2 + off }];
  const fixed = [{ x: -radius, y: far }, ...root].map(({ x, y }) => ({ x, y: side * y }));
  const moving = fixed.map(({ x, y }) => ({ x: length - x, y })).toReversed();
  return [...fixed, ...moving].map((point) => onSheet(sheet, point));
}
