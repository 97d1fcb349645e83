import type { Point } from '../../core/geometry/outline.ts';

/** Points along a line through `points`, none further than `step` from the next. */
export function densified(points: readonly Point[], step: number): Point[] {
  return points.flatMap((to, i) => {
    const from = points[i - 1];
    if (!from) return [to];
    const parts = Math.max(1, Math.ceil(Math.hypot(to.x - from.x, to.y - from.y) / step));
    return Array.from({ length: parts }, (_, k) => {
      const share = (k + 1) / parts;
      return { x: from.x + (to.x - from.x) * share, y: from.y + (to.y - from.y) * share };
    });
  });
}

/** Where a closed polygon crosses a level line, in rising order: inside between each odd one and the next. */
function crossings(polygon: readonly Point[], axis: 'x' | 'y', level: number): number[] {
  const other = axis === 'y' ? 'x' : 'y';
  const found: number[] = [];
  let a = polygon.at(-1);
  for (const b of polygon) {
    if (a && a[axis] <= level !== b[axis] <= level) {
      found.push(a[other] + ((level - a[axis]) / (b[axis] - a[axis])) * (b[other] - a[other]));
    }
    a = b;
  }
  return found.toSorted((p, q) => p - q);
}

/** The stretches of a level line that lie inside a closed polygon. */
export function stretches(polygon: readonly Point[], axis: 'x' | 'y', level: number): (readonly [number, number])[] {
  const at = crossings(polygon, axis, level);
  return at.flatMap((end, i) => (i % 2 === 1 ? [[at[i - 1] ?? end, end] as const] : []));
}

/** Points on a square grid inside a closed polygon. */
export function gridInside(polygon: readonly Point[], step: number, from: number): Point[] {
  const ys = polygon.map(({ y }) => y);
  const points: Point[] = [];
  for (let y = Math.min(...ys) + step / 2; y < Math.max(...ys); y += step) {
    for (const [start, end] of stretches(polygon, 'y', y)) {
      for (let x = Math.max(start, from); x <= end; x += step) points.push({ x, y });
    }
  }
  return points;
}

/** A line through `points` with so much cut off at both ends. */
export function trimmed(points: readonly Point[], by: number): Point[] {
  return trimStart(trimStart(points, by).toReversed(), by).toReversed();
}

function trimStart(points: readonly Point[], by: number): Point[] {
  let left = by;
  for (let i = 1; i < points.length; i++) {
    const [a, b] = [points[i - 1], points[i]];
    if (!a || !b) break;
    const length = Math.hypot(b.x - a.x, b.y - a.y);
    if (length > left) {
      const share = left / length;
      return [{ x: a.x + (b.x - a.x) * share, y: a.y + (b.y - a.y) * share }, ...points.slice(i)];
    }
    left -= length;
  }
  return [];
}
