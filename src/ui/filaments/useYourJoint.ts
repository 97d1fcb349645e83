import { useEffect, useState } from 'react';
import type { Assessment } from '../../core/design/assessment.ts';
import type { Joint } from '../../core/design/joint.ts';
import { assessOnce } from '../joints/assessOnce.ts';
import { fetchKinds } from '../joints/fetchKinds.ts';
import { useKindCome } from '../joints/kindsCome.ts';
import { keepAnswer, needsSolver, wholeAnswer } from '../joints/solvedAnswers.ts';
import { solver } from '../joints/solver.ts';
import { useCurrentJoint } from '../joints/useCurrentJoint.ts';

export interface YourJoint {
  readonly joint: Joint | undefined;
  /** By the solver, else by hand; absent where it is refused, or its kind has not come. */
  readonly assessment: Assessment | undefined;
}

/** The open joint, as the sheet of joints answers it. */
export function useYourJoint(): YourJoint {
  const joint = useCurrentJoint();
  const hasCome = useKindCome(joint?.family ?? '');
  const known = hasCome ? joint : undefined;
  // What it holds is not read: a new state is how the page learns that an answer has been kept.
  const [, setAnswered] = useState<Joint>();

  useEffect(() => void fetchKinds(), []);
  useEffect(() => {
    if (!known || !needsSolver(known) || wholeAnswer(known)) return;
    void solver.ask('sheet', 'assess', { joint: known, drawn: true }).settled.then((settled) => {
      if (settled.how !== 'answered') return;
      keepAnswer(known, settled.value, true);
      setAnswered(known);
    });
  }, [known]);

  if (!known) return { joint, assessment: undefined };
  const answer = wholeAnswer(known) ?? assessOnce(known);
  return { joint, assessment: answer.ok ? answer.value : undefined };
}
