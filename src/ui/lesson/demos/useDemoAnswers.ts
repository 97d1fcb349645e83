import { useEffect, useState } from 'react';
import type { Assessment } from '../../../core/design/assessment.ts';
import type { Joint } from '../../../core/design/joint.ts';
import type { Result } from '../../../core/result.ts';
import { assessOnce } from '../../joints/assessOnce.ts';
import { solver } from '../../joints/solver.ts';
import { keepAnswer, needsSolver, wholeAnswer } from '../../joints/solvedAnswers.ts';

export interface DemoAnswers {
  /** Of these very joints: by the solver, else by hand. */
  readonly answers: readonly Result<Assessment>[];
  /** To draw: of these joints, or what was solved last of each while they are worked out. */
  readonly drawn: readonly (Assessment | undefined)[];
  readonly isWorking: boolean;
  /** Why no answer came. */
  readonly trouble: string | undefined;
}

function isKnown(joint: Joint): boolean {
  return !needsSolver(joint) || wholeAnswer(joint) !== undefined;
}

function known(joint: Joint): Result<Assessment> {
  return wholeAnswer(joint) ?? assessOnce(joint);
}

/** All joints of a demonstration, by hand at once and by the solver when its answers arrive. */
export function useDemoAnswers(joints: readonly Joint[]): DemoAnswers {
  const [last, setLast] = useState<readonly (Assessment | undefined)[]>([]);
  const [failed, setFailed] = useState<{ readonly joints: readonly Joint[]; readonly message: string }>();
  useEffect(() => {
    let isLeft = false;
    for (const [at, joint] of joints.entries()) {
      if (isKnown(joint)) continue;
      void solver.ask(`lesson ${at}`, 'assess', { joint, drawn: true }).settled.then((settled) => {
        if (settled.how === 'answered') keepAnswer(joint, settled.value, true);
        if (isLeft) return;
        if (settled.how === 'failed') setFailed({ joints, message: settled.message });
        if (settled.how === 'answered' && settled.value.ok) {
          const { value } = settled.value;
          setLast((before) => joints.map((_, i) => (i === at ? value : before[i])));
        }
      });
    }
    return () => {
      isLeft = true;
    };
  }, [joints]);
  const answers = joints.map(known);
  const trouble = failed?.joints === joints ? failed.message : undefined;
  return {
    answers,
    drawn: joints.map((joint, i) => {
      const answer = known(joint);
      if (isKnown(joint)) return answer.ok ? answer.value : undefined;
      return last[i]?.joint.family === joint.family ? last[i] : undefined;
    }),
    isWorking: trouble === undefined && !joints.every(isKnown),
    trouble,
  };
}
