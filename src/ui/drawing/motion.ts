import type { Bounds } from '../../core/geometry/flatten.ts';
import type { Point } from '../../core/geometry/outline.ts';
import { rollPoint } from '../../core/geometry/roll.ts';
import { asRad, type Mm } from '../../core/units.ts';
import type { Figure } from './figure.ts';
import { densified, gridInside } from './polygon.ts';

/** Where a point goes when the joint is bent by a fraction of its full travel; below 0 the other way. */
export function bentPoint(figure: Figure, point: Point, fraction: number): Point {
  return rollPoint(point, figure.length, asRad(figure.angle * fraction));
}

/**
 * Where many points go at once. The pad is rigid, so its points are carried by where its root and one point beyond
 * have gone; only points of the leaf are rolled one by one.
 */
export function bentPoints(figure: Figure, points: readonly Point[], fraction: number): Point[] {
  const { length } = figure;
  const root = bentPoint(figure, { x: length, y: 0 }, fraction);
  const beyond = bentPoint(figure, { x: length + 1, y: 0 }, fraction);
  const [ax, ay] = [beyond.x - root.x, beyond.y - root.y];
  return points.map((point) => {
    if (point.x <= length) return bentPoint(figure, point, fraction);
    const out = point.x - length;
    return { x: root.x + out * ax - point.y * ay, y: root.y + out * ay + point.y * ax };
  });
}

/** Points on the edge and inside of all that moves, close enough together that no word slips through between them. */
export function movingPoints({ points, box, length }: Figure, step: Mm, inside: Mm): readonly Point[] {
  const closed = [...points, ...points.slice(0, 1)];
  const edge = densified(closed, step).filter(({ x }) => x > 0);
  // The far face of the moving pad is what sweeps furthest; its middle is on the centre line.
  return [...thinned(edge, step), ...gridInside(points, inside, length), { x: box.right, y: 0 }];
}

/** Arcs come in many short chords: points that are nearer than half a step to the last one kept say nothing new. */
function thinned(points: readonly Point[], step: Mm): Point[] {
  const kept: Point[] = [];
  for (const point of points) {
    const last = kept.at(-1);
    if (!last || Math.hypot(point.x - last.x, point.y - last.y) > step / 2) kept.push(point);
  }
  return kept;
}

/** Fractions of the travel at which to look: as many as keep the far end from moving more than `step` between two. */
export function travelSteps({ angle, box }: Figure, step: Mm): readonly number[] {
  const steps = Math.min(60, Math.max(6, Math.ceil((angle * (box.right + box.top)) / step)));
  return Array.from({ length: steps + 1 }, (_, i) => i / steps);
}

const swept = new WeakMap<Figure, { readonly drawn: Bounds; readonly oneWay: Bounds }>();
/** The far corners of a pad move by so much between two looks, a share of their distance; what bulges out is a hundredth of that. */
const SWEPT_STEP = 0.1;

/** The rectangle that holds the joint at rest and everywhere it goes [mm]; with the other way too where it is drawn. */
export function sweptBox(figure: Figure, ways: 'drawn' | 'oneWay' = 'drawn'): Bounds {
  const known = swept.get(figure);
  if (known) return known[ways];
  const corners = thinned(
    figure.points.filter(({ x }) => x > 0),
    figure.box.right / 50,
  );
  const there = travelSteps(figure, figure.box.right * SWEPT_STEP);
  const boxOf = (fractions: readonly number[]) => {
    const all = fractions.flatMap((fraction) => bentPoints(figure, corners, fraction));
    const { left, right, bottom, top } = figure.box;
    return all.reduce(
      (box, { x, y }) => ({
        left: Math.min(box.left, x),
        right: Math.max(box.right, x),
        bottom: Math.min(box.bottom, y),
        top: Math.max(box.top, y),
      }),
      { left, right, bottom, top },
    );
  };
  const oneWay = boxOf(there);
  const both = {
    drawn: figure.otherEnd < 0 ? boxOf([...there, ...there.map((f) => f * figure.otherEnd)]) : oneWay,
    oneWay,
  };
  swept.set(figure, both);
  return both[ways];
}
