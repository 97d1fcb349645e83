/** A plot of a demonstration as data: axes, curves and lettered points, in what the paper counts in. */
import type { Letter } from '../../../core/lesson/demos/demo.ts';
import type { Span } from '../../charts/frame.ts';
import type { WayMark } from '../../charts/solved/marks.ts';
import type { Tick } from '../../charts/ticks.ts';

export interface PlacedPoint {
  readonly x: number;
  readonly y: number;
}

export interface PlotAxis {
  readonly span: Span;
  readonly ticks: readonly Tick[];
}

export interface PlotPlan {
  readonly x: PlotAxis;
  readonly y: PlotAxis;
  readonly curves: readonly {
    readonly key: string;
    readonly points: readonly PlacedPoint[];
    readonly isOwn: boolean;
    readonly isGuided?: boolean;
  }[];
  readonly bands: readonly { readonly name: 'few' | 'set'; readonly from: number; readonly to: number }[];
  readonly points: readonly (PlacedPoint & { readonly letter: Letter; readonly text: string })[];
  /** Words at a place of a curve, where they find room. */
  readonly names?: readonly (PlacedPoint & { readonly key: string; readonly text: string })[];
  readonly balls: readonly (PlacedPoint & Pick<WayMark, 'kind'>)[];
  /** What is read at a place across: its words, and its height. */
  readonly read: (x: number) => { readonly text: string; readonly height?: number };
  readonly grid: { readonly step: number; readonly fine: number };
}

/** Height of a line through points at a place between two of them. */
export function heightAt(points: readonly PlacedPoint[], x: number): number | undefined {
  const next = points.findIndex((point) => point.x >= x - 1e-9);
  const [before, after] = [points[next - 1], points[next]];
  if (!after) return undefined;
  if (!before) return after.x - x < 1e-6 ? after.y : undefined;
  return before.y + ((x - before.x) / (after.x - before.x)) * (after.y - before.y);
}
