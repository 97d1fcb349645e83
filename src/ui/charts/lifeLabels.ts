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
import { filamentLabel, WITH_ALL_WEAR } from '../text/lifeChartText.ts';
import { isInside, type Box, type Frame, type Px } from './frame.ts';
import {
  EDGE_WEIGHT,
  LINE_WEIGHT,
  placeLabels,
  type Drawn,
  type LabelWish,
  type PlacedLabel,
  type Spot,
} from './labels.ts';
import {
  jointPoint,
  wornPoint,
  type CountPoint,
  type FilamentPoint,
  type LifeBand,
  type LifeCurves,
  type LifeLimit,
  type LifePoint,
} from './lifeCurves.ts';
import { alongLimit, around, besideEdge, clearPaper, inkOf, markBox, offChart } from './spots.ts';

const CLEAR_OF_JOINT = 14;
const CLEAR_OF_DOT = 8;
/** Half the room that a mark takes [px]. */
const MARK = 10;
const DOT = 5;

export interface LifeWords {
  readonly frame: Frame;
  readonly a: Assessment;
  readonly curves: LifeCurves;
  readonly counts: readonly CountPoint[];
  readonly limits: readonly LifeLimit[];
  readonly filaments: readonly FilamentPoint[];
}

function jointWish({ frame, a }: LifeWords, at: Px): LabelWish {
  const off = offChart(at, frame.box);
  const stands = off?.at ?? at;
  const name = ownName(a.section.count, a.section.countOf, a.joint.measuredThickness !== undefined);
  return {
    key: 'joint',
    text: off ? `${name}, ${OFF_THE_CHART}` : name,
    look: 'pencil',
    ...(off
      ? { spots: besideEdge(stands) }
      : { spots: around(stands, CLEAR_OF_JOINT), far: () => clearPaper(stands, 9, frame.box) }),
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

/** Where it stands with all its wear. */
function wornWish({ frame, a }: LifeWords): readonly LabelWish[] {
  const worn = wornPoint(a);
  if (!worn) return [];
  const at = { x: frame.x(worn.cycles), y: frame.y(worn.strain) };
  const stands = offChart(at, frame.box)?.at ?? at;
  const spots = [...around(stands, CLEAR_OF_JOINT), ...besideEdge(stands)];
  return [{ key: 'worn', text: WITH_ALL_WEAR, look: 'pencil', spots, far: () => clearPaper(stands, 9, frame.box) }];
}

/** Other filaments stand in one row with the joint, so that their names go over and under it by turns. */
function filamentWishes({ frame: { box, x, y }, filaments }: LifeWords): readonly LabelWish[] {
  return filaments
    .map((point) => ({ point, at: { x: x(point.cycles), y: y(point.strain) } }))
    .filter(({ at }) => isInside(at, box))
    .map(({ point, at }) => ({
      key: `filament ${point.ids.join()}`,
      text: filamentLabel(point.names, point.isPast),
      look: 'quiet',
      spare: true,
      spots: [...overAndUnder(at, CLEAR_OF_DOT), ...around(at, CLEAR_OF_DOT)],
    }));
}

/** Places over and under a mark, nearest first, those further off with a leader. */
function overAndUnder({ x, y }: Px, reach: number): readonly Spot[] {
  return [0, 1, 2, 3].flatMap((row) =>
    (['middle', 'start', 'end'] as const).flatMap((anchor): Spot[] => {
      const aside = anchor === 'middle' ? 0 : anchor === 'start' ? -4 : 4;
      const leader = row > 0 && anchor !== 'middle';
      if (row > 0 && !leader) return [];
      const [over, under] = [y - reach - row * 15, y + reach + 9 + row * 15];
      return [
        { x: x + aside, y: over, anchor, ...(leader ? { leader: { x, y: y - 5 } } : {}) },
        { x: x + aside, y: under, anchor, ...(leader ? { leader: { x, y: y + 5 } } : {}) },
      ];
    }),
  );
}

function limitWishes({ frame: { box, y }, limits }: LifeWords): readonly LabelWish[] {
  return limits.map(({ name, strain }) => ({
    key: name,
    text: limitLabel(LIMIT_WORDS[name], strain),
    look: 'quiet',
    spare: true,
    spots: alongLimit(box, y(strain)),
  }));
}

/** Named from clear paper, with a leader to the band's edge: late failures on the right, early ones on the left. */
function bandWish(key: string, text: string, band: readonly LifeBand[], { x, y, box }: Frame): LabelWish {
  const edge = (side: 'low' | 'high') => band.map((one) => ({ x: x(one[side]), y: y(one.strain) }));
  const late = edge('high').flatMap((leader): Spot[] => [
    { x: leader.x + 18, y: leader.y - 14, anchor: 'start', leader },
    { x: leader.x + 26, y: leader.y - 34, anchor: 'start', leader },
    { x: leader.x - 6, y: leader.y - 16, anchor: 'end', leader },
  ]);
  const early = edge('low').flatMap((leader): Spot[] => [
    { x: leader.x - 18, y: leader.y + 22, anchor: 'end', leader },
    { x: leader.x + 6, y: leader.y + 26, anchor: 'start', leader },
  ]);
  const spots = [...late, ...early].filter(({ leader }) => leader && isInside(leader, box));
  return { key, text, look: 'quiet', spare: true, spots };
}

function level({ left, right }: Box, y: number): readonly Px[] {
  return [
    { x: left, y },
    { x: right, y },
  ];
}

function drawnOn({ frame, a, curves, counts, limits, filaments }: LifeWords, stands: Px): Drawn {
  const { box, x, y } = frame;
  const place = ({ cycles, strain }: LifePoint) => ({ x: x(cycles), y: y(strain) });
  const edge = (band: readonly LifeBand[], side: 'low' | 'high') =>
    inkOf(
      band.map((one) => ({ x: x(one[side]), y: y(one.strain) })),
      box,
      EDGE_WEIGHT,
    );
  const worn = wornPoint(a);
  const wanted = x(a.joint.movement.cycles);
  const wantedLine = [
    { x: wanted, y: box.top },
    { x: wanted, y: box.bottom },
  ];
  return {
    inks: [
      ...inkOf(curves.median.map(place), box, LINE_WEIGHT),
      ...inkOf(wantedLine, box, LINE_WEIGHT),
      ...limits.flatMap(({ strain }) => inkOf(level(box, y(strain)), box, EDGE_WEIGHT)),
      ...[curves.total, curves.scatter].flatMap((band) => [...edge(band, 'low'), ...edge(band, 'high')]),
    ],
    marks: [
      markBox(stands, MARK),
      ...(worn ? [markBox(place(worn), MARK)] : []),
      ...[...counts, ...filaments].map((point) => markBox(place(point), DOT)),
    ],
  };
}

export function lifeLabels(words: LifeWords): readonly PlacedLabel[] {
  const { frame, a, curves } = words;
  const joint = jointPoint(a);
  const at = { x: frame.x(joint.cycles), y: frame.y(joint.strain) };
  const stands = offChart(at, frame.box)?.at ?? at;
  const wishes = [
    jointWish(words, at),
    ...limitWishes(words),
    dataEndWish(words),
    wantedWish(words),
    ...wornWish(words),
    ...countWishes(words),
    ...filamentWishes(words),
    bandWish('total', ANY_SPOOL, curves.total, frame),
    bandWish('scatter', ONE_PRINT_RUN, curves.scatter, frame),
  ];
  return placeLabels(wishes, drawnOn(words, stands), frame.box);
}
