import { memo, useId } from 'react';
import type { Measure } from '../../text/amountText.ts';
import { AXES } from '../../text/chartText.ts';
import type { LengthUnit } from '../../text/numbers.ts';
import { onAxis } from '../amountAxis.ts';
import { Axes, Grid } from '../Axes.tsx';
import type { Box, Frame, Span } from '../frame.ts';
import { JointMark } from '../JointMark.tsx';
import { LINE_WEIGHT, placeLabels, type LabelWish, type PlacedLabel } from '../labels.ts';
import { levelMarks } from '../levels.ts';
import { pathOf } from '../paths.ts';
import { PlacedLabels } from '../PlacedLabels.tsx';
import { PlotClip } from '../PlotClip.tsx';
import { inkAcross, inkOf, markBox } from '../spots.ts';
import { BallMarks } from './BallMarks.tsx';
import { amountMarks } from './spans.ts';
import type { DrawnCurve, WayCurve } from './wayCurve.ts';

interface WayCurvePlotProps {
  readonly curve: WayCurve;
  readonly measure: Measure;
  readonly shown: number;
  readonly span: Span;
  readonly frame: Frame;
  readonly narrow: boolean;
  readonly unit: LengthUnit;
}

export const WayCurvePlot = memo(function WayCurvePlot(props: WayCurvePlotProps) {
  const { curve, measure, shown, span, frame, narrow, unit } = props;
  const { box, x, y } = frame;
  const id = useId();
  const place = (amount: number, value: number) => ({ x: x(onAxis(amount, measure)), y: y(value) });
  const value = curve.valueAt(shown);
  const now = value === undefined ? undefined : { ...place(shown, Math.max(0, value)), value };
  const drawn: DrawnCurve = { frame, place, now };
  const lines = curve.lines.map(({ points, isGuided }) => ({
    isGuided,
    points: points.map((point) => place(point.amount, point.value)),
  }));
  const ticks = { x: amountMarks(span, measure, unit, narrow), y: levelMarks(curve.level) };
  return (
    <>
      <PlotClip id={id} box={box} />
      <Grid frame={frame} {...ticks} />
      {curve.renderUnder(drawn)}
      <g clipPath={`url(#${id})`}>
        {lines.map(({ isGuided, points }, i) => (
          // Lines come anew with each answer and are known by their order on the way.
          <path key={i} className={isGuided ? 'chart-guided' : 'chart-median'} d={pathOf(points)} />
        ))}
      </g>
      {curve.renderOver(drawn)}
      <Axes frame={frame} {...ticks} name={AXES.amount(measure, unit)} />
      <BallMarks marks={curve.balls(drawn)} />
      <PlacedLabels labels={labelsOf(curve, drawn, lines)} />
      {now && <JointMark at={now} box={box} />}
    </>
  );
});

function labelsOf(
  curve: WayCurve,
  drawn: DrawnCurve,
  lines: readonly { readonly points: readonly { x: number; y: number }[] }[],
): readonly PlacedLabel[] {
  const { frame, now } = drawn;
  const { box, y } = frame;
  const inks = [
    ...lines.flatMap(({ points }) => inkOf(points, box, LINE_WEIGHT)),
    ...curve.limits.flatMap((limit) => inkAcross(y(limit), box, LINE_WEIGHT)),
  ];
  const marks = [...(now ? [markBox(now, 10)] : []), ...curve.balls(drawn).map((ball) => markBox(ball, 6))];
  return placeLabels([countsWish(curve.counts, box), ...curve.wishes(drawn)], { inks, marks }, box);
}

/** What the upright axis counts in, at its head or opposite. */
function countsWish(text: string, { left, right, top }: Box): LabelWish {
  return {
    key: 'unit',
    text,
    look: 'quiet',
    spots: [
      { x: left + 8, y: top + 12, anchor: 'start' },
      { x: left + 8, y: top + 30, anchor: 'start' },
      { x: right - 6, y: top + 12, anchor: 'end' },
    ],
  };
}
