import { memo } from 'react';
import type { Assessment } from '../../../core/design/assessment.ts';
import type { Joint } from '../../../core/design/joint.ts';
import { LifeSheet } from '../../life/LifeSheet.tsx';
import type { LengthUnit } from '../../text/numbers.ts';
import './match.css';
import { Tuning } from './Tuning.tsx';

interface Props {
  readonly joint: Joint;
  /** Of this joint, or for a moment of the one before it. */
  readonly assessment: Assessment;
  /** As the curves have it: of this joint, or, while `isWorking`, of one before it. */
  readonly charted: Assessment | undefined;
  readonly isWorking: boolean;
  readonly unit: LengthUnit;
  readonly onChange: (next: Joint, said: string, run?: string) => void;
}

const Tuned = memo(Tuning);
const Life = memo(LifeSheet);

/** What stands under the curves: what would change how it feels, and how it is used. */
export function UnderCurves({ joint, assessment, charted, isWorking, unit, onChange }: Props) {
  return (
    <div className="under-curves">
      {charted && <Tuned assessment={charted} isWorking={isWorking} unit={unit} onUse={onChange} />}
      <Life joint={joint} assessment={assessment} unit={unit} onChange={onChange} />
    </div>
  );
}
