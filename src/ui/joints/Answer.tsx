import { lazy, memo } from 'react';
import type { Assessment } from '../../core/design/assessment.ts';
import type { Joint } from '../../core/design/joint.ts';
import type { Result } from '../../core/result.ts';
import type { LengthUnit } from '../text/numbers.ts';
import { Late } from '../app/Late.tsx';
import './answer.css';
import { firstScreenStands } from './firstScreen.ts';
import { Verdict } from './Verdict.tsx';

// The verdict and its drawing must not wait for what would change them.
const Ways = lazy(async () => {
  await firstScreenStands();
  return { default: (await import('./Ways.tsx')).Ways };
});
const WorthKnowing = lazy(async () => {
  await firstScreenStands();
  return { default: (await import('./WorthKnowing.tsx')).WorthKnowing };
});
// The words for what is wrong; where they do not come, those of the core stand.
void firstScreenStands()
  .then(() => import('../text/problemText.ts'))
  .catch(() => undefined);

interface Props {
  readonly assessment: Result<Assessment>;
  /** The assessment is an estimate that the solver is about to replace. */
  readonly isWorking: boolean;
  readonly unit: LengthUnit;
  /** `said` is in the past tense with the old value. */
  readonly onUse: (next: Joint, said: string) => void;
}

type BelowProps = Omit<Props, 'assessment'> & { readonly assessment: Assessment };

const Below = memo(function Below({ assessment, isWorking, unit, onUse }: BelowProps) {
  return (
    <Late fallback={<div className="looking" />}>
      <Ways assessment={assessment} isWorking={isWorking} unit={unit} onUse={onUse} />
      <WorthKnowing notes={assessment.notes} unit={unit} />
    </Late>
  );
});

/** The answer to the brief: the verdict, then the ways out, or room to spare where it passes. */
export function Answer({ assessment, isWorking, unit, onUse }: Props) {
  return (
    <div className="answer">
      <Verdict assessment={assessment} isWorking={isWorking} unit={unit} />
      {assessment.ok && (
        <div className="ways">
          <Below assessment={assessment.value} isWorking={isWorking} unit={unit} onUse={onUse} />
        </div>
      )}
    </div>
  );
}
