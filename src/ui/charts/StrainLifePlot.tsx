import { memo, useId, useMemo } from 'react';
import type { Assessment } from '../../core/design/assessment.ts';
import { strainAtCycles } from '../../core/design/curves.ts';
import { AXES } from '../text/chartText.ts';
import { Axes, Grid } from './Axes.tsx';
import type { LifeDomain } from './domains.ts';
import { isInside, type Frame } from './frame.ts';
import { Hatch } from './Hatch.tsx';
import { lifeLabels } from './lifeLabels.ts';
import {
  countPoints,
  lifeCurves,
  lifeLimits,
  type FilamentPoint,
  type LifeBand,
  type LifePoint,
} from './lifeCurves.ts';
import { levelBand, pathOf } from './paths.ts';
import { PlacedLabels } from './PlacedLabels.tsx';
import { PlotClip } from './PlotClip.tsx';
import { cycleTicks, logStrainTicks } from './ticks.ts';

interface StrainLifePlotProps {
  readonly a: Assessment;
  readonly domain: LifeDomain;
  readonly frame: Frame;
  readonly narrow: boolean;
  readonly filaments: readonly FilamentPoint[];
  /** Prints of the joint as they may come out. */
  readonly cloud: readonly LifePoint[];
}

export const StrainLifePlot = memo(function StrainLifePlot(props: StrainLifePlotProps) {
  const { a, domain, frame, narrow, filaments, cloud } = props;
  const { box, x, y } = frame;
  const id = useId();
  const curves = useMemo(() => lifeCurves(a, domain.cycles), [a, domain]);
  const counts = useMemo(() => countPoints(a), [a]);
  const limits = lifeLimits(a, domain.strain);
  const labels = lifeLabels({ frame, a, curves, counts, limits, filaments });
  const ticks = { x: cycleTicks(domain.cycles, narrow), y: logStrainTicks(domain.strain) };

  const end = a.filament.life.maxReportableCycles;
  const last: LifePoint = { cycles: end, strain: strainAtCycles(a, end) };
  const line = (points: readonly LifePoint[]) => pathOf(points.map((one) => ({ x: x(one.cycles), y: y(one.strain) })));
  const counted = line([...curves.median.filter(({ cycles }) => cycles < end), last]);
  const beyond = line([last, ...curves.median.filter(({ cycles }) => cycles > end)]);
  const band = (edges: readonly LifeBand[]) =>
    levelBand(edges.map(({ strain, low, high }) => ({ y: y(strain), low: x(low), high: x(high) })));
  const dots = (points: readonly LifePoint[]) =>
    points.map(({ cycles, strain }) => `M${x(cycles).toFixed(1)} ${y(strain).toFixed(1)}h0`).join('');
  const wanted = x(a.joint.movement.cycles);
  return (
    <>
      <PlotClip id={`${id}c`} box={box} />
      <Grid frame={frame} {...ticks} />
      <g clipPath={`url(#${id}c)`}>
        <path className="chart-total" d={band(curves.total)} />
        <path className="chart-scatter" d={band(curves.scatter)} />
      </g>
      <Hatch id={`${id}h`} frame={frame} from={end} />
      {limits.map(({ name, strain }) => (
        <path key={name} className="chart-limit" d={`M${box.left} ${y(strain)}H${box.right}`} />
      ))}
      <g clipPath={`url(#${id}c)`}>
        <path className="chart-median" d={counted} />
        <path className="chart-median beyond" d={beyond} />
      </g>
      <g clipPath={`url(#${id}c)`}>
        <path className="chart-cloud" d={dots(cloud.filter(({ cycles }) => cycles > 0 && cycles <= end))} />
      </g>
      {wanted <= box.right && <path className="chart-wanted" d={`M${wanted} ${box.top}V${box.bottom}`} />}
      {counts.map(({ count, cycles, strain }) => {
        const at = { x: x(cycles), y: y(strain) };
        return isInside(at, box) && <circle key={count} className="chart-count" cx={at.x} cy={at.y} r="3.4" />;
      })}
      {filaments.map(({ ids, cycles, strain, isPast }) => {
        const at = { x: x(cycles), y: y(strain) };
        // A square; what lasts past the data has a stroke that goes on.
        const shape = `M${at.x - 3.5} ${at.y - 3.5}h7v7h-7Z${isPast ? `m7 3.5h7` : ''}`;
        return isInside(at, box) && <path key={ids.join()} className="chart-filament" d={shape} />;
      })}
      <Axes frame={frame} {...ticks} name={AXES.cycles} />
      <PlacedLabels labels={labels} />
    </>
  );
});
