import type { Point } from '../../core/geometry/outline.ts';
import type { LengthUnit } from '../text/numbers.ts';
import { radiusFigure } from '../text/drawingText.ts';
import { LEAST_ANGLE, type Drawn } from './angleDimension.ts';
import type { Figure } from './figure.ts';
import { bentPoint } from './motion.ts';
import type { Label } from './lettering.ts';
import { leader, NO_MARKS, type Marks } from './marks.ts';
import { onSheet } from './sheet.ts';

/** Where the bend radius is lettered, settled once for a joint. */
export interface RadiusPlan {
  /** Share of the length at which the leader meets the leaf. */
  readonly share: number;
  /** 1 on the hollow side, −1 on the other. */
  readonly side: 1 | -1;
  /** How far from the leaf the words are [px]. */
  readonly reach: number;
  /** −1: words to the left of the elbow. */
  readonly way: 1 | -1;
  /** Shown from this fraction of the travel on. */
  readonly from: number;
}

/** Past this radius a leaf looks straight [mm]. */
const LARGEST_RADIUS = 500;
const LANDING = 14;

/** The bend radius at a fraction of the travel, or nothing while the leaf looks straight. */
export function radiusMarks(
  figure: Figure,
  sheet: Drawn,
  { share, side, reach, way, from }: RadiusPlan,
  fraction: number,
  unit: LengthUnit,
): Marks & { readonly elbow: Point } {
  const turn = figure.angle * fraction;
  const radius = figure.length / turn;
  if (turn < LEAST_ANGLE || fraction < from || radius > LARGEST_RADIUS) {
    return { ...NO_MARKS, elbow: { x: 0, y: 0 } };
  }
  const surface = { x: share * figure.length, y: (side * figure.thickness) / 2 };
  const tip = onSheet(sheet, bentPoint(figure, surface, fraction));
  const normal = { x: -Math.sin(turn * share) * side, y: -Math.cos(turn * share) * side };
  const elbow = { x: tip.x + normal.x * reach, y: tip.y + normal.y * reach };
  const words: Label = {
    text: radiusFigure(radius, unit),
    x: elbow.x + way * (LANDING + 4),
    y: elbow.y + 4,
    anchor: way > 0 ? 'start' : 'end',
    tone: 'ink',
    size: 13,
  };
  return { ...leader(tip, elbow, way * LANDING, words), elbow };
}
