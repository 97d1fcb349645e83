import { useId } from 'react';
import { pushLeft } from '../../core/life/relaxation.ts';
import type { WholeFilament } from '../../core/material/types.ts';
import { Axes, Grid } from '../charts/Axes.tsx';
import type { Frame, Span } from '../charts/frame.ts';
import { pathOf, uprightBand } from '../charts/paths.ts';
import { PlotClip } from '../charts/PlotClip.tsx';
import { PointTable } from '../charts/PointTable.tsx';
import { QUARTERS } from '../charts/ticks.ts';
import { FIGURE_TWO, leftReading } from '../text/filamentText.ts';
import { share } from '../text/numbers.ts';
import { spanFigure, spanText } from '../text/countText.ts';
import { LogFigure } from './LogFigure.tsx';

const DAY = 1440;
/** A minute to three months. */
const TIMES: Span = [1, 129_600];
const SHARES: Span = [0, 1];
/** Where keys stop, and what the table tells. */
const STOPS: readonly number[] = [
  1,
  2,
  5,
  10,
  30,
  60,
  120,
  360,
  720,
  DAY,
  2 * DAY,
  4 * DAY,
  10_080,
  20_160,
  43_200,
  86_400,
  129_600,
];
const TOLD: readonly number[] = [1, 60, DAY, 10_080, 43_200, 129_600];
/** Of these, what has room for its words under the axis. */
const FIGURED: readonly number[] = [1, 60, DAY, 10_080, 129_600];
const SAMPLES = 40;

const nearest = (minutes: number) =>
  STOPS.reduce((best, stop) => (Math.abs(Math.log(stop / minutes)) < Math.abs(Math.log(best / minutes)) ? stop : best));

function Plot({
  row,
  frame,
  narrow,
}: {
  readonly row: WholeFilament;
  readonly frame: Frame;
  readonly narrow: boolean;
}) {
  const id = useId();
  const { box, x, y } = frame;
  const exponent = row.properties.relaxationExponent;
  const times = Array.from({ length: SAMPLES }, (_, i) => TIMES[1] ** (i / (SAMPLES - 1)));
  const left = times.map((minutes) => ({ minutes, ...pushLeft(minutes, exponent) }));
  const day = pushLeft(DAY, exponent);
  const ticks = {
    x: TOLD.map((at) => ({ at, text: FIGURED.includes(at) && !(narrow && at === 60) ? spanFigure(at / 60) : '' })),
    y: QUARTERS,
  };
  return (
    <>
      <PlotClip id={`${id}c`} box={box} />
      <Grid frame={frame} {...ticks} />
      <g clipPath={`url(#${id}c)`}>
        <path
          className="chart-total"
          d={uprightBand(left.map(({ minutes, least, most }) => ({ x: x(minutes), low: y(least), high: y(most) })))}
        />
        <path className="chart-median" d={pathOf(left.map(({ minutes, usual }) => ({ x: x(minutes), y: y(usual) })))} />
      </g>
      <circle className="I" cx={x(DAY)} cy={y(day.usual)} r="3.2" />
      <text className="halo s12" x={x(DAY)} y={y(day.least) + 20} textAnchor="middle">
        {share(day.usual)} after a day
      </text>
      <Axes frame={frame} {...ticks} name="held for" />
    </>
  );
}

/** Fig. 2: how much of its push a spring of it keeps. */
export function PushLeftFigure({ row }: { readonly row: WholeFilament }) {
  const exponent = row.properties.relaxationExponent;
  const read = (minutes: number) => {
    const left = pushLeft(minutes, exponent);
    return { text: leftReading(minutes, left), heights: [left.usual] };
  };
  return (
    <LogFigure
      number={2}
      name={FIGURE_TWO.name}
      aid={FIGURE_TWO.aid}
      how={FIGURE_TWO.keys}
      x={TIMES}
      y={SHARES}
      up="linear"
      right={() => 30}
      stops={STOPS}
      start={DAY}
      snap={nearest}
      read={read}
      renderPlot={(frame, narrow) => <Plot {...{ row, frame, narrow }} />}
    >
      <PointTable
        caption={FIGURE_TWO.table}
        heads={FIGURE_TWO.heads}
        rows={TOLD.map((minutes) => {
          const { usual, least, most } = pushLeft(minutes, exponent);
          return [spanText(minutes / 60), share(usual), share(least), share(most)];
        })}
      />
    </LogFigure>
  );
}
