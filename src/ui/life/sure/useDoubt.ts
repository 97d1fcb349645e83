import { useEffect, useState } from 'react';
import type { Assessment } from '../../../core/design/assessment.ts';
import type { DoubtAnswer, DoubtAsked } from '../../../core/design/doubtAnswer.ts';
import type { Result } from '../../../core/result.ts';
import { createClient } from '../../../workers/client.ts';
import { startOnPage, startWorker } from '../../../workers/engine.ts';
import { keepDoubt, useDoubted } from './doubtAnswers.ts';

/** In a worker of its own, so that it stands in the way of no drawing and no search. */
const doubter = createClient({ worker: startWorker, page: startOnPage });

/** Long enough that a hand that moves comes first, and whatever follows it at once. */
const QUIET_MS = 700;
/** Work that is done sooner shows no progress. */
const PATIENT_MS = 400;

export interface Doubt {
  /** Of this joint as asked for; else the last of the same joint, until this one comes. */
  readonly answer: Result<DoubtAnswer> | undefined;
  readonly isWorking: boolean;
  /** Share that is done, once it takes a while. */
  readonly share: number | undefined;
  readonly isStopped: boolean;
  /** Why the worker broke off. */
  readonly trouble: string | undefined;
  readonly stop: () => void;
  readonly again: () => void;
}

interface Ended {
  readonly joint: unknown;
  readonly key: string;
  /** Nothing where it was stopped by hand. */
  readonly trouble?: string;
}

/** How sure a joint is: worked out once it rests, and given up when it changes. */
export function useDoubt({ joint, filament }: Assessment, asked: DoubtAsked): Doubt {
  const key = JSON.stringify(asked);
  const own = useDoubted({ joint, filament });
  const [last, setLast] = useState<{ readonly id: string; readonly answer: Result<DoubtAnswer> }>();
  const [ended, setEnded] = useState<Ended>();
  const [share, setShare] = useState<number>();
  const end = ended?.joint === joint && ended.key === key ? ended : undefined;
  const isWanted = end === undefined && (own === undefined || JSON.stringify(own.asked) !== key);

  useEffect(() => {
    if (!isWanted) return undefined;
    let id: number | undefined;
    const timer = setTimeout(() => {
      const begun = performance.now();
      const what: DoubtAsked = JSON.parse(key);
      const request = doubter.ask('sheet', 'doubt', { joint, asked: what }, (done) => {
        if (performance.now() - begun > PATIENT_MS) setShare(done);
      });
      ({ id } = request);
      void request.settled.then((settled) => {
        setShare(undefined);
        if (settled.how === 'failed') setEnded({ joint, key, trouble: settled.message });
        if (settled.how !== 'answered') return;
        keepDoubt({ joint, filament }, { asked: what, answer: settled.value });
        setLast({ id: joint.id, answer: settled.value });
      });
    }, QUIET_MS);
    return () => {
      clearTimeout(timer);
      if (id !== undefined) doubter.cancel(id);
    };
  }, [joint, filament, key, isWanted]);

  return {
    answer: own?.answer ?? (last?.id === joint.id ? last.answer : undefined),
    isWorking: isWanted,
    share: isWanted ? share : undefined,
    isStopped: end !== undefined && end.trouble === undefined,
    trouble: end?.trouble,
    stop: () => setEnded({ joint, key }),
    again: () => setEnded(undefined),
  };
}
