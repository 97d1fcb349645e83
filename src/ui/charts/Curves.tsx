import { useMemo } from 'react';
import type { Assessment } from '../../core/design/assessment.ts';
import type { LengthUnit } from '../text/numbers.ts';
import { Effort } from './Effort.tsx';
import { lengthDomainOf } from './lengthCurves.ts';
import { lifeDomainOf } from './lifeCurves.ts';
import { StrainFigures } from './StrainFigures.tsx';
import type { Sizing } from './useSizing.ts';

export interface CurvesProps extends Pick<Sizing, 'onSize'> {
  readonly assessment: Assessment;
  /** How far the scrubber holds it, as a share of the wanted amount. */
  readonly bent: number;
  readonly unit: LengthUnit;
}

/** Three figures of one joint: strain against life, strain against flexing length, effort against movement. */
export function Curves({ assessment, bent, unit, onSize }: CurvesProps) {
  const life = useMemo(() => lifeDomainOf(assessment), [assessment]);
  const length = useMemo(() => lengthDomainOf(assessment, unit), [assessment, unit]);
  return (
    <section className="curves" aria-label="Curves">
      <StrainFigures {...{ assessment, unit, life, length, onSize }} />
      <Effort assessment={assessment} bent={bent} unit={unit} />
    </section>
  );
}
