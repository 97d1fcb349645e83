/**
 * Words on the plot instead of a legend. Each label brings the places where it would be understood, best first; it
 * takes the first that is clear, else the one that covers least. What matters most is placed first.
 */
import type { Box, Px } from './frame.ts';
import { inkMap, type Ink } from './inkMap.ts';
import { lettersWidth } from './letters.ts';

type Anchor = 'start' | 'middle' | 'end';

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
  /** Places to look at only when none of the others is clear. */
  readonly far?: () => readonly Spot[];
  /** Left out rather than laid over another label. */
  readonly spare?: boolean;
}

export interface PlacedLabel extends Pick<LabelWish, 'key' | 'text' | 'look'>, Spot {
  /** Whether something drawn runs under the words, so that they need a halo. */
  readonly covers: boolean;
}

/** What a label must respect: drawn lines, and areas that are as good as a label. */
export interface Drawn {
  readonly inks: readonly Ink[];
  readonly marks: readonly Box[];
}

/** Letter size of the looks [px]: what governs is a size larger. */
const LETTER: Readonly<Record<LabelWish['look'], number>> = { ink: 12, quiet: 12, bold: 12, pencil: 13 };

const PADDING = 3;
/** Costs of covering something; a label over a label or a mark is worse than anything else. */
const OVER_LABEL = 1000;
const LEADER_OVER_LABEL = 300;
/** Weights of a place every few pixels of a line, and of the edge of a shaded area. */
export const LINE_WEIGHT = 12;
export const EDGE_WEIGHT = 3;

/** The area that words so wide cover; the baseline lies at `y`. */
export function labelBox(width: number, spot: Spot, size: number): Box {
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

/** Whether a straight line passes through an area: what is left of it between the area's four sides. */
export function crosses(from: Px, to: Px, area: Box): boolean {
  let [enter, leave] = [0, 1];
  const sides: readonly [at: number, by: number, low: number, high: number][] = [
    [from.x, to.x - from.x, area.left, area.right],
    [from.y, to.y - from.y, area.top, area.bottom],
  ];
  for (const [at, by, low, high] of sides) {
    if (by === 0 && (at < low || at > high)) return false;
    if (by === 0) continue;
    const [first, last] = by > 0 ? [(low - at) / by, (high - at) / by] : [(high - at) / by, (low - at) / by];
    [enter, leave] = [Math.max(enter, first), Math.min(leave, last)];
  }
  return enter < leave;
}

interface Leader {
  readonly from: Px;
  readonly to: Px;
}

interface Taken {
  readonly boxes: Box[];
  readonly leaders: Leader[];
  readonly ink: (area: Box) => number;
}

function cost(area: Box, spot: Spot, { boxes, leaders, ink }: Taken): number {
  const labels = boxes.filter((other) => overlap(area, other)).length;
  const over = leaders.filter(({ from, to }) => crosses(from, to, area)).length;
  const { leader } = spot;
  const under = leader ? boxes.slice(1).filter((other) => crosses(leader, spot, other)).length : 0;
  return labels * OVER_LABEL + ink(area) + (over + under) * LEADER_OVER_LABEL;
}

interface Tried {
  readonly spot: Spot;
  readonly area: Box;
  readonly cost: number;
}

function tried({ text, look }: LabelWish, spots: readonly Spot[], taken: Taken, box: Box): readonly Tried[] {
  const width = lettersWidth(text, LETTER[look]);
  return spots.flatMap((spot, i) => {
    const area = labelBox(width, spot, LETTER[look]);
    // A later wish costs a little, which keeps the order where nothing else speaks.
    return within(area, box) ? [{ spot, area, cost: cost(area, spot, taken) + i }] : [];
  });
}

function cheapest(all: readonly Tried[]): Tried | undefined {
  return all.reduce<Tried | undefined>(
    (best, one) => (best === undefined || one.cost < best.cost ? one : best),
    undefined,
  );
}

function bestSpot(wish: LabelWish, taken: Taken, box: Box): Tried | undefined {
  const near = cheapest(tried(wish, wish.spots, taken, box));
  if (!wish.far || (near && near.cost < LINE_WEIGHT)) return near;
  const far = cheapest(tried(wish, wish.far(), taken, box));
  return near && far && near.cost <= far.cost ? near : (far ?? near);
}

/**
 * Places labels in the order given, so that what matters most has the first choice.
 *
 * @param wishes - labels with their places, most important first
 * @param drawn - what is drawn already [px]
 * @param box - the plotting area; no label leaves it
 */
export function placeLabels(wishes: readonly LabelWish[], drawn: Drawn, box: Box): readonly PlacedLabel[] {
  const taken: Taken = { boxes: [...drawn.marks], leaders: [], ink: inkMap(drawn.inks, box) };
  const placed: PlacedLabel[] = [];
  for (const wish of wishes) {
    const best = bestSpot(wish, taken, box);
    if (!best || (wish.spare && best.cost >= OVER_LABEL)) continue;
    const covers = taken.ink(best.area) > 0;
    placed.push({ key: wish.key, text: wish.text, look: wish.look, covers, ...best.spot });
    taken.boxes.push(best.area);
    if (best.spot.leader) taken.leaders.push({ from: best.spot.leader, to: best.spot });
  }
  return placed;
}
