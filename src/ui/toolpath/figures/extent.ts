import type { Point } from '../../../core/geometry/outline.ts';
import type { Mm } from '../../../core/units.ts';

/** An upright box on the page, y up [mm]. */
export interface Extent {
  readonly left: Mm;
  readonly right: Mm;
  readonly low: Mm;
  readonly high: Mm;
}

/** The box round some points; nothing of none. */
export function extentOf(points: Iterable<Point>): Extent | undefined {
  let [left, right, low, high] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const { x, y } of points) {
    left = Math.min(left, x);
    right = Math.max(right, x);
    low = Math.min(low, y);
    high = Math.max(high, y);
  }
  return left <= right ? { left, right, low, high } : undefined;
}

/** What both have; a box that holds nothing comes out with its sides turned round. */
export function commonExtent(a: Extent, b: Extent): Extent {
  return {
    left: Math.max(a.left, b.left),
    right: Math.min(a.right, b.right),
    low: Math.max(a.low, b.low),
    high: Math.min(a.high, b.high),
  };
}

/** The same with so much more on every side [mm]. */
export function wider({ left, right, low, high }: Extent, across: Mm, up = across): Extent {
  return { left: left - across, right: right + across, low: low - up, high: high + up };
}
