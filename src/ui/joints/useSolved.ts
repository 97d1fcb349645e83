import { useEffect, useState } from 'react';
import type { Assessment } from '../../core/design/assessment.ts';
import type { Joint } from '../../core/design/joint.ts';
import type { Result } from '../../core/result.ts';
import { assessOnce } from './assessOnce.ts';
import { solver } from './solver.ts';
import { keepAnswer, needsSolver, useWholeAnswer, wholeAnswer } from './solvedAnswers.ts';

export interface SolvedJoint {
  /** Of this very joint: by the solver, else by hand. */
  readonly assessed: Result<Assessment>;
  /** For the drawing: of this joint, or, while `isWorking`, the last of its kind that was solved. */
  readonly drawn: Assessment | undefined;
  /** For the curves: the same, but they wait until the hand rests. */
  readonly charted: Assessment | undefined;
  readonly isWorking: boolean;
  /** Why no answer came. */
  readonly trouble: string | undefined;
  readonly tryAgain: () => void;
}

function isAlike(before: Assessment, joint: Joint): boolean {
  return before.joint.family === joint.family && before.drive.id === joint.movement.drive;
}

/**
 * A joint as the hand form answers it at once, and as the solver does when its answer arrives. Answers to states that a
 * moving hand has already left are drawn on the way, and never read off as figures.
 */
export function useSolved(joint: Joint): SolvedJoint {
  const isAsked = needsSolver(joint);
  const answer = useWholeAnswer(joint);
  const [last, setLast] = useState<Assessment>();
  const [rested, setRested] = useState<Assessment>();
  const [failed, setFailed] = useState<{ readonly joint: Joint; readonly message: string }>();
  const isBroken = failed?.joint === joint;

  useEffect(() => {
    if (!isAsked || isBroken || wholeAnswer(joint)) return;
    void solver.ask('sheet', 'assess', { joint, drawn: true }).settled.then((settled) => {
      if (settled.how === 'answered') keepAnswer(joint, settled.value, true);
      if (settled.how === 'answered' && settled.value.ok) setLast(settled.value.value);
      setFailed(settled.how === 'failed' ? { joint, message: settled.message } : undefined);
    });
  }, [joint, isAsked, isBroken]);

  const trouble = isBroken ? failed.message : undefined;
  const byHand = assessOnce(joint);
  const tryAgain = () => setFailed(undefined);
  if (!isAsked) {
    const drawn = byHand.ok ? byHand.value : undefined;
    return { assessed: byHand, drawn, charted: drawn, isWorking: false, trouble, tryAgain };
  }
  const solved = answer?.ok ? answer.value : undefined;
  if (solved && solved !== rested) setRested(solved);
  const isWorking = answer === undefined && trouble === undefined;
  const ofBefore = (before: Assessment | undefined) =>
    isWorking && before && isAlike(before, joint) ? before : undefined;
  return {
    assessed: answer ?? byHand,
    drawn: solved ?? ofBefore(last),
    charted: solved ?? ofBefore(rested),
    isWorking,
    trouble,
    tryAgain,
  };
}
