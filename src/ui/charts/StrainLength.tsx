import { useMemo } from 'react';
import type { Assessment } from '../../core/design/assessment.ts';
import { AIDS, BY_FORM, countName, FIGURES, HOW_TO_READ, lengthReading } from '../text/chartText.ts';
import { kindText } from '../text/kindText.ts';
import type { LengthUnit } from '../text/numbers.ts';
import { Caption } from './Caption.tsx';
import { Crosshair } from './Crosshair.tsx';
import { askedByLength } from './drag.ts';
import { draggedFigure } from './draggedFigure.ts';
import { frameOf, isNarrow, type Px } from './frame.ts';
import { JointMark } from './JointMark.tsx';
import { lengthCurves, lengthLimits, limitsKept, ownCount, type LengthDomain } from './lengthCurves.ts';
import { LengthTable } from './LengthTable.tsx';
import { StrainLengthPlot } from './StrainLengthPlot.tsx';
import { Surface } from './Surface.tsx';
import { useLengthReading } from './useLengthReading.ts';
import { useSize } from './useSize.ts';
import { useSizing, type Sizing } from './useSizing.ts';

interface StrainLengthProps {
  readonly assessment: Assessment;
  readonly unit: LengthUnit;
  readonly domain: LengthDomain;
  readonly sizing: Sizing;
}

/** Room at the right for “6 layers”. */
const ENDS = 54;

/** Fig. 3: why longer bends live longer. The joint's point can be dragged along its curve, and up or down to another. */
export function StrainLength({ assessment: a, unit, domain, sizing }: StrainLengthProps) {
  const [svg, size] = useSize<SVGSVGElement>();
  const frame = useMemo(
    () => size && frameOf(size, { span: domain.span, kind: 'linear' }, { span: [0, domain.top], kind: 'linear' }, ENDS),
    [size, domain],
  );
  const curves = useMemo(() => lengthCurves(a), [a]);
  const limits = useMemo(() => lengthLimits(a, domain), [a, domain]);
  const reading = useLengthReading({ a, curves, limits, snap: domain.snap });
  const drags = useSizing(sizing);

  const figure = FIGURES.length(kindText(a.joint.family).room.called);
  const from = { length: a.length, count: ownCount(a) };
  const strain = reading.curve.strainAt(reading.length);
  const curve = reading.curve.own ? undefined : countName(reading.curve.count, a.section.countOf);
  const text = lengthReading(reading.length, unit, curve, strain, limitsKept(a, strain));
  const grab = (held: Px) => {
    if (!frame) return;
    const start = { x: frame.x(a.length), y: frame.y(a.strain.peak) };
    const drag = { from, start, frame, snap: domain.snap, limits, curves };
    drags.begin(from, (to) => askedByLength(drag, { x: start.x + to.x - held.x, y: start.y + to.y - held.y }));
  };
  const hands = draggedFigure(drags, reading, frame, from, {
    length: reading.length,
    count: reading.curve.count,
  });
  return (
    <figure className="chart">
      <Caption
        {...figure}
        aid={AIDS.length(a.section.countOf)}
        reading={reading.active || drags.dragging ? text : undefined}
      />
      <Surface
        svg={svg}
        size={size}
        spoken={{
          label: figure.name,
          how: HOW_TO_READ.length,
          min: limits[0],
          max: limits[1],
          now: reading.length,
          text,
        }}
        onGrab={grab}
        onLeave={reading.leave}
        onRelease={drags.end}
        {...hands}
      >
        {frame && (
          <>
            <StrainLengthPlot {...{ a, unit, domain, curves, frame }} narrow={isNarrow(size)} />
            {reading.active && <Crosshair at={{ x: frame.x(reading.length), y: frame.y(strain) }} box={frame.box} />}
            <JointMark at={{ x: frame.x(a.length), y: frame.y(a.strain.peak) }} box={frame.box} grip />
          </>
        )}
      </Surface>
      {domain.byForm && <p className="chart-note">{BY_FORM}</p>}
      <LengthTable {...{ a, unit, domain, curves }} />
    </figure>
  );
}
