import { memo, useId, useMemo } from 'react';
import type { Assessment } from '../../core/design/assessment.ts';
import { AXES, countName, ownName } from '../text/chartText.ts';
import { kindText } from '../text/kindText.ts';
import type { LengthUnit } from '../text/numbers.ts';
import { Axes, Grid } from './Axes.tsx';
import type { Frame, Px } from './frame.ts';
import { lengthLabels } from './lengthLabels.ts';
import { heldLimit, lengthLimits, sampled, strainBands, type LengthCurve, type LengthDomain } from './lengthCurves.ts';
import { pathOf } from './paths.ts';
import { PlacedLabels } from './PlacedLabels.tsx';
import { PlotClip } from './PlotClip.tsx';
import { spreadEnds } from './spots.ts';
import { lengthTicks, strainTicks } from './ticks.ts';

interface StrainLengthPlotProps {
  readonly a: Assessment;
  readonly unit: LengthUnit;
  readonly domain: LengthDomain;
  readonly curves: readonly LengthCurve[];
  readonly frame: Frame;
  readonly narrow: boolean;
}

const LABEL_GAP = 12;

interface Drawn {
  readonly curve: LengthCurve;
  readonly points: readonly Px[];
}

function drawn({ a, domain, curves, frame }: StrainLengthPlotProps): readonly Drawn[] {
  const limits = lengthLimits(a, domain);
  return curves.map((curve) => ({
    curve,
    points: sampled(curve, limits).map(({ length, strain }) => ({ x: frame.x(length), y: frame.y(strain) })),
  }));
}

/** Counts at the right ends of their curves, kept apart; the topmost carries the word. */
function Ends({ lines, a, frame: { box } }: { lines: readonly Drawn[]; a: Assessment; frame: Frame }) {
  const ends = lines
    .map(({ curve, points }) => ({ curve, end: points.at(-1) as Px }))
    .filter(({ end }) => end.y >= box.top)
    .toSorted((one, other) => one.end.y - other.end.y);
  const heights = spreadEnds(
    ends.map(({ end }) => end.y + 4),
    LABEL_GAP,
    box.bottom + 6,
  );
  const measured = a.joint.measuredThickness !== undefined;
  return ends.map(({ curve, end }, i) => {
    const y = heights[i] as number;
    const text = curve.own && measured ? 'now' : i === 0 ? countName(curve.count, a.section.countOf) : curve.count;
    return (
      <g key={curve.own ? 'own' : curve.count} className="chart-end">
        {Math.abs(y - 4 - end.y) > 3 && <path d={`M${end.x + 1} ${end.y}L${box.right + 6} ${y - 4}`} />}
        <text className={curve.own ? 'ta' : ''} x={box.right + 8} y={y}>
          {text}
        </text>
      </g>
    );
  });
}

export const StrainLengthPlot = memo(function StrainLengthPlot(props: StrainLengthPlotProps) {
  const { a, unit, domain, frame, narrow } = props;
  const { box, y } = frame;
  const clip = useId();
  const lines = drawn(props);
  const bands = strainBands(a, domain.top);
  const held = heldLimit(a, domain.top);
  const own = ownName(a.section.count, a.section.countOf, a.joint.measuredThickness !== undefined);
  const labels = lengthLabels({ frame, a, unit, own, bands, held, curves: lines.map(({ points }) => points) });
  const ticks = useMemo(
    () => ({ x: lengthTicks(domain.span, unit, narrow), y: strainTicks(domain.top) }),
    [domain, unit, narrow],
  );
  return (
    <>
      <PlotClip id={clip} box={box} />
      <Grid frame={frame} {...ticks} />
      {bands.map(({ name, from, to }) => (
        <g key={name} className={`chart-band ${name}`}>
          <rect x={box.left} y={y(to)} width={box.right - box.left} height={y(from) - y(to)} />
          <path d={`M${box.left} ${y(from)}H${box.right}`} />
        </g>
      ))}
      {held !== undefined && <path className="chart-limit" d={`M${box.left} ${y(held)}H${box.right}`} />}
      <g clipPath={`url(#${clip})`}>
        {lines.map(({ curve, points }) => (
          <path
            key={curve.own ? 'own' : curve.count}
            className={`${curve.own ? 'chart-own' : 'chart-other'}${domain.byForm ? ' by-form' : ''}`}
            d={pathOf(points)}
          />
        ))}
      </g>
      <Ends lines={lines} a={a} frame={frame} />
      <Axes frame={frame} {...ticks} name={AXES.length(unit, kindText(a.joint.family).room.called)} />
      <PlacedLabels labels={labels} />
    </>
  );
});
