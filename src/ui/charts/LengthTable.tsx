import { memo } from 'react';
import type { Assessment } from '../../core/design/assessment.ts';
import { ownName, tableOf } from '../text/chartText.ts';
import { kindText } from '../text/kindText.ts';
import { length, percent, type LengthUnit } from '../text/numbers.ts';
import { lengthLimits, type LengthCurve, type LengthDomain } from './lengthCurves.ts';
import { PointTable } from './PointTable.tsx';
import { lengthTicks } from './ticks.ts';

interface LengthTableProps {
  readonly a: Assessment;
  readonly unit: LengthUnit;
  readonly domain: LengthDomain;
  readonly curves: readonly LengthCurve[];
}

/** Fig. 3 as a table: the joint's own length first, then the lengths figured on the axis. */
export const LengthTable = memo(function LengthTable({ a, unit, domain, curves }: LengthTableProps) {
  const [least, most] = lengthLimits(a, domain);
  const figured = lengthTicks(domain.span, unit, false).map(({ at }) => at);
  const lengths = [a.length, ...figured.filter((at) => at >= least && at <= most && at !== a.length)];
  const { countOf } = a.section;
  const { called } = kindText(a.joint.family).room;
  const heads = curves.map(({ count, own }) => ownName(count, countOf, own && Number.isNaN(count)));
  return (
    <PointTable
      caption={tableOf.length(called)}
      heads={[called, ...heads]}
      rows={lengths.map((at) => [length(at, unit), ...curves.map((curve) => percent(curve.strainAt(at)))])}
    />
  );
});
