/** The words on effort against movement of a solved joint, and where they find room. */
import { EFFORT_UNIT } from '../../text/amountText.ts';
import { OFF_THE_CHART, staysBentPast as staysBentText } from '../../text/chartText.ts';
import type { LengthUnit } from '../../text/numbers.ts';
import {
  markText,
  nowText,
  ONLY_GUIDED,
  TOUCHES,
  PULLS_ITSELF,
  UNDER_A_WEIGHT,
  wantedAtMost,
} from '../../text/solvedChartText.ts';
import { isInside, type Frame, type Px, type Span } from '../frame.ts';
import { LINE_WEIGHT, placeLabels, type LabelWish, type PlacedLabel, type Spot } from '../labels.ts';
import { alongLimit, around, besideEdge, clearPaper, inkAcross, inkOf, markBox, offChart } from '../spots.ts';
import type { WayMark } from './marks.ts';
import { staysBentPast, wantedLevels, type Answered, type WayPoint } from './way.ts';

const CLEAR_OF_JOINT = 15;
/** Half the room that the mark of the joint, and one of a ball, takes [px]. */
const MARK = 10;
const BALL = 7;

export interface EffortWayWords {
  readonly frame: Frame;
  readonly a: Answered;
  readonly now: WayPoint;
  readonly at: Px;
  /** The curve and the simple formula's as they are drawn [px]. */
  readonly all: readonly Px[];
  readonly form: readonly Px[];
  readonly marks: readonly (WayMark & Px)[];
  readonly touching: readonly Span[];
  readonly unit: LengthUnit;
  readonly narrow: boolean;
  readonly x: (amount: number) => number;
}

export function effortWayLabels(words: EffortWayWords): readonly PlacedLabel[] {
  const { frame, a, at, all, form, marks, x } = words;
  const { box } = frame;
  const { measure } = a.drive;
  const stands = offChart(at, box)?.at ?? at;
  const inks = [
    ...inkOf(all, box, LINE_WEIGHT),
    ...inkOf(form, box, LINE_WEIGHT / 2),
    ...inkAcross(frame.y(0), box, LINE_WEIGHT),
    ...inkOf(
      [box.top, box.bottom].map((y) => ({ x: x(0), y })),
      box,
      LINE_WEIGHT,
    ),
    ...marks.flatMap(({ jump, x: from, y }) =>
      jump === undefined
        ? []
        : inkOf(
            [
              { x: from, y },
              { x: jump === 'end' ? box.right : x(jump), y },
            ],
            box,
            LINE_WEIGHT,
          ),
    ),
    ...wantedLevels(a).flatMap((effort) => inkAcross(frame.y(effort), box, LINE_WEIGHT)),
  ];
  const taken = [markBox(stands, MARK), ...marks.map((mark) => markBox(mark, BALL))];
  const unit: LabelWish = {
    key: 'unit',
    text: EFFORT_UNIT[measure],
    look: 'quiet',
    spots: [{ x: Math.max(box.left, x(0)) + 8, y: box.top + 12, anchor: 'start' }],
  };
  const wishes = [unit, nowWish(words, stands), ...markWishes(words), ...wantedWish(words), ...quietWishes(words)];
  return placeLabels(wishes, { inks, marks: taken }, box);
}

function nowWish({ a, now, at, frame, unit }: EffortWayWords, stands: Px): LabelWish {
  const text = nowText(now.typical, now.amount, a.drive.measure, unit);
  if (!isInside(at, frame.box)) {
    return { key: 'bent', text: `${text}, ${OFF_THE_CHART}`, look: 'pencil', spots: besideEdge(stands) };
  }
  const far = () => clearPaper(stands, 9, frame.box);
  return { key: 'bent', text, look: 'pencil', spots: around(stands, CLEAR_OF_JOINT), far };
}

/** What is marked on the way, but not the start: that it rests as printed needs no words. */
function markWishes({ marks, a, frame, unit }: EffortWayWords): readonly LabelWish[] {
  return marks
    .filter(({ amount }) => amount !== 0)
    .map(({ kind, amount, effort, x, y }, i) => {
      const at = { x, y };
      const far = () => clearPaper(at, BALL, frame.box);
      const text = markText(kind, amount, effort, a.drive.measure, unit);
      return { key: `${kind}${i}`, text, look: 'ink', spots: around(at, BALL + 3), far };
    });
}

function wantedWish({ a, frame: { box, y } }: EffortWayWords): readonly LabelWish[] {
  const { effortAtMost } = a.joint.movement;
  if (effortAtMost === undefined) return [];
  const height = y(effortAtMost);
  const text = wantedAtMost(effortAtMost, a.drive.measure);
  const inside = isInside({ x: box.left, y: height }, box);
  const spots: readonly Spot[] = inside
    ? alongLimit(box, height).toReversed()
    : [{ x: box.right - 4, y: box.top + 12, anchor: 'end' }];
  return [{ key: 'wanted', text: inside ? text : `${text}, ${OFF_THE_CHART}`, look: 'pencil', spots }];
}

function quietWishes({
  marks,
  touching,
  a,
  frame: { box, y },
  narrow,
  x,
  unit,
  all,
}: EffortWayWords): readonly LabelWish[] {
  const wishes: LabelWish[] = [];
  const quiet = (key: string, text: string, spots: readonly Spot[]) =>
    wishes.push({ key, text, look: 'quiet', spots, spare: true });
  const jump = marks.find(({ kind, jump: to }) => kind === 'snaps' && to !== undefined);
  if (jump) {
    const text = jump.jump === 'end' ? UNDER_A_WEIGHT.passes : UNDER_A_WEIGHT.lands;
    const to = typeof jump.jump === 'number' ? x(jump.jump) : box.right;
    quiet('jump', text, [
      { x: (jump.x + to) / 2, y: jump.y + 13, anchor: 'middle' },
      { x: (jump.x + to) / 2, y: jump.y - 5, anchor: 'middle' },
    ]);
  }
  const pulls = all.some((point) => point.y > y(0) + 4 && point.x > x(0));
  if (pulls && marks.length > 1) {
    quiet('pulls', PULLS_ITSELF, [
      { x: box.left + 6, y: box.bottom - 6, anchor: 'start' },
      { x: box.right - 6, y: box.bottom - 6, anchor: 'end' },
    ]);
  }
  const { ahead } = staysBentPast(a);
  const at = x(ahead);
  if (at < box.right) {
    const rows = [12, 27, 42, 57].map((down) => box.top + down);
    const spots = rows.flatMap((height): Spot[] => [
      { x: at - 6, y: height, anchor: 'end' },
      { x: at + 6, y: height, anchor: 'start' },
      { x: box.right - 4, y: height, anchor: 'end' },
    ]);
    quiet('yield', staysBentText(ahead, a.drive.measure, unit), [
      ...spots,
      ...spots.map((spot) => ({ ...spot, y: box.bottom - spot.y + box.top })),
    ]);
  }
  for (const [i, [from, to]] of touching.entries()) {
    const middle = (x(from) + x(to)) / 2;
    const spots = [12, 27, 42].map((down): Spot => ({ x: middle, y: box.top + down, anchor: 'middle' }));
    quiet(`touches${i}`, TOUCHES, spots);
  }
  if (!narrow && marks.some(({ kind }) => kind === 'balanced')) {
    quiet('guided', ONLY_GUIDED, [
      { x: box.right - 6, y: box.bottom - 20, anchor: 'end' },
      { x: box.left + 6, y: box.bottom - 20, anchor: 'start' },
    ]);
  }
  return wishes;
}
