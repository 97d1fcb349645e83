import { useMemo } from 'react';
import type { Assessment } from '../../core/design/assessment.ts';
import { AIDS, effortReading, FIGURES, HOW_TO_READ } from '../text/chartText.ts';
import type { LengthUnit } from '../text/numbers.ts';
import { fromAxis, GRIDS, onAxis } from './amountAxis.ts';
import { AxisFigure } from './AxisFigure.tsx';
import { effortDomainOf, effortPoint } from './effortCurve.ts';
import { EffortPlot } from './EffortPlot.tsx';
import { EffortTable } from './EffortTable.tsx';

interface EffortProps {
  readonly assessment: Assessment;
  /** How far the scrubber holds it, as a share of the wanted amount. */
  readonly bent: number;
  readonly unit: LengthUnit;
}

/** Fig. 4: how hard it pushes back, and from where on it stays bent. */
export function Effort({ assessment: a, bent, unit }: EffortProps) {
  const { measure } = a.drive;
  const domain = useMemo(() => effortDomainOf(a), [a]);
  const top = onAxis(domain.amount, measure);
  const read = (at: number) => {
    const effort = effortPoint(a, fromAxis(at, measure));
    const staysBent = effort.amount > a.overBend.atYield;
    return { text: effortReading(effort.amount, effort, staysBent, measure, unit), height: effort.typical };
  };
  return (
    <AxisFigure
      {...FIGURES.effort}
      aid={AIDS.effort(measure)}
      how={HOW_TO_READ.effort}
      x={[0, top]}
      y={domain.effort.span}
      grid={GRIDS[measure]}
      start={onAxis(bent * a.joint.movement.amount, measure)}
      read={read}
      renderPlot={(frame, narrow) => <EffortPlot {...{ a, bent, domain, frame, narrow, unit }} />}
    >
      <EffortTable a={a} top={top} unit={unit} />
    </AxisFigure>
  );
}
