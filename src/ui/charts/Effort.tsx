import { useMemo, useState } from 'react';
import type { Assessment } from '../../core/design/assessment.ts';
import { asRad, degrees, radians } from '../../core/units.ts';
import { AIDS, effortReading, FIGURES, HOW_TO_READ } from '../text/chartText.ts';
import { Caption } from './Caption.tsx';
import { Crosshair } from './Crosshair.tsx';
import { EffortPlot } from './EffortPlot.tsx';
import { effortDomainOf, effortPoint } from './effortCurve.ts';
import { EffortTable } from './EffortTable.tsx';
import { clamp, frameOf, isNarrow, type Px } from './frame.ts';
import { evenStops, movedTo, moveOf, snapped } from './stops.ts';
import { Surface } from './Surface.tsx';
import { useSize } from './useSize.ts';

interface EffortProps {
  readonly assessment: Assessment;
  /** How far the scrubber holds it, as a share of the wanted angle. */
  readonly bent: number;
}

/** A pointer reads to a tenth of a degree, keys go in halves [deg]. */
const FINE = 0.1;
const STEP = 0.5;

/** Fig. 4: how hard it pushes back, and from where on it stays bent. */
export function Effort({ assessment: a, bent }: EffortProps) {
  const [svg, size] = useSize<SVGSVGElement>();
  const domain = useMemo(() => effortDomainOf(a), [a]);
  const topDeg = degrees(domain.angle);
  const frame = useMemo(
    () => size && frameOf(size, { span: [0, topDeg], kind: 'linear' }, { span: [0, domain.torque], kind: 'linear' }),
    [size, topDeg, domain.torque],
  );
  const [at, setAt] = useState<number>();
  const angleDeg = clamp(at ?? degrees(asRad(bent * a.joint.movement.angle)), [0, topDeg]);
  const angle = radians(angleDeg);
  const effort = effortPoint(a, angle);
  const text = effortReading(angle, effort, angle > a.overBend.atYield);

  const leave = () => setAt(undefined);
  const point = ({ x: place }: Px) => {
    if (frame) setAt(snapped(frame.x.invert(place), FINE, [0, topDeg]));
  };
  const key = (pressed: string, shift: boolean): boolean => {
    const move = moveOf(pressed, shift);
    if (pressed === 'Escape') leave();
    else if (move !== undefined) setAt(movedTo(evenStops([0, topDeg], STEP), angleDeg, move));
    return pressed === 'Escape' || move !== undefined;
  };
  return (
    <figure className="chart">
      <Caption {...FIGURES.effort} aid={AIDS.effort()} reading={at === undefined ? undefined : text} />
      <Surface
        svg={svg}
        size={size}
        spoken={{ label: FIGURES.effort.name, how: HOW_TO_READ.effort, min: 0, max: topDeg, now: angleDeg, text }}
        onPoint={point}
        onLeave={leave}
        onRelease={() => undefined}
        onKey={key}
      >
        {frame && (
          <>
            <EffortPlot {...{ a, bent, domain, frame }} narrow={isNarrow(size)} />
            {at !== undefined && (
              <Crosshair at={{ x: frame.x(angleDeg), y: frame.y(effort.typical) }} box={frame.box} />
            )}
          </>
        )}
      </Surface>
      <EffortTable a={a} topDeg={topDeg} />
    </figure>
  );
}
