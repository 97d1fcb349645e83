import { memo } from 'react';
import type { Assessment } from '../../core/design/assessment.ts';
import { strainSpreadAtCycles } from '../../core/design/curves.ts';
import { tableOf } from '../text/chartText.ts';
import { grouped, percent } from '../text/numbers.ts';
import { cloudText, medianText, OTHER_FILAMENTS, wornText } from '../text/lifeChartText.ts';
import { wornPoint, type FilamentPoint, type LifePoint } from './lifeCurves.ts';
import { PointTable } from './PointTable.tsx';
import { evenStops } from './stops.ts';

interface LifeTableProps {
  readonly a: Assessment;
  readonly filaments: readonly FilamentPoint[];
  readonly cloud: readonly LifePoint[];
}

/** Fig. 2 as a table: the wanted cycles first, then each decade as far as anyone has counted. */
export const LifeTable = memo(function LifeTable({ a, filaments, cloud }: LifeTableProps) {
  const counted = a.filament.life.maxReportableCycles;
  const decades = evenStops([1, Math.log10(counted)], 1).map((power) => 10 ** power);
  const wanted = a.joint.movement.cycles;
  const rows = [...new Set([...(wanted <= counted ? [wanted] : []), ...decades])].map((cycles) => {
    const { low, typical, high } = strainSpreadAtCycles(a, cycles);
    return [grouped(cycles), percent(low), percent(typical), percent(high)];
  });
  const others = filaments.flatMap(({ names, cycles, isPast }) =>
    names.map((name) => [name, medianText(cycles, isPast)]),
  );
  const worn = wornPoint(a);
  return (
    <>
      <PointTable caption={tableOf.life} heads={tableOf.lifeHeads} rows={rows} />
      <PointTable caption={OTHER_FILAMENTS.caption} heads={OTHER_FILAMENTS.heads} rows={others} />
      {worn && <p className="vh">{wornText(worn.cycles, counted)}</p>}
      {cloud.length > 0 && <p className="vh">{cloudText(cloud)}</p>}
    </>
  );
});
