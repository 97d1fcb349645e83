/**
 * Words on the plot instead of a legend. Each label brings the places where it would be understood, best first; it
 * takes the first that is clear, else the one that covers least. What matters most is placed first.
 */
import { clampInto, isInside, type Box, type Px } from './frame.ts';
import { lettersWidth } from './letters.ts';

export type Anchor = 'start' | 'middle' | 'end';

/** A place for a label; with `leader`, a thin line runs from there to the words. */
export interface Spot extends Px {
  readonly anchor: Anchor;
  readonly leader?: Px;
}

export interface LabelWish {
  readonly key: string;
  readonly text: string;
  readonly look: 'ink' | 'quiet' | 'bold' | 'pencil';
  readonly spots: readonly Spot[];
  /** Left out rather than laid over another label. */
  readonly spare?: boolean;
}

export interface PlacedLabel extends Omit<LabelWish, 'spots' | 'spare'>, Spot {}

/** Letter size of the looks [px]: what governs is a size larger. */
export const LETTER: Readonly<Record<LabelWish['look'], number>> = { ink: 12, quiet: 12, bold: 12, pencil: 13 };

const PADDING = 3;
/** Costs of covering something; a label over a label is worse than anything else. */
const OVER_LABEL = 1000;
const OVER_LINE = 12;
const OVER_EDGE = 3;
const LEADER_OVER_LABEL = 300;
/** Keeps the order of the wishes where nothing else speaks. */
const LATER_WISH = 1;

/** The area a label covers; the baseline lies at `y`. */
export function labelBox(text: string, spot: Spot, size: number): Box {
  const width = lettersWidth(text, size);
  const left = spot.anchor === 'start' ? spot.x : spot.anchor === 'end' ? spot.x - width : spot.x - width / 2;
  return {
    left: left - PADDING,
    right: left + width + PADDING,
    top: spot.y - size * 0.78 - PADDING / 2,
    bottom: spot.y + size * 0.26 + PADDING / 2,
  };
}

function overlap(a: Box, b: Box): boolean {
  return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}

function within(inner: Box, outer: Box): boolean {
  return (
    inner.left >= outer.left && inner.right <= outer.right && inner.top >= outer.top && inner.bottom <= outer.bottom
  );
}

/** Places along a straight line, about every 5 px. */
export function along(from: Px, to: Px): readonly Px[] {
  const count = Math.max(1, Math.ceil(Math.hypot(to.x - from.x, to.y - from.y) / 5));
  return Array.from({ length: count + 1 }, (_, i) => ({
    x: from.x + ((to.x - from.x) * i) / count,
    y: from.y + ((to.y - from.y) * i) / count,
  }));
}

/** Every place that a drawn line passes through inside the plot. */
export function alongAll(points: readonly Px[], box: Box): readonly Px[] {
  return points
    .flatMap((point, i) => (i === 0 ? [] : along(points[i - 1] as Px, point)))
    .filter((point) => isInside(point, box));
}

/** Round a point, so that no label is laid over its mark. */
export function markOf(at: Px, reach: number): readonly Px[] {
  return [-1, 0, 1].flatMap((i) => [-1, 0, 1].map((j) => ({ x: at.x + i * reach, y: at.y + j * reach })));
}

/** Places that are drawn on: lines and points, which no label should cover, and edges of shaded areas. */
export interface Drawn {
  readonly lines: readonly Px[];
  readonly edges: readonly Px[];
}

interface Taken extends Drawn {
  readonly boxes: readonly Box[];
}

function cost(box: Box, spot: Spot, taken: Taken): number {
  const covered = (points: readonly Px[]) => points.reduce((sum, point) => sum + (isInside(point, box) ? 1 : 0), 0);
  const labels = taken.boxes.filter((other) => overlap(box, other)).length;
  const drawn = labels * OVER_LABEL + covered(taken.lines) * OVER_LINE + covered(taken.edges) * OVER_EDGE;
  if (!spot.leader) return drawn;
  const leader = along(spot.leader, spot);
  const crossed = taken.boxes.filter((other) => leader.some((point) => isInside(point, other))).length;
  return drawn + crossed * LEADER_OVER_LABEL;
}

