import type { Assessment } from '../../../core/design/assessment.ts';
import type { Joint } from '../../../core/design/joint.ts';
import type { LengthUnit } from '../../text/numbers.ts';
import { Nudges } from '../nudges/Nudges.tsx';
import { MatchEffort } from './MatchEffort.tsx';

interface Props {
  readonly assessment: Assessment;
  /** The assessment is of the joint before, until the solver has answered. */
  readonly isWorking: boolean;
  readonly unit: LengthUnit;
  readonly onUse: (next: Joint, said: string) => void;
}

/** A joint brought to a feel: what would give it an effort, and what small changes of it do. */
export function Tuning({ assessment: a, isWorking, unit, onUse }: Props) {
  const { id, movement } = a.joint;
  return (
    <div className="tuning">
      <MatchEffort key={`${id} ${movement.drive}`} {...{ isWorking, unit, onUse }} assessment={a} />
      <Nudges assessment={a} isWorking={isWorking} unit={unit} />
    </div>
  );
}
