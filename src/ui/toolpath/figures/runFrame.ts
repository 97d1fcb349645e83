/** A thin section turned so that it runs across the page from left to right, whatever way it lies on the plate [mm, y up]. */
import type { Point } from '../../../core/geometry/outline.ts';
import type { Mm } from '../../../core/units.ts';

export interface RunFrame {
  /** From the plate to the page: the run begins at the origin, its chord lies along x. */
  readonly into: (point: Point) => Point;
  /** A place so far along the run and so far off it, at its left, on the page. */
  readonly at: (along: Mm, off: Mm) => Point;
  /** Corners of the run on the page. */
  readonly run: readonly Point[];
  readonly length: Mm;
  /** True where the way along the run and the way across the page are not the same. */
  readonly isCurved: boolean;
}

/** A run that is this much longer than its chord is drawn as curved [-]. */
const STRAIGHT = 1.002;

interface Leg {
  readonly from: Point;
  /** Of length 1. */
  readonly along: Point;
  readonly start: Mm;
  readonly length: Mm;
}

function legsOf(run: readonly Point[]): readonly Leg[] {
  const legs: Leg[] = [];
  let start = 0;
  for (const [i, to] of run.entries()) {
    const from = run[i - 1];
    const length = from ? Math.hypot(to.x - from.x, to.y - from.y) : 0;
    if (!from || length === 0) continue;
    legs.push({ from, along: { x: (to.x - from.x) / length, y: (to.y - from.y) / length }, start, length });
    start += length;
  }
  return legs;
}

export function runFrame(run: readonly Point[]): RunFrame {
  const [first = { x: 0, y: 0 }, last = first] = [run[0], run.at(-1)];
  const chord = Math.hypot(last.x - first.x, last.y - first.y);
  // A run that comes back to its start has no chord; it stays as it lies on the plate.
  const u = chord > 1e-6 ? { x: (last.x - first.x) / chord, y: (last.y - first.y) / chord } : { x: 1, y: 0 };
  const into = ({ x, y }: Point) => {
    const [dx, dy] = [x - first.x, y - first.y];
    return { x: dx * u.x + dy * u.y, y: dy * u.x - dx * u.y };
  };
  const onPage = run.map(into);
  const legs = legsOf(onPage);
  const end = legs.at(-1);
  const length = end ? end.start + end.length : 0;
  const at = (along: Mm, off: Mm) => {
    const leg = legs.findLast(({ start }) => start <= along) ?? legs[0];
    if (!leg) return { x: along, y: off };
    const { from, along: t, start } = leg;
    return { x: from.x + (along - start) * t.x - off * t.y, y: from.y + (along - start) * t.y + off * t.x };
  };
  return { into, at, run: onPage, length, isCurved: length > STRAIGHT * chord };
}
