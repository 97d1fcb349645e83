/** The words on effort against movement, and where they find room. */
import type { Assessment } from '../../core/design/assessment.ts';
import { EFFORT_UNIT } from '../text/amountText.ts';
import { effortAtAmount, MODULUS_BAND, OFF_THE_CHART, setBeginsAt, staysBentPast } from '../text/chartText.ts';
import type { LengthUnit } from '../text/numbers.ts';
import { onAxis } from './amountAxis.ts';
import type { EffortPoint } from './effortCurve.ts';
import { isInside, type Frame, type Px } from './frame.ts';
import { EDGE_WEIGHT, LINE_WEIGHT, placeLabels, type LabelWish, type PlacedLabel, type Spot } from './labels.ts';
import { around, besideEdge, clearPaper, inkOf, markBox, offChart } from './spots.ts';

const CLEAR_OF_JOINT = 15;
/** Half the room that the mark takes [px]. */
const MARK = 10;

export interface EffortWords {
  readonly frame: Frame;
  readonly a: Assessment;
  /** Where the scrubber holds it. */
  readonly bent: EffortPoint;
  readonly points: readonly EffortPoint[];
  readonly unit: LengthUnit;
}

function bentWish({ frame, a, bent, unit }: EffortWords, at: Px): LabelWish {
  const off = offChart(at, frame.box);
  const stands = off?.at ?? at;
  const text = effortAtAmount(bent.amount, bent.typical, a.drive.measure, unit);
  return {
    key: 'bent',
    text: off ? `${text}, ${OFF_THE_CHART}` : text,
    look: 'pencil',
    ...(off
      ? { spots: besideEdge(stands) }
      : { spots: around(stands, CLEAR_OF_JOINT).toReversed(), far: () => clearPaper(stands, 9, frame.box) }),
  };
}

function pastWish(key: string, text: string, box: Frame['box'], at: number): LabelWish {
  const rows = [0, 1, 2, 3, 4].map((row) => box.top + 12 + row * 15);
  const spots = rows.flatMap((y): Spot[] => [
    { x: at - 6, y, anchor: 'end' },
    { x: at + 6, y, anchor: 'start' },
    { x: box.right - 4, y, anchor: 'end' },
  ]);
  return { key, text, look: 'quiet', spots: at <= box.right ? spots : [] };
}

/** Named from clear paper under the line, else over it, with a leader to the band's edge. */
function bandWish(box: Frame['box'], edge: (side: 'low' | 'high') => readonly Px[]): LabelWish {
  const under = edge('low').flatMap((leader): Spot[] => [
    { x: leader.x + 14, y: leader.y + 26, anchor: 'start', leader },
    { x: leader.x + 12, y: leader.y + 15, anchor: 'start', leader },
  ]);
  const above = edge('high').map((leader): Spot => ({ x: leader.x - 14, y: leader.y - 16, anchor: 'end', leader }));
  const spots = [...under, ...above].filter(({ leader }) => leader && isInside(leader, box));
  return { key: 'band', text: MODULUS_BAND, look: 'quiet', spare: true, spots };
}

export function effortLabels(words: EffortWords): readonly PlacedLabel[] {
  const { frame, a, bent, points, unit: lengthUnit } = words;
  const { box, y } = frame;
  const { measure } = a.drive;
  const x = (amount: number) => frame.x(onAxis(amount, measure));
  const at = { x: x(bent.amount), y: y(bent.typical) };
  const stands = offChart(at, box)?.at ?? at;
  const edge = (side: 'typical' | 'low' | 'high') => points.map((one) => ({ x: x(one.amount), y: y(one[side]) }));
  const trace = (side: 'typical' | 'low' | 'high', weight: number) => inkOf(edge(side), box, weight);
  const guide = [{ x: stands.x, y: box.bottom }, stands, { x: box.left, y: stands.y }];
  const inks = [
    ...trace('typical', LINE_WEIGHT),
    ...trace('low', EDGE_WEIGHT),
    ...trace('high', EDGE_WEIGHT),
    ...inkOf(guide, box, LINE_WEIGHT),
  ];
  const unit: LabelWish = {
    key: 'unit',
    text: EFFORT_UNIT[measure],
    look: 'quiet',
    spots: [{ x: box.left + 8, y: box.top + 12, anchor: 'start' }],
  };
  const { atSet, atYield } = a.overBend;
  const wishes = [
    unit,
    bentWish(words, at),
    pastWish('yield', staysBentPast(atYield, measure, lengthUnit), box, x(atYield)),
    { ...pastWish('set', setBeginsAt(atSet, measure, lengthUnit), box, x(atSet)), spare: true },
    bandWish(box, edge),
  ];
  return placeLabels(wishes, { inks, marks: [markBox(stands, MARK)] }, box);
}
