import { memo, useId } from 'react';
import { drawnCurve, severityAt, type CurveBand, type CurvePoint, type DrawnCurve } from '../../core/life/curveOf.ts';
import { strainFactorAcrossLayers } from '../../core/material/choose.ts';
import type { Anchor } from '../../core/material/evidence.ts';
import { Axes, Grid } from '../charts/Axes.tsx';
import { isInside, type Frame, type Px } from '../charts/frame.ts';
import { Hatch } from '../charts/Hatch.tsx';
import { JointMark } from '../charts/JointMark.tsx';
import { levelBand, pathOf } from '../charts/paths.ts';
import { PlacedLabels } from '../charts/PlacedLabels.tsx';
import { PlotClip } from '../charts/PlotClip.tsx';
import { cycleTicks, logStrainTicks } from '../charts/ticks.ts';
import { AXES } from '../text/chartText.ts';
import { anchorPoint, jointOn, type OnePlotProps } from './onePlot.ts';
import { oneCurveLabels } from './oneCurveLabels.ts';

/** The curve by other exponents, which matter only where the least strain is not nought. */
function byOtherExponents({ row, ratio }: Pick<OnePlotProps, 'row' | 'ratio'>): readonly DrawnCurve[] {
  return ratio === 0 ? [] : [0, 1].map((gamma) => drawnCurve(row.life, severityAt(ratio, gamma)));
}

function Diamond({ at, seen, isBound }: { readonly at: Px; readonly seen: boolean; readonly isBound: boolean }) {
  return (
    <g transform={`translate(${at.x} ${at.y})`}>
      {isBound && <path className="anchor-arrow" d="M6 0H22M17-4 22 0 17 4" />}
      <path className={seen ? 'anchor seen' : 'anchor'} d="M0-6 6 0 0 6-6 0Z" />
    </g>
  );
}

/** A life whose strain nobody saw: a line upright, and arrows to the side where it lies. */
function Bound({ cycles, says, frame: { box, x } }: Pick<Anchor, 'cycles' | 'says'> & { readonly frame: Frame }) {
  const at = x(cycles);
  const to = says === 'fewer' ? -24 : 24;
  const tip = says === 'fewer' ? 5 : -5;
  const heights = [0.05, 0.2, 0.35, 0.5].map((share) => box.top + share * (box.bottom - box.top));
  return (
    <g className="bound">
      <path className="bound-line" d={`M${at} ${box.top}V${box.top + 0.58 * (box.bottom - box.top)}`} />
      {heights.map((y) => (
        <path key={y} className="anchor-arrow" d={`M${at} ${y}h${to}m${tip}-4l${-tip} 4 ${tip} 4`} />
      ))}
    </g>
  );
}

export const OneCurvePlot = memo(function OneCurvePlot(props: OnePlotProps) {
  const { row, drawn, severity, anchors, paper, frame, narrow } = props;
  const { box, x, y } = frame;
  const id = useId();
  const ticks = { x: cycleTicks(paper.cycles, narrow), y: logStrainTicks(paper.strain) };
  const end = row.life.maxReportableCycles;
  const px = ({ cycles, strain }: CurvePoint): Px => ({ x: x(cycles), y: y(strain) });
  const line = (curve: DrawnCurve) => pathOf(curve.median.map(px));
  const band = (edges: readonly CurveBand[]) =>
    levelBand(
      edges.map(({ strain, low, high }) => ({
        y: y(strain),
        low: x(Math.min(low, end)),
        high: x(Math.min(high, end)),
      })),
    );
  const layers = row.printable ? strainFactorAcrossLayers(row).typical : 1;
  const across = layers < 1 ? drawnCurve(row.life, severity / layers) : undefined;
  const hairlines = byOtherExponents(props);
  const joint = jointOn(props);
  const p = row.properties;
  const levels = [p.yieldStrain.typical, p.permissibleStrainRepeated.typical, drawn.firstFlex];
  return (
    <>
      <PlotClip id={`${id}c`} box={box} />
      <Grid frame={frame} {...ticks} />
      <g clipPath={`url(#${id}c)`}>
        <path className="chart-total" d={band(drawn.total)} />
        <path className="chart-scatter" d={band(drawn.scatter)} />
      </g>
      <Hatch id={`${id}h`} frame={frame} from={end} />
      {levels
        .filter((strain) => y(strain) > box.top && y(strain) < box.bottom)
        .map((strain) => (
          <path key={strain} className="chart-limit" d={`M${box.left} ${y(strain)}H${box.right}`} />
        ))}
      <g clipPath={`url(#${id}c)`}>
        {hairlines.map((curve, at) => (
          <path key={at} className="curve-hair" d={line(curve)} />
        ))}
        {across && <path className="curve-across" d={line(across)} />}
        <path className="chart-median" d={line(drawn)} />
      </g>
      {anchors.map((anchor, at) => {
        const point = anchorPoint(anchor, row, severity);
        if (!point) return <Bound key={at} {...anchor} frame={frame} />;
        const place = px(point);
        return (
          isInside(place, box) && <Diamond key={at} at={place} seen={anchor.seen} isBound={anchor.says === 'more'} />
        );
      })}
      {joint && joint.cycles === undefined && (
        <path className="chart-wanted" d={`M${box.left} ${y(joint.strain)}H${box.right}`} />
      )}
      {joint?.cycles !== undefined && <JointMark at={{ x: x(joint.cycles), y: y(joint.strain) }} box={box} />}
      <Axes frame={frame} {...ticks} name={AXES.cycles} />
      <PlacedLabels labels={oneCurveLabels(props, across, hairlines)} />
    </>
  );
});
