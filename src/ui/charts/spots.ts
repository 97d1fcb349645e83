/** Places for labels, and what they must keep clear of. */
import { clampInto, isInside, type Box, type Px } from './frame.ts';
import type { Ink } from './inkMap.ts';
import type { Spot } from './labels.ts';

/** Places along a straight line, about every 4 px. */
function along(from: Px, to: Px): readonly Px[] {
  const count = Math.max(1, Math.ceil(Math.hypot(to.x - from.x, to.y - from.y) / 4));
  return Array.from({ length: count + 1 }, (_, i) => ({
    x: from.x + ((to.x - from.x) * i) / count,
    y: from.y + ((to.y - from.y) * i) / count,
  }));
}

/** Every place that a drawn line passes through inside the plot, each with the same weight. */
export function inkOf(points: readonly Px[], box: Box, weight: number): readonly Ink[] {
  return points
    .flatMap((point, i) => {
      const before = points[i - 1];
      const reaches = before && (isInside(before, box) || isInside(point, box));
      return reaches ? along(before, point) : [];
    })
    .filter((point) => isInside(point, box))
    .map(({ x, y }) => ({ x, y, weight }));
}

/** The same of a level line across the whole paper. */
export function inkAcross(y: number, box: Box, weight: number): readonly Ink[] {
  const ends = [box.left, box.right].map((x) => ({ x, y }));
  return inkOf(ends, box, weight);
}

export function markBox({ x, y }: Px, reach: number): Box {
  return { left: x - reach, right: x + reach, top: y - reach, bottom: y + reach };
}

/** Places round a point: on the upper right first, where falling curves leave clear paper. */
export function around({ x, y }: Px, reach: number): readonly Spot[] {
  const aside = reach * 0.6;
  return [
    { x: x + reach, y: y - aside, anchor: 'start' },
    { x: x - reach, y: y + aside + 9, anchor: 'end' },
    { x: x + reach, y: y + aside + 9, anchor: 'start' },
    { x: x - reach, y: y - aside, anchor: 'end' },
    { x, y: y - reach, anchor: 'middle' },
    { x, y: y + reach + 10, anchor: 'middle' },
    { x: x + reach + 3, y: y + 4, anchor: 'start' },
    { x: x - reach - 3, y: y + 4, anchor: 'end' },
  ];
}

/** Places on or under a level line: at its left, at its right, then anywhere along it. */
export function alongLimit({ left, right }: Box, y: number): readonly Spot[] {
  const between = [0.15, 0.3, 0.45, 0.6, 0.75].map((share) => left + share * (right - left));
  return [-4, 12].flatMap((off): Spot[] => [
    { x: left + 8, y: y + off, anchor: 'start' },
    { x: right - 4, y: y + off, anchor: 'end' },
    ...between.map((x): Spot => ({ x, y: y + off, anchor: 'start' })),
  ]);
}

/** Places beside an arrowhead at the edge of the paper: in line with it, else a little under or over. */
export function besideEdge({ x, y }: Px): readonly Spot[] {
  const rows = [5, 9, 13, 1, -3, -8, -14, 20, 28];
  return rows.flatMap((by): Spot[] => [
    { x: x - 14, y: y + by, anchor: 'end' },
    { x: x + 14, y: y + by, anchor: 'start' },
  ]);
}

/** Places all over the paper with a leader to a point, the nearest first, for labels that find no room beside it. */
export function clearPaper(from: Px, gap: number, box: Box): readonly Spot[] {
  const across = 12;
  const down = 12;
  const spots: (Spot & { readonly distance: number })[] = [];
  for (let row = 0; row < down; row += 1) {
    for (let column = 0; column < across; column += 1) {
      const x = box.left + ((column + 0.5) * (box.right - box.left)) / across;
      const y = box.top + ((row + 0.8) * (box.bottom - box.top)) / down;
      const distance = Math.hypot(x - from.x, y - 4 - from.y);
      if (distance < gap + 18) continue;
      const share = gap / distance;
      const leader = { x: from.x + (x - from.x) * share, y: from.y + (y - 4 - from.y) * share };
      spots.push({ x, y, anchor: x >= from.x ? 'start' : 'end', leader, distance });
    }
  }
  return spots.toSorted((one, other) => one.distance - other.distance);
}

/** Heights for labels at the ends of curves, in order from the top, at least `gap` apart and above the foot. */
export function spreadEnds(heights: readonly number[], gap: number, foot: number): readonly number[] {
  const spread: number[] = [];
  for (const height of heights.toReversed()) {
    const below = spread.at(-1);
    spread.push(below === undefined ? Math.min(height, foot) : Math.min(height, below - gap));
  }
  return spread.toReversed();
}

/** Where the arrowhead stands for a point outside the paper, and which way it looks. */
export interface OffChart {
  readonly at: Px;
  readonly turnDeg: number;
}

const HEAD_INSET = 7;

/** For a point outside the paper: the edge it left by; nothing for a point inside. */
export function offChart(at: Px, box: Box): OffChart | undefined {
  if (isInside(at, box)) return undefined;
  const edge = clampInto(at, box, HEAD_INSET);
  const out = { x: at.x - edge.x, y: at.y - edge.y };
  const sideways = Math.abs(out.x) >= Math.abs(out.y);
  const turnDeg = sideways ? (out.x > 0 ? 0 : 180) : out.y > 0 ? 90 : -90;
  return { at: edge, turnDeg };
}
