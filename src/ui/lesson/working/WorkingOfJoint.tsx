import { useMemo } from 'react';
import type { Assessment } from '../../../core/design/assessment.ts';
import { workingOf } from '../../../core/working/workingOf.ts';
import { VerdictShape } from '../../app/VerdictShape.tsx';
import { estimateText, workedText, WORKING, WORKING_SECTIONS } from '../../text/workingText.ts';
import { isAlike } from './Against.tsx';
import { workOutSteps, type WorkedStep } from './mathBench.ts';
import { WorkingStep } from './WorkingStep.tsx';

/** Every formula of every part, worked out one after the other. */
function useWorked(assessment: Assessment) {
  return useMemo(() => {
    const { sections, estimate } = workingOf(assessment);
    const worked = workOutSteps(sections.flatMap(({ steps }) => steps));
    const starts = sections.map((_, at) => sections.slice(0, at).reduce((sum, { steps }) => sum + steps.length, 0));
    const parts = sections.map(({ id, steps }, at) => {
      const start = starts[at] ?? 0;
      return { id, steps: worked.slice(start, start + steps.length) };
    });
    return { parts, worked, estimate };
  }, [assessment]);
}

/** What came of all of them, in one sentence. */
function Outcome({ worked }: { readonly worked: readonly WorkedStep[] }) {
  const failed = worked.filter(({ outcome }) => outcome.how === 'failed').length;
  const different = worked.filter(({ step, outcome }) => outcome.how === 'worked' && !isAlike(step, outcome)).length;
  const grade = failed + different === 0 ? 'pass' : 'fail';
  return (
    <output className={`worked-out ${grade}`}>
      <VerdictShape grade={grade} />
      <span>{workedText(worked.length, failed, different)}</span>
    </output>
  );
}

/** The working of one joint. */
export function WorkingOfJoint({ assessment }: { readonly assessment: Assessment }) {
  const { parts, worked, estimate } = useWorked(assessment);
  const { family } = assessment.joint;
  return (
    <>
      <Outcome worked={worked} />
      <p className="in-units">{WORKING.units}</p>
      {parts.map(({ id, steps }) => (
        <section key={id} className="part" aria-labelledby={`working-${id}`}>
          <h2 id={`working-${id}`}>{WORKING_SECTIONS[id]}</h2>
          <ol className="steps-of-working">
            {steps.map((one) => (
              <WorkingStep key={one.step.symbol} family={family} worked={one} />
            ))}
          </ol>
          {id === 'hand' && estimate && <p className="estimate">{estimateText(estimate)}</p>}
        </section>
      ))}
    </>
  );
}
