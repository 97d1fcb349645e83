import { useMemo, useState } from 'react';
import type { Assessment } from '../../core/design/assessment.ts';
import type { LengthUnit } from '../text/numbers.ts';
import './charts.css';
import type { LifeDomain } from './domains.ts';
import { Effort } from './Effort.tsx';
import { dragged, lengthDomainOf, type LengthDomain } from './lengthCurves.ts';
import { lifeDomainOf } from './lifeCurves.ts';
import { StrainLength } from './StrainLength.tsx';
import { StrainLife } from './StrainLife.tsx';
import type { Phase } from './useSizing.ts';

interface CurvesProps {
  readonly assessment: Assessment;
  /** How far the scrubber holds it, as a share of the wanted angle. */
  readonly bent: number;
  readonly unit: LengthUnit;
  /** A size is changed on a curve. Two sizes may change one after the other before the next render. */
  readonly onSize: (parameter: string, value: number, phase: Phase) => void;
}

/** The paper of the figure that is being dragged in: it must not move under the hand. */
interface Held {
  readonly life?: LifeDomain;
  readonly length?: LengthDomain;
}

/** Three figures of one joint: strain against life, strain against flexing length, effort against movement. */
export function Curves({ assessment, bent, unit, onSize }: CurvesProps) {
  const [held, setHeld] = useState<Held>({});
  const usualLife = useMemo(() => lifeDomainOf(assessment), [assessment]);
  const usualLength = useMemo(() => lengthDomainOf(assessment, unit), [assessment, unit]);
  const life = held.life ?? usualLife;
  const length = held.length ?? usualLength;
  const names = dragged(assessment);
  return (
    <section className="curves" aria-label="Curves">
      <StrainLife
        assessment={assessment}
        unit={unit}
        domain={life}
        sizing={{ names, onSize, onHold: (hold) => setHeld(hold ? { life } : {}) }}
      />
      <StrainLength
        assessment={assessment}
        unit={unit}
        domain={length}
        sizing={{ names, onSize, onHold: (hold) => setHeld(hold ? { length } : {}) }}
      />
      <Effort assessment={assessment} bent={bent} unit={unit} />
    </section>
  );
}
