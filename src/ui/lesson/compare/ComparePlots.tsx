import { useMemo } from 'react';
import { EFFORT_UNIT } from '../../text/amountText.ts';
import { COMPARE } from '../../text/compareText.ts';
import type { LengthUnit } from '../../text/numbers.ts';
import { LawPlot } from '../demos/LawPlot.tsx';
import { effortPlan, lifePlan, type Lettered } from './plans.ts';

interface Props {
  readonly all: readonly Lettered[];
  readonly unit: LengthUnit;
}

const MEASURES = ['turn', 'travel'] as const;

/** The curves of all on the same axes: lives, and efforts of those that are moved alike. */
export function ComparePlots({ all, unit }: Props) {
  const lives = useMemo(() => lifePlan(all), [all]);
  const efforts = useMemo(
    () => MEASURES.map((measure) => ({ measure, plan: effortPlan(all, measure, unit) })),
    [all, unit],
  );
  const shown = efforts.flatMap(({ measure, plan }) => (plan ? [{ measure, plan }] : []));
  return (
    <div className="compare-plots">
      {lives && (
        <LawPlot
          number={1}
          plan={lives}
          name={COMPARE.lives}
          aid={COMPARE.livesAid}
          across={COMPARE.livesAcross}
          counts=""
          tableHeads={[COMPARE.joint, COMPARE.livesAcross, COMPARE.lives]}
        />
      )}
      {shown.map(({ measure, plan }, i) => (
        <LawPlot
          key={measure}
          number={i + 2}
          plan={plan}
          name={COMPARE.efforts[measure]}
          aid={COMPARE.effortsAid}
          across={
            measure === 'travel' ? `${COMPARE.across.travel}, ${unit === 'mm' ? 'mm' : 'in'}` : COMPARE.across.turn
          }
          counts={EFFORT_UNIT[measure]}
          tableHeads={[COMPARE.joint, COMPARE.across[measure], COMPARE.efforts[measure]]}
        />
      ))}
    </div>
  );
}
