import { memo, useId } from 'react';
import type { Assessment } from '../../core/design/assessment.ts';
import { AXES } from '../text/chartText.ts';
import type { LengthUnit } from '../text/numbers.ts';
import { onAxis } from './amountAxis.ts';
import { Axes, Grid } from './Axes.tsx';
import { effortLabels } from './effortLabels.ts';
import { effortCurve, effortPoint, type EffortDomain, type EffortPoint } from './effortCurve.ts';
import type { Frame } from './frame.ts';
import { Hatch } from './Hatch.tsx';
import { JointMark } from './JointMark.tsx';
import { levelMarks } from './levels.ts';
import { offChart } from './spots.ts';
import { pathOf, uprightBand } from './paths.ts';
import { PlacedLabels } from './PlacedLabels.tsx';
import { PlotClip } from './PlotClip.tsx';
import { amountTicks } from './ticks.ts';

interface EffortPlotProps {
  readonly a: Assessment;
  readonly bent: number;
  readonly domain: EffortDomain;
  readonly frame: Frame;
  readonly narrow: boolean;
  readonly unit: LengthUnit;
}

export const EffortPlot = memo(function EffortPlot({ a, bent, domain, frame, narrow, unit }: EffortPlotProps) {
  const { box, y } = frame;
  const { measure } = a.drive;
  const x = (amount: number) => frame.x(onAxis(amount, measure));
  const id = useId();
  const { wanted, beyond, past } = effortCurve(a, domain);
  const all = [...wanted, ...beyond, ...past];
  const now = effortPoint(a, bent * a.joint.movement.amount);
  const labels = effortLabels({ frame, a, bent: now, points: all, unit });
  const ticks = {
    x: amountTicks(onAxis(domain.amount, measure), measure, unit, narrow),
    y: levelMarks(domain.effort),
  };

  const across = (point: EffortPoint) => x(point.amount);
  const line = (points: readonly EffortPoint[]) =>
    pathOf(points.map((point) => ({ x: across(point), y: y(point.typical) })));
  const band = uprightBand(all.map((point) => ({ x: across(point), low: y(point.low), high: y(point.high) })));
  const at = { x: across(now), y: y(now.typical) };
  const mark = offChart(at, box)?.at ?? at;
  const goal = x(a.joint.movement.amount);
  return (
    <>
      <PlotClip id={`${id}c`} box={box} />
      <Grid frame={frame} {...ticks} />
      <path className="chart-total" clipPath={`url(#${id}c)`} d={band} />
      <Hatch id={`${id}h`} frame={frame} from={onAxis(a.overBend.atYield, measure)} />
      <g clipPath={`url(#${id}c)`}>
        <path className="chart-median" d={line(wanted)} />
        <path className="chart-median beyond" d={line(beyond)} />
        <path className="chart-median past" d={line(past)} />
      </g>
      {a.overBend.atSet < domain.amount && (
        <path className="chart-limit" d={`M${x(a.overBend.atSet)} ${box.top}V${box.bottom}`} />
      )}
      <path className="chart-wanted" d={`M${mark.x} ${box.bottom}V${mark.y}H${box.left}`} />
      <Axes frame={frame} {...ticks} name={AXES.amount(measure, unit)} />
      <path className="chart-head" d={`M${goal} ${box.bottom}l-4.5 -8h9Z`} />
      <PlacedLabels labels={labels} />
      <JointMark at={at} box={box} />
    </>
  );
});
