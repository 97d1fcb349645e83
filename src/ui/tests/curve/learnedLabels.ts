/** Words on the curves before and after: direct, by leaders where they would cover something. */
import type { CurvePoint, DrawnCurve } from '../../../core/life/curveOf.ts';
import type { Box, Frame, Px } from '../../charts/frame.ts';
import { isInside } from '../../charts/frame.ts';
import { LINE_WEIGHT, placeLabels, type LabelWish, type PlacedLabel, type Spot } from '../../charts/labels.ts';
import { around, clearPaper, inkOf, markBox } from '../../charts/spots.ts';
import { percent } from '../../text/numbers.ts';
import { LEARNED_FIGURE } from '../../text/testsCurveText.ts';
import type { LearnedPlan } from './learnedPlan.ts';

const CLEAR = 10;

/** Names a curve near a share of its way over the paper. */
function named(
  key: string,
  text: string,
  look: LabelWish['look'],
  line: readonly Px[],
  box: Box,
  share: number,
): LabelWish[] {
  const seen = line.filter((at) => isInside(at, box));
  const at = seen[Math.floor(share * (seen.length - 1))];
  if (!at) return [];
  return [{ key, text, look, spare: true, spots: around(at, CLEAR), far: () => clearPaper(at, CLEAR, box) }];
}

function wantedSpots(at: number, box: Box): readonly Spot[] {
  return [box.bottom - 8, box.top + 14, box.bottom - 24].flatMap((y): Spot[] => [
    { x: at + 5, y, anchor: 'start' },
    { x: at - 5, y, anchor: 'end' },
  ]);
}

export function learnedLabels(plan: LearnedPlan, { box, x, y }: Frame): readonly PlacedLabel[] {
  const { before, after, strips, wanted, joint } = plan;
  const line = (curve: DrawnCurve) =>
    curve.median.map((one: CurvePoint): Px => ({ x: x(one.cycles), y: y(one.strain) }));
  const points = strips.map((one): Px => ({ x: x(one.cycles), y: y(one.strain) })).filter((at) => isInside(at, box));
  const jointAt =
    joint && joint.life.median > 0 ? { x: x(joint.life.wear[0].median), y: y(joint.strain.peak) } : undefined;
  const last = points.toSorted((a, b) => a.x - b.x).at(-1);
  const wantedAt = wanted === undefined ? undefined : x(wanted);
  const wishes: LabelWish[] = [
    ...(jointAt && isInside(jointAt, box) && joint
      ? [
          {
            key: 'joint',
            text: percent(joint.strain.peak),
            look: 'pencil' as const,
            spots: around(jointAt, 14),
            far: () => clearPaper(jointAt, 10, box),
          },
        ]
      : []),
    ...(wantedAt !== undefined && wanted !== undefined && wantedAt > box.left && wantedAt < box.right
      ? [
          {
            key: 'wanted',
            text: LEARNED_FIGURE.wanted(wanted),
            look: 'pencil' as const,
            spots: wantedSpots(wantedAt, box),
          },
        ]
      : []),
    ...(last
      ? [
          {
            key: 'strips',
            text: LEARNED_FIGURE.strips(strips.length),
            look: 'ink' as const,
            spots: around(last, 20),
            far: () => clearPaper(last, CLEAR, box),
          },
        ]
      : []),
    ...(after ? named('after', LEARNED_FIGURE.after, 'bold', line(after), box, 0.82) : []),
    ...(after ? named('before', LEARNED_FIGURE.before, 'quiet', line(before), box, 0.3) : []),
    {
      key: 'past',
      text: LEARNED_FIGURE.past,
      look: 'quiet',
      spare: true,
      spots: [0, 1, 2, 3].map((step): Spot => ({ x: box.right - 4, y: box.top + 14 + step * 16, anchor: 'end' })),
    },
  ];
  const marks = [...points.map((at) => markBox(at, 8)), ...(jointAt ? [markBox(jointAt, 12)] : [])];
  const inks = [
    ...inkOf(line(before), box, LINE_WEIGHT),
    ...(after ? inkOf(line(after), box, LINE_WEIGHT) : []),
    ...(wantedAt === undefined
      ? []
      : inkOf(
          [
            { x: wantedAt, y: box.top },
            { x: wantedAt, y: box.bottom },
          ],
          box,
          LINE_WEIGHT,
        )),
  ];
  return placeLabels(wishes, { inks, marks }, box);
}
