import { memo } from 'react';
import type { Assessment } from '../../core/design/assessment.ts';
import type { Joint } from '../../core/design/joint.ts';
import type { Result } from '../../core/result.ts';
import type { LengthUnit } from '../text/numbers.ts';
import './answer.css';
import { RoomToSpare } from './RoomToSpare.tsx';
import { Verdict } from './Verdict.tsx';
import { WaysOut } from './WaysOut.tsx';
import { WorthKnowing } from './WorthKnowing.tsx';

interface Props {
  readonly assessment: Result<Assessment>;
  readonly unit: LengthUnit;
  /** `said` is in the past tense with the old value. */
  readonly onUse: (next: Joint, said: string) => void;
}

type BelowProps = Omit<Props, 'assessment'> & { readonly assessment: Assessment };

const Below = memo(function Below({ assessment, unit, onUse }: BelowProps) {
  const { grade } = assessment.verdict;
  return (
    <>
      {grade === 'pass' && <RoomToSpare assessment={assessment} unit={unit} />}
      {(grade === 'caution' || grade === 'fail') && <WaysOut assessment={assessment} unit={unit} onUse={onUse} />}
      <WorthKnowing notes={assessment.notes} unit={unit} />
    </>
  );
});

/** The answer to the brief: the verdict, then the ways out, or room to spare where it passes. */
export function Answer({ assessment, unit, onUse }: Props) {
  return (
    <div className="answer">
      <Verdict assessment={assessment} unit={unit} />
      {assessment.ok && (
        <div className="ways">
          <Below assessment={assessment.value} unit={unit} onUse={onUse} />
        </div>
      )}
    </div>
  );
}
