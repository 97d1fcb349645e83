import { useMemo } from 'react';
import type { Assessment } from '../../../core/design/assessment.ts';
import type { EffortWanted, MatchAnswer } from '../../../core/design/matchAnswer.ts';
import { matchEffort } from '../../../core/design/matchEffort.ts';
import type { Result } from '../../../core/result.ts';
import { createClient } from '../../../workers/client.ts';
import { startOnPage, startWorker } from '../../../workers/engine.ts';
import { useAsked, type Asked } from './useAsked.ts';

/** In a worker of its own: whoever types a wish waits for its answer and for nothing else. */
const matcher = createClient({ worker: startWorker, page: startOnPage });

/** What meets a wish: at once where hand forms are exact, else when the solver has found it; nothing is asked without a wish. */
export function useMatch(
  a: Assessment,
  wish: EffortWanted | undefined,
  isWorking: boolean,
): Asked<Result<MatchAnswer>> {
  const { joint } = a;
  const isAtHand = a.travel !== undefined;
  const { effort = 0, at = 0 } = wish ?? {};
  const isWished = wish !== undefined;
  const input = useMemo(() => ({ joint, wanted: { effort, at } }), [joint, effort, at]);
  const byHand = useMemo(
    () => (isAtHand && isWished ? matchEffort(input.joint, input.wanted) : undefined),
    [isAtHand, isWished, input],
  );
  const asked = useAsked(matcher, 'matchEffort', input, isWished && !isAtHand && !isWorking);
  return { ...asked, answer: byHand ?? (isWished ? asked.answer : undefined) };
}
