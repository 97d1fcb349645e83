import { layOut, type Layout } from '../../src/ui/drawing/layout.ts';
import { NOMINAL_PX_PER_MM } from '../../src/ui/drawing/sheet.ts';
import { radians } from '../../src/core/units.ts';
import type { Joint } from '../../src/core/design/joint.ts';
import { assessed, changed, CREASE, LEAF } from './joints.ts';

const turned = (joint: Joint, angleDeg: number, sizes: Joint['sizes'] = {}) =>
  changed(joint, { movement: { amount: radians(angleDeg) }, sizes });

/** Joints that make a drawing hard in different ways. */
export const DRAWN: readonly (readonly [string, Joint])[] = [
  ['a leaf at 35°', LEAF],
  ['a leaf at 5°', turned(LEAF, 5)],
  ['a leaf of four lines at 90°', turned(LEAF, 90, { lines: 4, length: 20 })],
  ['a leaf at 180°', turned(LEAF, 180)],
  ['a leaf of one line', turned(LEAF, 35, { lines: 1 })],
  ['a leaf of three lines', turned(LEAF, 35, { lines: 3 })],
  ['a leaf of 60 mm', turned(LEAF, 35, { length: 60 })],
  ['a leaf of 2 mm at 40°', turned(LEAF, 40, { length: 2 })],
  ['a leaf both ways', changed(LEAF, { movement: { ways: 'both ways' } })],
  ['a leaf both ways at 12°', changed(LEAF, { movement: { ways: 'both ways', amount: radians(12) } })],
  ['a leaf that stands on its end', changed(LEAF, { profile: { lying: 'upright' } })],
  ['a leaf measured at 0.63', changed(LEAF, { measuredThickness: 0.63 })],
  ['a short leaf measured at 0.63', changed(LEAF, { measuredThickness: 0.63, sizes: { length: 5 } })],
  ['a leaf measured at 0.75', changed(LEAF, { measuredThickness: 0.75 })],
  ['a leaf too thin to be laid', changed(LEAF, { measuredThickness: 0.3 })],
  ['a leaf without fillets', turned(LEAF, 35, { fillet: 0 })],
  ['three leaves in a row', turned(LEAF, 90, { inRow: 3 })],
  ['a crease at 100°', CREASE],
  ['a crease at 180°', turned(CREASE, 180)],
  ['a short crease of one layer at 180°', turned(CREASE, 180, { length: 1, layers: 1 })],
  ['a crease measured at 0.5', changed(CREASE, { measuredThickness: 0.5 })],
];

/** Inner widths of the drawing on a phone, a tablet, and screens of 1280 and 1920 px. */
export const WIDTHS: readonly number[] = [328, 736, 797, 968];

export function laidOut(joint: Joint, width: number): Layout {
  return layOut(assessed(joint), width, NOMINAL_PX_PER_MM, 'mm');
}
