import { area, line } from 'd3';
import type { Px } from './frame.ts';

/** Tenths of a pixel are as fine as a screen shows. */
const linePath = line<Px>(
  (point) => point.x,
  (point) => point.y,
).digits(1);

export function pathOf(points: readonly Px[]): string {
  return linePath(points as Px[]) ?? '';
}

/** The area between two heights at the same places across. */
export interface Upright {
  readonly x: number;
  readonly low: number;
  readonly high: number;
}

const uprightArea = area<Upright>()
  .x((edge) => edge.x)
  .y0((edge) => edge.low)
  .y1((edge) => edge.high)
  .digits(1);

export function uprightBand(edges: readonly Upright[]): string {
  return uprightArea(edges as Upright[]) ?? '';
}

/** The area between two places across at the same heights. */
export interface Level {
  readonly y: number;
  readonly low: number;
  readonly high: number;
}

const levelArea = area<Level>()
  .y((edge) => edge.y)
  .x0((edge) => edge.low)
  .x1((edge) => edge.high)
  .digits(1);

export function levelBand(edges: readonly Level[]): string {
  return levelArea(edges as Level[]) ?? '';
}
