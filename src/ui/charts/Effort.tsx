import { useMemo, useState } from 'react';
import type { Assessment } from '../../core/design/assessment.ts';
import { AIDS, effortReading, FIGURES, HOW_TO_READ } from '../text/chartText.ts';
import type { LengthUnit } from '../text/numbers.ts';
import { Caption } from './Caption.tsx';
import { Crosshair } from './Crosshair.tsx';
import { EffortPlot } from './EffortPlot.tsx';
import { effortDomainOf, effortPoint, fromAxis, onAxis } from './effortCurve.ts';
import { EffortTable } from './EffortTable.tsx';
import { clamp, frameOf, isNarrow, type Px } from './frame.ts';
import { evenStops, movedTo, moveOf, snapped } from './stops.ts';
import { Surface } from './Surface.tsx';
import { useSize } from './useSize.ts';

interface EffortProps {
  readonly assessment: Assessment;
  /** How far the scrubber holds it, as a share of the wanted amount. */
  readonly bent: number;
  readonly unit: LengthUnit;
}

/** A pointer reads to a tenth of a degree and keys go in halves [deg]; a hundredth and a twentieth of a mm. */
const GRIDS = { turn: { fine: 0.1, step: 0.5 }, travel: { fine: 0.01, step: 0.05 } } as const;

/** Fig. 4: how hard it pushes back, and from where on it stays bent. */
export function Effort({ assessment: a, bent, unit }: EffortProps) {
  const { measure } = a.drive;
  const { fine, step } = GRIDS[measure];
  const [svg, size] = useSize<SVGSVGElement>();
  const domain = useMemo(() => effortDomainOf(a), [a]);
  const top = onAxis(domain.amount, measure);
  const frame = useMemo(
    () => size && frameOf(size, { span: [0, top], kind: 'linear' }, { span: [0, domain.effort], kind: 'linear' }),
    [size, top, domain.effort],
  );
  const [at, setAt] = useState<number>();
  const now = clamp(at ?? onAxis(bent * a.joint.movement.amount, measure), [0, top]);
  const amount = fromAxis(now, measure);
  const effort = effortPoint(a, amount);
  const text = effortReading(amount, effort, amount > a.overBend.atYield, measure, unit);

  const leave = () => setAt(undefined);
  const point = ({ x: place }: Px) => {
    if (frame) setAt(snapped(frame.x.invert(place), fine, [0, top]));
  };
  const key = (pressed: string, shift: boolean): boolean => {
    const move = moveOf(pressed, shift);
    if (pressed === 'Escape') leave();
    else if (move !== undefined) setAt(movedTo(evenStops([0, top], step), now, move));
    return pressed === 'Escape' || move !== undefined;
  };
  return (
    <figure className="chart">
      <Caption {...FIGURES.effort} aid={AIDS.effort(measure)} reading={at === undefined ? undefined : text} />
      <Surface
        svg={svg}
        size={size}
        spoken={{ label: FIGURES.effort.name, how: HOW_TO_READ.effort, min: 0, max: top, now, text }}
        onPoint={point}
        onLeave={leave}
        onRelease={() => undefined}
        onKey={key}
      >
        {frame && (
          <>
            <EffortPlot {...{ a, bent, domain, frame, unit }} narrow={isNarrow(size)} />
            {at !== undefined && <Crosshair at={{ x: frame.x(now), y: frame.y(effort.typical) }} box={frame.box} />}
          </>
        )}
      </Surface>
      <EffortTable a={a} top={top} unit={unit} />
    </figure>
  );
}
