import { memo, useId } from 'react';
import type { CurveBand, CurvePoint, DrawnCurve } from '../../../core/life/curveOf.ts';
import { Axes, Grid } from '../../charts/Axes.tsx';
import { isInside, type Box, type Frame, type Px } from '../../charts/frame.ts';
import { Hatch } from '../../charts/Hatch.tsx';
import { JointMark } from '../../charts/JointMark.tsx';
import { levelBand, pathOf } from '../../charts/paths.ts';
import { PlacedLabels } from '../../charts/PlacedLabels.tsx';
import { PlotClip } from '../../charts/PlotClip.tsx';
import { cycleTicks, logStrainTicks } from '../../charts/ticks.ts';
import { AXES } from '../../text/chartText.ts';
import { learnedLabels } from './learnedLabels.ts';
import type { LearnedPlan, StripPoint } from './learnedPlan.ts';

interface Props {
  readonly plan: LearnedPlan;
  readonly frame: Frame;
  readonly narrow: boolean;
}

/** Broken: a filled diamond; still whole: a ring with an arrow to more; far from the others: ringed. */
function Strip({ strip, at }: { readonly strip: StripPoint; readonly at: Px }) {
  return (
    <g className="strip-point" transform={`translate(${at.x} ${at.y})`}>
      {strip.isOdd && <circle className="odd-ring" r="9.5" />}
      {strip.ended === 'broke' ? (
        <path className="broke" d="M0-5 5 0 0 5-5 0Z" />
      ) : (
        <>
          <path className="more" d="M4.5 0H17M13-3.5 17 0 13 3.5" />
          <circle className="whole" r="4" />
        </>
      )}
    </g>
  );
}

function edges(curve: DrawnCurve, { x, y }: Frame) {
  const line = (which: 'low' | 'high') =>
    pathOf(curve.total.map((edge: CurveBand) => ({ x: x(Math.max(edge[which], 1e-3)), y: y(edge.strain) })));
  return `${line('low')}${line('high')}`;
}

function bandOf(curve: DrawnCurve, { x, y }: Frame): string {
  return levelBand(
    curve.total.map(({ strain, low, high }) => ({ y: y(strain), low: x(Math.max(low, 1e-3)), high: x(high) })),
  );
}

export const LearnedPlot = memo(function LearnedPlot({ plan, frame, narrow }: Props) {
  const { box, x, y } = frame;
  const id = useId();
  const { before, after, domain, strips, wanted, joint, prior } = plan;
  const ticks = { x: cycleTicks(domain.cycles, narrow), y: logStrainTicks(domain.strain) };
  const line = (curve: DrawnCurve) =>
    pathOf(curve.median.map((one: CurvePoint) => ({ x: x(one.cycles), y: y(one.strain) })));
  const end = (after ? plan.row : prior).life.maxReportableCycles;
  const isOn = (cycles: number, strain: number, on: Box) => isInside({ x: x(cycles), y: y(strain) }, on);
  return (
    <>
      <PlotClip id={`${id}c`} box={box} />
      <Grid frame={frame} {...ticks} />
      <g clipPath={`url(#${id}c)`}>
        <path className={after ? 'before-band' : 'chart-total'} d={bandOf(before, frame)} />
        {after && <path className="after-band" d={bandOf(after, frame)} />}
        {after && <path className="before-edge" d={edges(before, frame)} />}
        {after && <path className="after-edge" d={edges(after, frame)} />}
      </g>
      <Hatch id={`${id}h`} frame={frame} from={end} />
      <g clipPath={`url(#${id}c)`}>
        <path className={after ? 'chart-median beyond thin' : 'chart-median'} d={line(before)} />
        {after && <path className="chart-median" d={line(after)} />}
      </g>
      {wanted !== undefined && x(wanted) >= box.left && x(wanted) <= box.right && (
        <path className="chart-wanted" d={`M${x(wanted)} ${box.top}V${box.bottom}`} />
      )}
      {strips.map(
        (strip) =>
          isOn(strip.cycles, strip.strain, box) && (
            <Strip key={strip.id} strip={strip} at={{ x: x(strip.cycles), y: y(strip.strain) }} />
          ),
      )}
      {joint && joint.life.wear[0].median > 0 && (
        <JointMark at={{ x: x(Math.min(joint.life.wear[0].median, end)), y: y(joint.strain.peak) }} box={box} />
      )}
      <Axes frame={frame} {...ticks} name={AXES.cycles} />
      <PlacedLabels labels={learnedLabels(plan, frame)} />
    </>
  );
});
