import type { Point } from '../../core/geometry/outline.ts';
import type { Mm } from '../../core/units.ts';
import { pair, onSheet, type Sheet } from './sheet.ts';
import type { Sector } from './strainMap.ts';

/** The arc that a leaf has taken: what its paths on the sheet need, worked out once for each angle. */
export interface Roll {
  readonly sheet: Sheet;
  readonly length: Mm;
  /** End rotation so far [rad], not 0. */
  readonly angle: number;
}

/** Below this the arc is straight to a hundredth of a px, and its radius too large to write down [rad]. */
export const STRAIGHT = 1e-4;

function at({ sheet, length, angle }: Roll, x: Mm, y: Mm): string {
  const radius = length / angle;
  const turn = x / radius;
  const rise = 2 * radius * Math.sin(turn / 2) ** 2;
  return pair(onSheet(sheet, { x: (radius - y) * Math.sin(turn), y: rise + y * Math.cos(turn) }));
}

/** The arc along the leaf at height `y`, on from where the pen is. */
function arcTo(roll: Roll, from: Mm, to: Mm, y: Mm): string {
  const { sheet, length, angle } = roll;
  const radius = (length / angle - y) * sheet.pxPerMm;
  const turn = ((to - from) / length) * angle;
  const large = Math.abs(turn) > Math.PI ? 1 : 0;
  // An arc that turns against the clock has sweep 0. A fibre past its own centre turns the same way.
  const clockwise = turn > 0 ? 0 : 1;
  const r = Math.abs(radius).toFixed(2);
  return `A${r} ${r} 0 ${large} ${clockwise} ${at(roll, to, y)}`;
}

/** A fibre of the bent leaf from one place along it to another. */
export function fibre(roll: Roll, from: Mm, to: Mm, y: Mm): string {
  return `M${at(roll, from, y)}${arcTo(roll, from, to, y)}`;
}

/** A sector of the bent leaf, closed. */
export function sectorPath(roll: Roll, { start, end, low, high }: Sector): string {
  return `M${at(roll, start, high)}${arcTo(roll, start, end, high)}L${at(roll, end, low)}${arcTo(roll, end, start, low)}Z`;
}

/** Polygons of the leaf, drawn before bending, where they have bent to. */
export function bentShapes(roll: Roll, shapes: readonly (readonly Point[])[]): string {
  return shapes.map((shape) => `M${shape.map(({ x, y }) => at(roll, x, y)).join('L')}Z`).join('');
}

/** How the moving pad, drawn as if the root were still at (length, 0), is carried to where it is now. */
export function padTransform({ sheet, length, angle }: Roll): string {
  const radius = length / angle;
  const tip = onSheet(sheet, { x: radius * Math.sin(angle), y: 2 * radius * Math.sin(angle / 2) ** 2 });
  const root = onSheet(sheet, { x: length, y: 0 });
  const degrees = (-angle * 180) / Math.PI;
  return `translate(${pair(tip)}) rotate(${degrees.toFixed(4)}) translate(${pair({ x: -root.x, y: -root.y })})`;
}
