/** Where the paper ends and the plastic goes on: a wavy edge, drawn only where something is cut off by it [px]. */
import type { Point } from '../../../core/geometry/outline.ts';
import type { Box } from '../../drawing/lettering.ts';
import { through } from '../../drawing/sheet.ts';
import type { LaidStroke } from './laidBeads.ts';

type Interval = readonly [from: number, to: number];

interface Side {
  readonly axis: 'x' | 'y';
  readonly at: number;
  readonly from: number;
  readonly to: number;
}

export interface BreakEdges {
  /** What lies within is drawn. */
  readonly clip: string;
  /** The edges themselves. */
  readonly d: string;
}

const WAVE = 1.7;
const EVERY = 3;
/** Cuts nearer than this are one edge [px]. */
const JOINED = 12;

const waved = (along: number) => WAVE * Math.sin(along / 6);
const other = { x: 'y', y: 'x' } as const;

function sidesOf({ x, y, width, height }: Box): readonly Side[] {
  const [right, bottom] = [x + width, y + height];
  return [
    { axis: 'y', at: y, from: x, to: right },
    { axis: 'x', at: right, from: y, to: bottom },
    { axis: 'y', at: bottom, from: right, to: x },
    { axis: 'x', at: x, from: bottom, to: y },
  ];
}

function edge({ axis, at }: Side, from: number, to: number): readonly Point[] {
  const count = Math.max(1, Math.ceil(Math.abs(to - from) / EVERY));
  return Array.from({ length: count + 1 }, (_, i) => {
    const along = from + ((to - from) * i) / count;
    return axis === 'y' ? { x: along, y: at + waved(along) } : { x: at + waved(along), y: along };
  });
}

/** Where a stroke is cut by a side. */
function* cutsOf({ points, width }: LaidStroke, { axis, at }: Side): Generator<Interval> {
  const along = other[axis];
  const half = width / 2;
  for (const [i, b] of points.entries()) {
    const a = points[i - 1];
    if (!a) continue;
    const [p, q] = [a[axis] - at, b[axis] - at];
    if (Math.abs(p) < half && Math.abs(q) < half) {
      yield [Math.min(a[along], b[along]) - half, Math.max(a[along], b[along]) + half];
    } else if (p < 0 !== q < 0) {
      const place = a[along] + ((b[along] - a[along]) * p) / (p - q);
      const slant = Math.hypot(b.x - a.x, b.y - a.y) / Math.max(1e-9, Math.abs(q - p));
      const reach = half * Math.min(3, slant);
      yield [place - reach, place + reach];
    }
  }
}

function joined(cuts: readonly Interval[], low: number, high: number): readonly Interval[] {
  const found: [number, number][] = [];
  for (const [from, to] of cuts.toSorted((a, b) => a[0] - b[0])) {
    const [a, b] = [Math.max(low, from), Math.min(high, to)];
    if (b <= a) continue;
    const last = found.at(-1);
    if (last && a - last[1] < JOINED) last[1] = Math.max(last[1], b);
    else found.push([a, b]);
  }
  return found;
}

/** The edges of a box in which strokes are shown. */
export function breakEdges(box: Box, strokes: readonly LaidStroke[]): BreakEdges {
  const sides = sidesOf(box);
  const lines = sides.flatMap((side) => {
    const cuts = strokes.flatMap((stroke) => [...cutsOf(stroke, side)]);
    const [low, high] = [Math.min(side.from, side.to), Math.max(side.from, side.to)];
    return joined(cuts, low, high).map(([from, to]) => through(edge(side, from, to)));
  });
  return {
    clip: through(
      sides.flatMap((side) => edge(side, side.from, side.to)),
      true,
    ),
    d: lines.join(''),
  };
}