/**
 * Places labels in the order given, so that what matters most has the first choice.
 *
 * @param wishes - labels with their places, most important first
 * @param drawn - places that lines, points and edges pass through [px]
 * @param box - the plotting area; no label leaves it
 */
export function placeLabels(wishes: readonly LabelWish[], drawn: Drawn, box: Box): readonly PlacedLabel[] {
  let taken: Taken = { boxes: [], ...drawn };
  const placed: PlacedLabel[] = [];
  for (const { spots, spare, ...label } of wishes) {
    const tried = spots.flatMap((spot, i) => {
      const area = labelBox(label.text, spot, LETTER[label.look]);
      return within(area, box) ? [{ spot, area, cost: cost(area, spot, taken) + i * LATER_WISH }] : [];
    });
    if (tried.length === 0) continue;
    const best = tried.reduce((a, b) => (b.cost < a.cost ? b : a));
    if (spare && best.cost >= OVER_LABEL) continue;
    placed.push({ ...label, ...best.spot });
    const leader = best.spot.leader ? along(best.spot.leader, best.spot) : [];
    taken = { ...taken, boxes: [...taken.boxes, best.area], lines: [...taken.lines, ...leader] };
  }
  return placed;
}

/** Places round a point: beside it first on the upper right, where falling curves leave clear paper. */
export function around(at: Px, reach: number): readonly Spot[] {
  const { x, y } = at;
  return [
    { x: x + reach, y: y - reach * 0.6, anchor: 'start' },
    { x: x - reach, y: y + reach * 0.6 + 9, anchor: 'end' },
    { x: x + reach, y: y + reach * 0.6 + 9, anchor: 'start' },
    { x: x - reach, y: y - reach * 0.6, anchor: 'end' },
    { x, y: y - reach, anchor: 'middle' },
    { x, y: y + reach + 10, anchor: 'middle' },
    { x: x + reach + 3, y: y + 4, anchor: 'start' },
    { x: x - reach - 3, y: y + 4, anchor: 'end' },
  ];
}

/** Places all over the paper with a leader to a point, the nearest first, for labels that find no room beside it. */
export function clearPaper(from: Px, gap: number, box: Box): readonly Spot[] {
  const columns = 12;
  const rows = 12;
  const spots: Spot[] = [];
  for (let row = 0; row < rows; row += 1) {
    for (let column = 0; column < columns; column += 1) {
      const x = box.left + ((column + 0.5) * (box.right - box.left)) / columns;
      const y = box.top + ((row + 0.8) * (box.bottom - box.top)) / rows;
      const distance = Math.hypot(x - from.x, y - from.y);
      if (distance < gap + 18) continue;
      const leader = { x: from.x + ((x - from.x) * gap) / distance, y: from.y + ((y - 4 - from.y) * gap) / distance };
      spots.push({ x, y, anchor: x >= from.x ? 'start' : 'end', leader });
    }
  }
  return spots.toSorted((a, b) => Math.hypot(a.x - from.x, a.y - from.y) - Math.hypot(b.x - from.x, b.y - from.y));
}

/** Heights for labels at the ends of curves, in order from the top, at least `gap` apart and inside the plot. */
export function spreadEnds(heights: readonly number[], gap: number, box: Box): readonly number[] {
  const spread: number[] = [];
  for (const height of heights.toReversed()) {
    const below = spread.at(-1);
    spread.push(below === undefined ? Math.min(height, box.bottom) : Math.min(height, below - gap));
  }
  return spread.toReversed();
}

/** Where the arrowhead stands for a point outside the paper, and which way it looks. */
export interface OffChart {
  readonly at: Px;
  readonly turnDeg: number;
}

/** For a point outside the paper: the edge it left by; nothing for a point inside. */
export function offChart(at: Px, box: Box): OffChart | undefined {
  if (isInside(at, box)) return undefined;
  const edge = clampInto(at, box, 7);
  const out = { x: at.x - edge.x, y: at.y - edge.y };
  const sideways = Math.abs(out.x) >= Math.abs(out.y);
  const turnDeg = sideways ? (out.x > 0 ? 0 : 180) : out.y > 0 ? 90 : -90;
  return { at: edge, turnDeg };
}
