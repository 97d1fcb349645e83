import { memo, useId } from 'react';
import type { Assessment } from '../../core/design/assessment.ts';
import type { HoldAnswer } from '../../core/design/hold.ts';
import { Axes, Grid } from '../charts/Axes.tsx';
import type { Frame } from '../charts/frame.ts';
import { LINE_WEIGHT, placeLabels, type LabelWish } from '../charts/labels.ts';
import { pathOf, uprightBand } from '../charts/paths.ts';
import { PlacedLabels } from '../charts/PlacedLabels.tsx';
import { PlotClip } from '../charts/PlotClip.tsx';
import { around, inkOf, markBox } from '../charts/spots.ts';
import { QUARTERS } from '../charts/ticks.ts';
import { HELD_PLOT, PUSH_LABEL, STAYS_LABEL } from '../text/heldText.ts';
import { spanFigure } from '../text/countText.ts';

interface HeldCurvesProps {
  readonly a: Assessment;
  readonly hold: HoldAnswer;
  readonly frame: Frame;
  /** Marked times [h]. */
  readonly stops: readonly number[];
  /** Of the paper [px]. */
  readonly width: number;
}

/** Marks without figures where there is no room for them: on paper narrower than this [px]. */
const FIGURED_FROM: Readonly<Record<number, number>> = { [1 / 6]: 360, 6: 400, 168: 540, 720: 300 };

/** The curves of what is left of the push, with its band, and of what stays; a dot at the time that is set. */
export const HeldCurves = memo(function HeldCurves({ a, hold, frame, stops, width }: HeldCurvesProps) {
  const id = useId();
  const { box, x, y } = frame;
  const shown = hold.curve.filter(({ hours }) => hours <= 1.2 * (stops.at(-1) ?? 0));
  const place = (hours: number) => x(Math.log10(hours));
  const left = shown.map((held) => ({ x: place(held.hours), y: y(held.left.typical) }));
  const stays = shown.map((held) => ({ x: place(held.hours), y: y(held.stays.typical / a.joint.movement.amount) }));
  const band = shown.map((held) => ({ x: place(held.hours), low: y(held.left.low), high: y(held.left.high) }));
  const ticks = stops.map((stop) => ({
    at: Math.log10(stop),
    text: (FIGURED_FROM[stop] ?? 0) > width ? '' : spanFigure(stop),
  }));
  const own = { x: place(hold.held.hours), y: y(hold.held.left.typical) };
  const wish = (key: string, points: typeof left): LabelWish => ({
    key,
    text: key,
    look: 'ink',
    spots: points.slice(4, -4).flatMap((point) => around(point, 7)),
  });
  const labels = placeLabels(
    [wish(PUSH_LABEL, left), wish(STAYS_LABEL, stays)],
    { inks: [left, stays].flatMap((line) => inkOf(line, box, LINE_WEIGHT)), marks: [markBox(own, 8)] },
    box,
  );
  return (
    <>
      <PlotClip id={id} box={box} />
      <Grid frame={frame} x={ticks} y={QUARTERS} />
      <g clipPath={`url(#${id})`}>
        <path className="chart-total" d={uprightBand(band)} />
        <path className="chart-median" d={pathOf(left)} />
        <path className="chart-median beyond" d={pathOf(stays)} />
      </g>
      <circle className="chart-dot" cx={own.x} cy={own.y} r="4.5" />
      <PlacedLabels labels={labels} />
      <Axes frame={frame} x={ticks} y={QUARTERS} name={HELD_PLOT} />
    </>
  );
});
