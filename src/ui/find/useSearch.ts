import { useEffect, useRef, useState } from 'react';
import { checkWanted } from '../../core/find/checkWanted.ts';
import type { FindAnswer } from '../../core/find/findAnswer.ts';
import type { Wanted } from '../../core/find/wanted.ts';
import type { Problem } from '../../core/problems.ts';
import { useSession } from '../../store/session.ts';
import { createClient } from '../../workers/client.ts';
import { startOnPage, startWorker } from '../../workers/engine.ts';
import { answerKept, keepAnswer, searchKey } from './searching.ts';

/** In a worker of its own, so that it stands in the way of no drawing. */
const finder = createClient({ worker: startWorker, page: startOnPage });

/** Long enough that a key that is held or a box after another does not start a search each. */
const QUIET_MS = 250;
/** A search that is done sooner shows no progress. */
const PATIENT_MS = 400;

/** How a search stands. */
export interface Search {
  /** Of this brief; else of the one before, until the first news of this one. */
  readonly answer: FindAnswer | undefined;
  /** Whether the answer is of another brief. */
  readonly isOld: boolean;
  readonly isWorking: boolean;
  /** It has gone on for a while. */
  readonly isSlow: boolean;
  readonly secondsLeft: number | undefined;
  readonly isStopped: boolean;
  /** Why the worker broke off, or why the brief cannot be searched for. */
  readonly trouble: string | undefined;
  readonly problems: readonly Problem[];
  readonly stop: () => void;
  readonly again: () => void;
}

interface Told {
  readonly key: string;
  readonly answer: FindAnswer;
}

interface Ended {
  readonly key: string;
  /** Nothing where it was stopped by hand. */
  readonly trouble?: string;
  readonly problems?: readonly Problem[];
}

/** How long the rest takes, once enough has been tried to tell. */
function leftAfter(elapsedMs: number, { share }: FindAnswer): number | undefined {
  return share < 0.05 || share >= 1 ? undefined : (elapsedMs / 1000) * (1 / share - 1);
}

/** Searches for what is wanted: at once when it begins, after a moment of quiet when it changes. */
export function useSearch(wanted: Wanted): Search {
  const own = useSession((state) => state.own);
  const key = searchKey(wanted);
  const problems = checkWanted(wanted);
  const [told, setTold] = useState<Told>();
  const [ended, setEnded] = useState<Ended>();
  const [slow, setSlow] = useState<{ readonly key: string; readonly secondsLeft: number | undefined }>();
  const isFirst = useRef(true);
  const kept = answerKept(key, own);
  const end = ended?.key === key ? ended : undefined;
  const isWanted = problems.length === 0 && kept === undefined && end === undefined;

  useEffect(() => {
    const quiet = isFirst.current ? 0 : QUIET_MS;
    isFirst.current = false;
    if (!isWanted) return undefined;
    let id: number | undefined;
    let patience: ReturnType<typeof setTimeout> | undefined;
    const timer = setTimeout(() => {
      const begun = performance.now();
      patience = setTimeout(() => setSlow({ key, secondsLeft: undefined }), PATIENT_MS);
      const hear = (answer: FindAnswer) => {
        setTold({ key, answer });
        const elapsed = performance.now() - begun;
        if (elapsed > PATIENT_MS) setSlow({ key, secondsLeft: leftAfter(elapsed, answer) });
      };
      const input = { wanted: JSON.parse(key) as Wanted };
      const request = finder.ask('finder', 'find', input, undefined, hear);
      ({ id } = request);
      void request.settled.then((settled) => {
        clearTimeout(patience);
        if (settled.how === 'failed') setEnded({ key, trouble: settled.message });
        if (settled.how !== 'answered') return;
        if (!settled.value.ok) {
          setEnded({ key, problems: settled.value.problems });
          return;
        }
        keepAnswer(key, own, settled.value.value);
        setTold({ key, answer: settled.value.value });
      });
    }, quiet);
    return () => {
      clearTimeout(timer);
      clearTimeout(patience);
      if (id !== undefined) finder.cancel(id);
    };
  }, [key, own, isWanted]);

  const isSlow = isWanted && slow?.key === key;
  const answer = kept ?? told?.answer;
  return {
    answer,
    isOld: answer !== undefined && kept === undefined && told?.key !== key,
    isWorking: isWanted,
    isSlow,
    secondsLeft: isSlow ? slow.secondsLeft : undefined,
    isStopped: end !== undefined && end.trouble === undefined && end.problems === undefined,
    trouble: end?.trouble,
    problems: end?.problems ?? problems,
    stop: () => setEnded({ key }),
    again: () => setEnded(undefined),
  };
}
