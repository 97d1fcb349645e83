import { memo, useId } from 'react';
import { AXES } from '../../text/chartText.ts';
import type { LengthUnit } from '../../text/numbers.ts';
import { onAxis } from '../amountAxis.ts';
import { Axes, Grid } from '../Axes.tsx';
import type { Frame, Px, Span } from '../frame.ts';
import { JointMark } from '../JointMark.tsx';
import { levelMarks, type Level } from '../levels.ts';
import { pathOf, uprightBand } from '../paths.ts';
import { PlacedLabels } from '../PlacedLabels.tsx';
import { PlotClip } from '../PlotClip.tsx';
import { BallMarks } from './BallMarks.tsx';
import type { FormPoint } from './byForm.ts';
import { effortWayLabels } from './effortWayLabels.ts';
import { Jump } from './Jump.tsx';
import type { WayMark } from './marks.ts';
import { amountMarks } from './spans.ts';
import { Stretches } from './Stretches.tsx';
import { pullingSpans, readWay, runsOf, staysBentSpans, wantedLevels, whole, type Answered, type Way } from './way.ts';

interface EffortWayPlotProps {
  readonly a: Answered;
  readonly way: Way;
  readonly marks: readonly WayMark[];
  readonly touching: readonly Span[];
  readonly shown: number;
  readonly byForm: readonly FormPoint[];
  readonly level: Level;
  readonly span: Span;
  readonly frame: Frame;
  readonly narrow: boolean;
  readonly unit: LengthUnit;
}

export const EffortWayPlot = memo(function EffortWayPlot(props: EffortWayPlotProps) {
  const { a, way, marks, touching, shown, byForm, level, span, frame, narrow, unit } = props;
  const { box, y } = frame;
  const { measure } = a.drive;
  const id = useId();
  const clip = `url(#${id}c)`;
  const x = (amount: number) => frame.x(onAxis(amount, measure));
  const place = ({ amount, typical }: { readonly amount: number; readonly typical: number }): Px => ({
    x: x(amount),
    y: y(typical),
  });
  const all = whole(way);
  const runs = [...runsOf(way.back), ...runsOf(way.forward)];
  const form = byForm.map(({ amount, effort }) => place({ amount, typical: effort }));
  const ticks = { x: amountMarks(span, measure, unit, narrow), y: levelMarks(level) };
  const now = readWay(way, shown);
  const at = place(now);
  const placed = (marks.length > 1 ? marks : []).map((mark) => ({ ...mark, x: x(mark.amount), y: y(mark.effort) }));
  const zero = y(0);
  const labels = effortWayLabels({
    frame,
    a,
    now,
    at,
    all: all.map(place),
    form,
    marks: placed,
    touching,
    unit,
    narrow,
    x,
  });
  return (
    <>
      <PlotClip id={`${id}c`} box={box} />
      {pullingSpans(way).map(([from, to]) => (
        <rect
          key={from}
          className="chart-pulls"
          x={x(from)}
          width={x(to) - x(from)}
          y={from < 0 ? box.top : zero}
          height={from < 0 ? zero - box.top : box.bottom - zero}
        />
      ))}
      <Grid frame={frame} {...ticks} />
      <path
        className="chart-total"
        clipPath={clip}
        d={uprightBand(all.map(({ amount, low, high }) => ({ x: x(amount), low: y(low), high: y(high) })))}
      />
      <Stretches
        frame={frame}
        spans={[...staysBentSpans(a, way), ...touching].map(([from, to]): Span => [
          onAxis(from, measure),
          onAxis(to, measure),
        ])}
      />
      <path className="chart-zero" d={`M${box.left} ${zero}H${box.right}M${x(0)} ${box.top}V${box.bottom}`} />
      <g clipPath={clip}>
        <path className="chart-form" d={pathOf(form)} />
        {runs.map(({ holds, points }, i) => (
          // Runs come anew with each answer and are known by their order on the way.
          <path key={i} className={holds ? 'chart-median' : 'chart-guided'} d={pathOf(points.map(place))} />
        ))}
      </g>
      <path
        className="chart-wanted"
        clipPath={clip}
        d={wantedLevels(a)
          .map((effort) => `M${box.left} ${y(effort)}H${box.right}`)
          .join('')}
      />
      {placed.map(
        ({ jump, amount, x: from, y: height }) =>
          jump !== undefined && <Jump key={amount} from={from} to={jump === 'end' ? box.right : x(jump)} y={height} />,
      )}
      <Axes frame={frame} {...ticks} name={AXES.amount(measure, unit)} />
      <BallMarks marks={placed} />
      <PlacedLabels labels={labels} />
      <JointMark at={at} box={box} />
    </>
  );
});
