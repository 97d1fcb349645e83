/** The words on strain against flexing length, and where they find room. */
import type { Assessment } from '../../core/design/assessment.ts';
import { jointStrain, LIMIT_WORDS, OFF_THE_CHART, over, limitLabel } from '../text/chartText.ts';
import type { LengthUnit } from '../text/numbers.ts';
import type { Frame, Px } from './frame.ts';
import type { StrainBand } from './lengthCurves.ts';
import { LINE_WEIGHT, placeLabels, type LabelWish, type PlacedLabel, type Spot } from './labels.ts';
import { alongLimit, around, besideEdge, clearPaper, inkAcross, inkOf, markBox, offChart } from './spots.ts';

/** Words need this much height of band [px]. */
const LOWEST_BAND = 15;
const CLEAR_OF_JOINT = 15;
/** Half the room that the mark takes [px]. */
const MARK = 10;
/** The own curve is heavier and the one that is looked for. */
const OWN_WEIGHT = 3 * LINE_WEIGHT;

function bandSpots({ box }: Frame, top: number, bottom: number): readonly Spot[] {
  const width = box.right - box.left;
  const rows = Math.max(1, Math.floor((bottom - top) / 14));
  const heights = Array.from({ length: rows }, (_, i) => bottom - 6 - i * 14);
  const starts = Array.from({ length: 14 }, (_, i) => box.left + 8 + i * 0.05 * width);
  return heights.flatMap((y): Spot[] => [
    { x: box.right - 6, y, anchor: 'end' },
    ...starts.map((x): Spot => ({ x, y, anchor: 'start' })),
  ]);
}

function bandWord({ name, from }: StrainBand): string {
  if (name === 'repeated') return LIMIT_WORDS.repeated;
  if (name === 'few') return 'a few times';
  return over(name === 'set' ? LIMIT_WORDS.yield : LIMIT_WORDS.break, from);
}

function bandWishes(frame: Frame, bands: readonly StrainBand[]): readonly LabelWish[] {
  return bands
    .map((band) => ({ band, top: frame.y(band.to), bottom: frame.y(band.from) }))
    .filter(({ top, bottom }) => bottom - top >= LOWEST_BAND)
    .map(({ band, top, bottom }) => ({
      key: band.name,
      text: bandWord(band),
      look: 'ink' as const,
      spots: bandSpots(frame, top, bottom),
      spare: true,
    }));
}

/** The word at the dotted limit of a joint that is left bent. */
function heldWishes({ box, y }: Frame, held: number | undefined): readonly LabelWish[] {
  if (held === undefined) return [];
  return [{ key: 'held', text: limitLabel(LIMIT_WORDS.held, held), look: 'quiet', spots: alongLimit(box, y(held)) }];
}

export interface LengthWords {
  readonly frame: Frame;
  readonly a: Assessment;
  readonly unit: LengthUnit;
  readonly own: string;
  readonly bands: readonly StrainBand[];
  /** The limit of a joint that is left bent, where the brief calls on it. */
  readonly held: number | undefined;
  /** Every curve as it is drawn [px], the joint's own last. */
  readonly curves: readonly (readonly Px[])[];
}

export function lengthLabels({ frame, a, unit, own, bands, held, curves }: LengthWords): readonly PlacedLabel[] {
  const { box } = frame;
  const at = { x: frame.x(a.length), y: frame.y(a.strain.peak) };
  const off = offChart(at, box);
  const stands = off?.at ?? at;
  const says = jointStrain(a.length, unit, a.strain.peak);
  const joint: LabelWish = {
    key: 'joint',
    text: off ? `${own}, ${OFF_THE_CHART}` : says,
    look: 'pencil',
    ...(off
      ? { spots: besideEdge(stands) }
      : { spots: around(stands, CLEAR_OF_JOINT), far: () => clearPaper(stands, 9, box) }),
  };
  const inks = [
    ...curves.flatMap((curve, i) => inkOf(curve, box, i === curves.length - 1 ? OWN_WEIGHT : LINE_WEIGHT)),
    ...[...bands.map(({ from }) => from), ...(held === undefined ? [] : [held])].flatMap((limit) =>
      inkAcross(frame.y(limit), box, LINE_WEIGHT),
    ),
  ];
  const wishes = [joint, ...heldWishes(frame, held), ...bandWishes(frame, bands)];
  return placeLabels(wishes, { inks, marks: [markBox(stands, MARK)] }, box);
}
