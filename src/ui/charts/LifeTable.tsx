import { memo } from 'react';
import type { Assessment } from '../../core/design/assessment.ts';
import { strainSpreadAtCycles } from '../../core/design/curves.ts';
import { tableOf } from '../text/chartText.ts';
import { grouped, percent } from '../text/numbers.ts';
import { PointTable } from './PointTable.tsx';
import { evenStops } from './stops.ts';

/** Fig. 2 as a table: the wanted cycles first, then each decade as far as anyone has counted. */
export const LifeTable = memo(function LifeTable({ a }: { readonly a: Assessment }) {
  const counted = a.filament.life.maxReportableCycles;
  const decades = evenStops([1, Math.log10(counted)], 1).map((power) => 10 ** power);
  const wanted = a.joint.movement.cycles;
  const rows = [...new Set([...(wanted <= counted ? [wanted] : []), ...decades])].map((cycles) => {
    const { low, typical, high } = strainSpreadAtCycles(a, cycles);
    return [grouped(cycles), percent(low), percent(typical), percent(high)];
  });
  return <PointTable caption={tableOf.life} heads={tableOf.lifeHeads} rows={rows} />;
});
