import type { Point } from '../../core/geometry/outline.ts';
import type { Figure } from './figure.ts';
import type { Box } from './lettering.ts';
import { onSheet, through, type Sheet } from './sheet.ts';

type Drawn = Pick<Sheet, 'rootX' | 'pxPerMm'>;

/** Lines of points [mm] as one path. */
export function runsPath(sheet: Drawn, runs: readonly (readonly Point[])[], closed = false): string {
  return runs
    .map((run) =>
      through(
        run.map((point) => onSheet(sheet, point)),
        closed,
      ),
    )
    .join('');
}

const f = (value: number) => value.toFixed(2);

/** A rectangle [px] whose shorter sides are half circles. */
export function stadiumPath({ x, y, width, height }: Box): string {
  const r = Math.min(width, height) / 2;
  const round = (dx: number, dy: number) => `a${f(r)} ${f(r)} 0 0 1 ${f(dx)} ${f(dy)}`;
  const [w, h] = [f(width - 2 * r), f(height - 2 * r)];
  return `M${f(x + r)} ${f(y)}h${w}${round(r, r)}v${h}${round(-r, r)}h-${w}${round(-r, -r)}v-${h}${round(r, -r)}Z`;
}

/** A box drawn smaller by so much on every side. */
export function shrunk({ x, y, width, height }: Box, by: number): Box {
  return { x: x + by, y: y + by, width: Math.max(0.2, width - 2 * by), height: Math.max(0.2, height - 2 * by) };
}

/** A rectangle of the part [mm] on the sheet. */
export function boxOnSheet(sheet: Drawn, left: number, right: number, bottom: number, top: number): Box {
  const corner = onSheet(sheet, { x: left, y: top });
  return { ...corner, width: (right - left) * sheet.pxPerMm, height: (top - bottom) * sheet.pxPerMm };
}

export function boxPath({ x, y, width, height }: Box): string {
  return `M${x.toFixed(2)} ${y.toFixed(2)}h${width.toFixed(2)}v${height.toFixed(2)}h${(-width).toFixed(2)}Z`;
}

/** The edge of the moving pad, from where it leaves the leaf below to where it meets it above, before bending. */
export function movingPadPath(sheet: Drawn, { points, length, thickness }: Figure): string {
  const pad = points.filter(({ x }) => x > length + 1e-9);
  const root = (y: number) => ({ x: length, y });
  return runsPath(sheet, [[root(-thickness / 2), ...pad, root(thickness / 2)]]);
}
