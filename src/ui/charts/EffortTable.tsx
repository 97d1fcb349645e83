import { memo } from 'react';
import type { Assessment } from '../../core/design/assessment.ts';
import { radians } from '../../core/units.ts';
import { tableOf } from '../text/chartText.ts';
import { angle, torque } from '../text/numbers.ts';
import { effortPoint } from './effortCurve.ts';
import { PointTable } from './PointTable.tsx';
import { angleTicks } from './ticks.ts';

interface EffortTableProps {
  readonly a: Assessment;
  readonly topDeg: number;
}

/** Fig. 4 as a table: the wanted angle first, then the angles figured on the axis. */
export const EffortTable = memo(function EffortTable({ a, topDeg }: EffortTableProps) {
  const wanted = a.joint.movement.angle;
  const figured = angleTicks(topDeg, false).map(({ at }) => radians(at));
  const rows = [wanted, ...figured.filter((at) => Math.abs(at - wanted) > 1e-9)].map((at) => {
    const { typical, low, high } = effortPoint(a, at);
    return [angle(at), torque(typical), torque(low), torque(high)];
  });
  return <PointTable caption={tableOf.effort} heads={tableOf.effortHeads} rows={rows} />;
});
