import { useMemo } from 'react';
import type { LengthUnit } from '../../text/numbers.ts';
import { signedAmount, SOLVED_HOW } from '../../text/solvedChartText.ts';
import { fromAxis, GRIDS, onAxis } from '../amountAxis.ts';
import { AxisFigure } from '../AxisFigure.tsx';
import { PointTable } from '../PointTable.tsx';
import { ChartNote } from './ChartNote.tsx';
import { amountMarks, amountSpan } from './spans.ts';
import type { Answered, Way } from './way.ts';
import type { WayCurve } from './wayCurve.ts';
import { WayCurvePlot } from './WayCurvePlot.tsx';

interface WayCurveProps {
  readonly number: number;
  readonly a: Answered;
  readonly way: Way;
  readonly curve: WayCurve;
  /** The amount at which the joint is shown. */
  readonly shown: number;
  readonly unit: LengthUnit;
}

/** A curve along the way of a joint, whatever it tells. */
export function WayCurveFigure({ number, a, way, curve, shown, unit }: WayCurveProps) {
  const { measure } = a.drive;
  const { name, aid, level, note, table, valueAt } = curve;
  const span = useMemo(() => amountSpan(way, measure), [way, measure]);
  const read = (at: number) => {
    const amount = fromAxis(at, measure);
    const value = valueAt(amount);
    const height = value !== undefined && value >= 0 ? { height: value } : {};
    return { text: curve.reading(amount, value), ...height };
  };
  const figured = amountMarks(span, measure, unit, false).map(({ at }) => {
    const amount = fromAxis(at, measure);
    return [signedAmount(amount, measure, unit), table.cell(valueAt(amount))];
  });
  return (
    <AxisFigure
      {...{ number, name, aid, read }}
      how={SOLVED_HOW.way}
      x={span}
      y={level.span}
      grid={GRIDS[measure]}
      start={onAxis(shown, measure)}
      renderPlot={(frame, narrow) => <WayCurvePlot {...{ curve, measure, shown, span, frame, narrow, unit }} />}
    >
      <ChartNote {...note} />
      <PointTable caption={table.caption} heads={table.heads} rows={[...table.first, ...figured]} />
    </AxisFigure>
  );
}
