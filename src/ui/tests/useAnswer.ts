import { useEffect, useMemo } from 'react';
import type { Assessment } from '../../core/design/assessment.ts';
import type { Joint } from '../../core/design/joint.ts';
import type { Filament } from '../../core/material/types.ts';
import { assessOnce } from '../joints/assessOnce.ts';
import { keepAnswer, needsSolver, useWholeAnswer } from '../joints/solvedAnswers.ts';
import { background } from '../joints/solver.ts';

/** In the place of a joint while there is none. */
const NONE = {} as Joint;

/** A joint as the sheet of joints answers it: by hand at once, by the solver as soon as it can. */
function useBest(caller: string, joint: Joint | undefined): Assessment | undefined {
  const solved = useWholeAnswer(joint ?? NONE);
  useEffect(() => {
    if (!joint || !needsSolver(joint) || solved) return;
    void background.ask(caller, 'assess', { joint, drawn: true }).settled.then((settled) => {
      if (settled.how === 'answered') keepAnswer(joint, settled.value, true);
    });
  }, [caller, joint, solved]);
  if (!joint) return undefined;
  const answer = solved ?? assessOnce(joint);
  return answer.ok ? answer.value : undefined;
}

const withFilament = (joint: Joint, { id }: Filament): Joint => ({
  ...joint,
  profile: { ...joint.profile, filament: id },
});

export interface BeforeAfter {
  /** By the filament of which nothing was tested. */
  readonly before: Assessment | undefined;
  /** By the tests; absent where there are none. */
  readonly after: Assessment | undefined;
}

/** A joint with and without what its tests have taught. */
export function useBeforeAfter(joint: Joint | undefined, prior: Filament, row: Filament): BeforeAfter {
  const without = useMemo(() => joint && withFilament(joint, prior), [joint, prior]);
  // A row that has learned anew stands under the same key, and whoever remembers goes by the joint.
  const tested = useMemo(() => (joint && row !== prior ? withFilament(joint, row) : undefined), [joint, prior, row]);
  return { before: useBest('tests before', without), after: useBest('tests after', tested) };
}
