/** The words on the curve of one filament, and where they find room. */
import type { DrawnCurve } from '../../core/life/curveOf.ts';
import { strainFactorAcrossLayers } from '../../core/material/choose.ts';
import { isInside, type Box, type Px } from '../charts/frame.ts';
import {
  EDGE_WEIGHT,
  LINE_WEIGHT,
  placeLabels,
  type LabelWish,
  type PlacedLabel,
  type Spot,
} from '../charts/labels.ts';
import { alongLimit, around, clearPaper, inkAcross, inkOf, markBox } from '../charts/spots.ts';
import { BEYOND_THE_DATA, limitLabel, LIMIT_WORDS } from '../text/chartText.ts';
import { anchorLabel, boundLabel, FIGURE_ONE } from '../text/filamentCurveText.ts';
import { anchorPoint, jointOn, type OnePlotProps } from './onePlot.ts';

const CLEAR = 11;
const MARK = 8;

const inside = (points: readonly Px[], box: Box) => points.filter((point) => isInside(point, box));

/** Named from clear paper, with a leader to the line. */
function lineWish(key: string, text: string, points: readonly Px[], box: Box): LabelWish[] {
  const spots = inside(points, box).flatMap((leader): Spot[] => [
    { x: leader.x - 16, y: leader.y + 22, anchor: 'end', leader },
    { x: leader.x - 16, y: leader.y + 40, anchor: 'end', leader },
    { x: leader.x + 16, y: leader.y - 18, anchor: 'start', leader },
  ]);
  return spots.length === 0 ? [] : [{ key, text, look: 'quiet', spare: true, spots }];
}

/** Words placed in the order in which they matter: the joint, points, bounds, limits, lines. */
export function oneCurveLabels(
  props: OnePlotProps,
  across: DrawnCurve | undefined,
  hairlines: readonly DrawnCurve[],
): readonly PlacedLabel[] {
  const { row, drawn, severity, anchors, frame, narrow } = props;
  const { box, x, y } = frame;
  const px = (one: { readonly cycles: number; readonly strain: number }): Px => ({
    x: x(one.cycles),
    y: y(one.strain),
  });
  const line = (curve: DrawnCurve) => curve.median.map(px);
  const joint = jointOn(props);
  const points = anchors.flatMap((anchor, at) => {
    const point = anchorPoint(anchor, row, severity);
    return point && isInside(px(point), box) ? [{ key: `anchor ${at}`, anchor, at: px(point) }] : [];
  });
  const jointAt = joint && { x: joint.cycles === undefined ? box.left : x(joint.cycles), y: y(joint.strain) };
  const isAsIs = joint !== undefined && Math.abs(joint.strain - (props.joint?.strain ?? 0)) < 1e-9;
  const wishes: LabelWish[] = [
    ...(joint && jointAt
      ? [
          {
            key: 'joint',
            text: FIGURE_ONE.joint(joint.strain, isAsIs),
            look: 'pencil' as const,
            spots: joint.cycles === undefined ? alongLimit(box, jointAt.y) : around(jointAt, 14),
            far: () => clearPaper(jointAt, 9, box),
          },
        ]
      : []),
    ...points.map(({ key, anchor, at }): LabelWish => ({
      key,
      text: anchorLabel(anchor),
      look: 'ink',
      spare: true,
      spots: around(at, CLEAR),
      far: () => clearPaper(at, 9, box),
    })),
    ...anchors
      .filter(({ strain }) => strain === undefined)
      .map((anchor): LabelWish => ({
        key: `bound ${anchor.cycles}`,
        text: boundLabel(anchor),
        look: 'quiet',
        spare: true,
        spots: [0, 1, 2, 3, 4, 5].flatMap((step): Spot[] => [
          { x: x(anchor.cycles) + 7, y: box.top + 14 + step * 16, anchor: 'start' },
          { x: x(anchor.cycles) - 30, y: box.top + 14 + step * 16, anchor: 'end' },
        ]),
      })),
    {
      key: 'beyond',
      text: BEYOND_THE_DATA,
      look: 'quiet',
      spare: true,
      spots: [0, 1, 2, 3, 14, 15].map((step) => ({ x: box.right - 4, y: box.top + 14 + step * 16, anchor: 'end' })),
    },
    ...(
      [
        ['yield', row.properties.yieldStrain.typical],
        ['repeated', row.properties.permissibleStrainRepeated.typical],
        ['first flex', drawn.firstFlex],
      ] as const
    )
      .filter(([, strain]) => y(strain) > box.top && y(strain) < box.bottom)
      .map(([name, strain]): LabelWish => ({
        key: name,
        text: limitLabel(LIMIT_WORDS[name], strain),
        look: 'quiet',
        spare: true,
        spots: alongLimit(box, y(strain)),
      })),
    ...(across
      ? lineWish(
          'across',
          `${FIGURE_ONE.across}, × ${strainFactorAcrossLayers(row).typical}`,
          line(across).filter((_, at) => at % 4 === 0),
          box,
        )
      : []),
    ...(narrow
      ? []
      : hairlines.flatMap((curve, at) =>
          lineWish(
            `gamma ${at}`,
            FIGURE_ONE.gamma(at),
            line(curve).filter((_, i) => i % 5 === 0),
            box,
          ),
        )),
  ];
  const marks = [
    ...points.map(({ at }) => markBox(at, MARK)),
    ...(joint?.cycles !== undefined && jointAt ? [markBox(jointAt, 12)] : []),
  ];
  const inks = [
    ...inkOf(line(drawn), box, LINE_WEIGHT),
    ...(across ? inkOf(line(across), box, LINE_WEIGHT) : []),
    ...hairlines.flatMap((curve) => inkOf(line(curve), box, EDGE_WEIGHT)),
    ...[row.properties.yieldStrain.typical, row.properties.permissibleStrainRepeated.typical, drawn.firstFlex].flatMap(
      (strain) => inkAcross(y(strain), box, EDGE_WEIGHT),
    ),
    ...anchors
      .filter(({ strain }) => strain === undefined)
      .flatMap(({ cycles }) =>
        inkOf(
          [
            { x: x(cycles), y: box.top },
            { x: x(cycles), y: (box.top + box.bottom) / 2 },
          ],
          box,
          LINE_WEIGHT,
        ),
      ),
  ];
  return placeLabels(wishes, { inks, marks }, box);
}
