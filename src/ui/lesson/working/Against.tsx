import type { Step } from '../../../core/working/step.ts';
import { VerdictShape } from '../../app/VerdictShape.tsx';
import { isWrittenAlike, PLACES } from '../../text/working/figures.ts';
import { differsText, failedText, WORKING } from '../../text/workingText.ts';
import type { Outcome } from './mathBench.ts';
import { quantityMarkup } from './mathMarkup.ts';
import { Maths } from './Maths.ts';

interface Props {
  readonly step: Step;
  readonly outcome: Outcome;
}

/** Whether a step gives what the program says, to the places shown; true where the program gives the quantity no name. */
export function isAlike(step: Step, outcome: Outcome): boolean {
  if (outcome.how === 'failed') return false;
  if (outcome.sides) return isWrittenAlike(outcome.sides.left, outcome.sides.right);
  return step.figure === undefined || isWrittenAlike(outcome.value, step.figure);
}

/** The figure of the program beside what was worked out. */
export function Against({ step, outcome }: Props) {
  if (outcome.how === 'failed') {
    return (
      <p className="against fail">
        <VerdictShape grade="fail" />
        {failedText(outcome.why)}
      </p>
    );
  }
  const { sides } = outcome;
  if (step.figure === undefined) return null;
  const grade = isAlike(step, outcome) ? 'pass' : 'fail';
  const both = sides && (
    <>
      <Maths of={quantityMarkup(sides.left, '', PLACES.result)} />,{' '}
      <Maths of={quantityMarkup(sides.right, '', PLACES.result)} />
    </>
  );
  return (
    <p className={`against ${grade}`}>
      <VerdictShape grade={grade} />
      <span>
        {sides ? WORKING.bothSides : WORKING.program}{' '}
        {both ?? <Maths of={quantityMarkup(step.figure, step.unit, PLACES.result)} />}:{' '}
        {grade === 'pass' ? WORKING.alike : differsText(outcome.off ?? 1)}
      </span>
    </p>
  );
}
