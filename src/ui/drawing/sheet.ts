import type { Point } from '../../core/geometry/outline.ts';
import { MM_PER_INCH } from '../text/numbers.ts';

/** A screen that follows the rule of 96 px to the inch; the bank-card check replaces it where one does not. */
export const NOMINAL_PX_PER_MM = 96 / MM_PER_INCH;

/** Scales that a drawing may have, largest first. The last two are for parts longer than the screen. */
export const SCALES: readonly number[] = [20, 10, 5, 2, 1, 0.5, 0.2];

/** A bead smaller than this cannot be told from its neighbour [px]: it is drawn as one with them. */
export const FINEST = 2.2;

/** Width of the frame that is itself the millimetre scale, at the left and at the foot [px]. */
export const FRAME = 7;

/**
 * Where the drawing lies on the screen. The root of the leaf is at (`rootX`, 0) and y runs down,
 * so that the sheet can grow upwards without moving anything on it.
 */
export interface Sheet {
  /** 10 for 10 : 1. */
  readonly scale: number;
  /** px on the screen for 1 mm of the part. */
  readonly pxPerMm: number;
  readonly width: number;
  readonly rootX: number;
  /** Top edge, below 0, and bottom edge [px]. */
  readonly top: number;
  readonly bottom: number;
  /** A phone: less lettering, larger handles. */
  readonly small: boolean;
}

/** “10 : 1”, “1 : 2”. */
export function scaleText(scale: number): string {
  return scale >= 1 ? `${scale} : 1` : `1 : ${Math.round(1 / scale)}`;
}

/** A point of the part [mm, y up] on the sheet [px, y down]. The only place where y is turned round. */
export function onSheet({ rootX, pxPerMm }: Pick<Sheet, 'rootX' | 'pxPerMm'>, { x, y }: Point): Point {
  return { x: rootX + x * pxPerMm, y: -y * pxPerMm };
}

const px = (value: number) => String(Math.round(value * 100) / 100);

/** “x y” to a hundredth of a px. */
export function pair({ x, y }: Point): string {
  return `${px(x)} ${px(y)}`;
}

/** The `d` of a path through points [px]. */
export function through(points: readonly Point[], closed = false): string {
  return points.length === 0 ? '' : `M${points.map(pair).join('L')}${closed ? 'Z' : ''}`;
}
