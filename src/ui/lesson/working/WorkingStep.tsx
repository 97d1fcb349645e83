import { SOURCES } from '../../../core/sources.ts';
import { stepWords } from '../../text/working/workingWords.ts';
import { Against } from './Against.tsx';
import type { WorkedStep } from './mathBench.ts';
import { PutIn } from './PutIn.tsx';
import { StepFormula } from './StepFormula.tsx';

interface Props {
  readonly family: string;
  readonly worked: WorkedStep;
}

/** One formula: what it gives, how, from what, within what it holds and who says so. */
export function WorkingStep({ family, worked: { step, outcome, scope } }: Props) {
  const words = stepWords(family, step.id);
  const name = words?.name ?? step.id;
  return (
    <li className="step">
      <h3>{name}</h3>
      <StepFormula {...{ step, scope, outcome }} label={name} />
      <PutIn family={family} inputs={step.given} />
      <div className="trust">
        <Against {...{ step, outcome }} />
        {words?.holds !== undefined && <p>{words.holds}</p>}
        <p className="cite">{SOURCES[step.source].cite}</p>
      </div>
    </li>
  );
}
