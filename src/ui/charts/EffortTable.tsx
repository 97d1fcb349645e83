import { memo } from 'react';
import type { Assessment } from '../../core/design/assessment.ts';
import { amountText, effortText } from '../text/amountText.ts';
import { tableOf } from '../text/chartText.ts';
import type { LengthUnit } from '../text/numbers.ts';
import { fromAxis } from './amountAxis.ts';
import { effortPoint } from './effortCurve.ts';
import { PointTable } from './PointTable.tsx';
import { amountTicks } from './ticks.ts';

interface EffortTableProps {
  readonly a: Assessment;
  /** End of the axis, in degrees or mm. */
  readonly top: number;
  readonly unit: LengthUnit;
}

/** Fig. 4 as a table: the wanted amount first, then those figured on the axis. */
export const EffortTable = memo(function EffortTable({ a, top, unit }: EffortTableProps) {
  const { measure } = a.drive;
  const wanted = a.joint.movement.amount;
  const figured = amountTicks(top, measure, unit, false).map(({ at }) => fromAxis(at, measure));
  const rows = [wanted, ...figured.filter((at) => Math.abs(at - wanted) > 1e-9)].map((at) => {
    const { typical, low, high } = effortPoint(a, at);
    return [amountText(at, measure, unit), ...[typical, low, high].map((effort) => effortText(effort, measure))];
  });
  return <PointTable caption={tableOf.effort(measure)} heads={tableOf.effortHeads(measure)} rows={rows} />;
});
