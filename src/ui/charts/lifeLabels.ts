/** The words on strain against life, and where they find room. */
import type { Assessment } from '../../core/design/assessment.ts';
import {
  ANY_SPOOL,
  BEYOND_THE_DATA,
  limitLabel,
  LIMIT_WORDS,
  OFF_THE_CHART,
  ONE_PRINT_RUN,
  ownName,
  wantedCycles,
} from '../text/chartText.ts';
import { isInside, type Frame, type Px } from './frame.ts';
import {
  along,
  alongAll,
  around,
  clearPaper,
  markOf,
  offChart,
  placeLabels,
  type LabelWish,
  type PlacedLabel,
  type Spot,
} from './labels.ts';
import { jointPoint, type CountPoint, type LifeBand, type LifeCurves, type LifeLimit } from './lifeCurves.ts';

const CLEAR_OF_JOINT = 14;
const CLEAR_OF_DOT = 7;

export interface LifeWords {
  readonly frame: Frame;
  readonly a: Assessment;
  readonly curves: LifeCurves;
  readonly counts: readonly CountPoint[];
  readonly limits: readonly LifeLimit[];
}

function jointWish({ frame, a }: LifeWords, at: Px): LabelWish {
  const off = offChart(at, frame.box);
  const stands = off?.at ?? at;
  const name = ownName(a.section.count, a.section.countOf, a.joint.measuredThickness !== undefined);
  return {
    key: 'joint',
    text: off ? `${name}, ${OFF_THE_CHART}` : name,
    look: 'pencil',
    spots: [...around(stands, CLEAR_OF_JOINT), ...clearPaper(stands, 9, frame.box)],
  };
}

/** Beside the line at its top, else further down; for more than the paper holds, at its right edge. */
function wantedWish({ frame: { box, x }, a }: LifeWords): LabelWish {
  const at = Math.min(x(a.joint.movement.cycles), box.right);
  const heights = [0, 1, 2, 3, 8, 9, 10, 11].map((row) => box.top + 12 + row * 16);
  return {
    key: 'wanted',
    text: wantedCycles(a.joint.movement.cycles),
    look: 'pencil',
    spots: heights.flatMap((y): Spot[] => [
      { x: at + 6, y, anchor: 'start' },
      { x: at - 6, y, anchor: 'end' },
    ]),
  };
}

function dataEndWish({ frame: { box } }: LifeWords): LabelWish {
  return {
    key: 'data end',
    text: BEYOND_THE_DATA,
    look: 'quiet',
    spots: [0, 1, 2, 3, 4].map((row) => ({ x: box.right - 4, y: box.top + 12 + row * 15, anchor: 'end' })),
  };
}

function countWishes({ frame: { box, x, y }, counts }: LifeWords): readonly LabelWish[] {
  return counts
    .map(({ count, cycles, strain }) => ({ count, at: { x: x(cycles), y: y(strain) } }))
    .filter(({ at }) => isInside(at, box))
    .map(({ count, at }) => ({
      key: `count ${count}`,
      text: String(count),
      look: 'bold',
      spare: true,
      spots: around(at, CLEAR_OF_DOT),
    }));
}

function limitWishes({ frame: { box, y }, limits }: LifeWords): readonly LabelWish[] {
  return limits.map(({ name, strain }) => ({
    key: name,
    text: limitLabel(LIMIT_WORDS[name], strain),
    look: 'quiet',
    spare: true,
    spots: [-4, 12].flatMap((off): Spot[] => [
      { x: box.left + 8, y: y(strain) + off, anchor: 'start' },
      { x: box.right - 4, y: y(strain) + off, anchor: 'end' },
      { x: box.right - 66, y: y(strain) + off, anchor: 'end' },
    ]),
  }));
}

/** Named from clear paper, with a leader to the band's edge: early failures on the left, late ones on the right. */
function bandWish(key: string, text: string, band: readonly LifeBand[], { x, y, box }: Frame): LabelWish {
  const edge = (side: 'low' | 'high') => band.map((one) => ({ x: x(one[side]), y: y(one.strain) }));
  const late = edge('high').flatMap((leader): Spot[] => [
    { x: leader.x + 18, y: leader.y - 14, anchor: 'start', leader },
    { x: leader.x + 26, y: leader.y - 34, anchor: 'start', leader },
  ]);
  const early = edge('low').map((leader): Spot => ({ x: leader.x - 18, y: leader.y + 22, anchor: 'end', leader }));
  const spots = [...late, ...early].filter(({ leader }) => leader && isInside(leader, box));
  return { key, text, look: 'quiet', spare: true, spots };
}

export function lifeLabels(words: LifeWords): readonly PlacedLabel[] {
  const { frame, a, curves, counts } = words;
  const { box, x, y } = frame;
  const joint = jointPoint(a);
  const at = { x: x(joint.cycles), y: y(joint.strain) };
  const place = (point: { cycles: number; strain: number }) => ({ x: x(point.cycles), y: y(point.strain) });
  const edges = [curves.total, curves.scatter].flatMap((band) =>
    (['low', 'high'] as const).map((side) => band.map((one) => ({ x: x(one[side]), y: y(one.strain) }))),
  );
  const wanted = x(a.joint.movement.cycles);
  const lines = [
    ...alongAll(curves.median.map(place), box),
    ...(wanted <= box.right ? along({ x: wanted, y: box.top }, { x: wanted, y: box.bottom }) : []),
    ...counts.flatMap((count) => markOf(place(count), 3)),
    ...markOf(offChart(at, box)?.at ?? at, 11),
  ];
  const wishes = [
    jointWish(words, at),
    wantedWish(words),
    dataEndWish(words),
    ...limitWishes(words),
    ...countWishes(words),
    bandWish('total', ANY_SPOOL, curves.total, frame),
    bandWish('scatter', ONE_PRINT_RUN, curves.scatter, frame),
  ];
  return placeLabels(wishes, { lines, edges: edges.flatMap((edge) => alongAll(edge, box)) }, box);
}
