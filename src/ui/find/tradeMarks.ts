/** What Fig. 1 draws: a ring or a tick for each design, the stair of the surest, and the numbers beside the rings. */
import { SURE } from '../../core/find/front.ts';
import { placeLabels, type LabelWish, type PlacedLabel, type Spot } from '../charts/labels.ts';
import type { Box, Px } from '../charts/frame.ts';
import { around, inkOf, markBox } from '../charts/spots.ts';
import type { LengthUnit } from '../text/numbers.ts';
import { roomWanted, wantedChance } from '../text/foundText.ts';
import { isThrough, type Brush, type Group, type Shown } from './designs.ts';
import { heightOf, type TradeFrame } from './tradeFrame.ts';

export interface Mark extends Px, Shown {
  readonly radius: number;
  readonly isBest: boolean;
  /** Surer than the axis tells, and not of the best: a tick on its edge. */
  readonly isTick: boolean;
  readonly isThrough: boolean;
  /** Place in the list, of the first of a group. */
  readonly rank: number | undefined;
}

export function marksOf(
  groups: readonly Group[],
  all: readonly Shown[],
  frame: TradeFrame,
  radiusOf: (effort: number) => number,
  brush: Brush,
): readonly Mark[] {
  const ranks = new Map(groups.map(({ first, rank }) => [first.key, rank]));
  return all.map(({ key, design }) => {
    const { figures, isBest } = design;
    return {
      key,
      design,
      x: frame.x(figures.size),
      y: heightOf(frame, figures.chance),
      radius: radiusOf(figures.effort),
      isBest,
      isTick: figures.chance > SURE && !isBest,
      isThrough: isThrough(figures, brush),
      rank: ranks.get(key),
    };
  });
}

/**
 * The heavy rings, joined as they trade: with a larger room comes a step up. Of equals one stands for all.
 */
export function stairOf(marks: readonly Mark[]): readonly Px[] {
  const heavy = marks.filter(({ isBest }) => isBest).toSorted((a, b) => a.x - b.x || a.y - b.y);
  const stair: Px[] = [];
  for (const { x, y } of heavy) {
    const last = stair.at(-1);
    if (last === undefined) stair.push({ x, y });
    else if (y < last.y - 0.01) stair.push({ x, y: last.y }, { x, y });
  }
  return stair;
}

export function pathOf(points: readonly Px[]): string {
  return points.length < 2 ? '' : `M${points.map(({ x, y }) => `${x.toFixed(1)} ${y.toFixed(1)}`).join('L')}`;
}

/** The design nearest to a pointer, if it is near at all. */
export function nearestMark(marks: readonly Mark[], to: Px): Mark | undefined {
  const reach = 14;
  const far = (mark: Mark) => Math.hypot(mark.x - to.x, mark.y - to.y);
  const near = marks.filter((mark) => mark.isThrough && far(mark) <= Math.max(reach, mark.radius));
  return near.toSorted((a, b) => far(a) - far(b))[0];
}

interface Words {
  readonly wantedChance: number;
  readonly unit: LengthUnit;
}

/** So many numbers stand beside rings: the list goes on where they end. */
const MOST_NUMBERS = 16;

function fixedWishes({ box, x, room, isRoomFar }: TradeFrame, chanceAt: number, words: Words): readonly LabelWish[] {
  const at = isRoomFar ? box.right : x(room);
  const rows = [8, 36].map((up) => box.bottom - up);
  const roomSpots = rows.flatMap((y): readonly Spot[] =>
    isRoomFar
      ? [{ x: box.right - 4, y, anchor: 'end' }]
      : [
          { x: at + 4, y, anchor: 'start' },
          { x: at - 5, y, anchor: 'end' },
        ],
  );
  return [
    {
      key: 'wanted',
      text: wantedChance(words.wantedChance),
      look: 'pencil',
      spots: [
        { x: box.left + 8, y: chanceAt + 14, anchor: 'start' },
        { x: box.left + 8, y: chanceAt - 6, anchor: 'start' },
      ],
    },
    { key: 'room', text: roomWanted(room, words.unit, isRoomFar), look: 'pencil', spots: roomSpots },
  ];
}

/** Where the key of the rings stands: under what is wanted, where no ring comes. */
function keyBox({ box }: TradeFrame): Box {
  return { left: box.left, right: box.left + KEY.width, top: box.bottom - KEY.height, bottom: box.bottom };
}

/** Room of three rings with their efforts [px]. */
const KEY = { width: 178, height: 30 } as const;

/** The words of the plot, and the numbers of the list beside their rings as far as there is room. */
export function tradeLabels(
  marks: readonly Mark[],
  stair: readonly Px[],
  frame: TradeFrame,
  words: Words,
): readonly PlacedLabel[] {
  const numbered = marks
    .filter(({ rank, isThrough: isSeen, isTick }) => rank !== undefined && rank <= MOST_NUMBERS && isSeen && !isTick)
    .toSorted((a, b) => (a.rank ?? 0) - (b.rank ?? 0));
  const numbers = numbered.map((mark): LabelWish => ({
    key: mark.key,
    text: String(mark.rank),
    look: mark.isBest ? 'bold' : 'ink',
    spots: around(mark, mark.radius + 4),
    spare: true,
  }));
  const drawn = {
    inks: inkOf(stair, frame.box, 12),
    marks: [
      keyBox(frame),
      ...marks.filter(({ isThrough: isSeen }) => isSeen).map((mark) => markBox(mark, mark.radius)),
    ],
  };
  const chanceAt = heightOf(frame, words.wantedChance);
  return placeLabels([...fixedWishes(frame, chanceAt, words), ...numbers], drawn, frame.box);
}
