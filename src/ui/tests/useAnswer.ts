import { useEffect, useMemo, useState } from 'react';
import type { Assessment } from '../../core/design/assessment.ts';
import type { Joint } from '../../core/design/joint.ts';
import type { Filament } from '../../core/material/types.ts';
import { assessOnce } from '../joints/assessOnce.ts';
import { keepAnswer, needsSolver, wholeAnswer } from '../joints/solvedAnswers.ts';
import { background } from '../joints/solver.ts';
import { inRow } from './reckon.ts';

/** A joint as the sheet of joints answers it: by hand at once, by the solver as soon as it can. */
function useBest(caller: string, joint: Joint | undefined): Assessment | undefined {
  // What it holds is not read: a new state is how the page learns that an answer has been kept.
  const [, setAnswered] = useState<Joint>();
  useEffect(() => {
    if (!joint || !needsSolver(joint) || wholeAnswer(joint)) return;
    void background.ask(caller, 'assess', { joint, drawn: true }).settled.then((settled) => {
      if (settled.how !== 'answered') return;
      keepAnswer(joint, settled.value, true);
      setAnswered(joint);
    });
  }, [caller, joint]);
  if (!joint) return undefined;
  const answer = wholeAnswer(joint) ?? assessOnce(joint);
  return answer.ok ? answer.value : undefined;
}

export interface BeforeAfter {
  /** By the filament of which nothing was tested. */
  readonly before: Assessment | undefined;
  /** By the tests; absent where there are none. */
  readonly after: Assessment | undefined;
}

/** A joint with and without what its tests have taught. */
export function useBeforeAfter(joint: Joint | undefined, prior: Filament, row: Filament): BeforeAfter {
  const without = useMemo(() => joint && inRow(joint, prior), [joint, prior]);
  // A row that has learned anew stands under the same key, and whoever remembers goes by the joint.
  const tested = useMemo(() => (joint && row !== prior ? inRow(joint, row) : undefined), [joint, prior, row]);
  return { before: useBest('tests before', without), after: useBest('tests after', tested) };
}
