import { useEffect, useState } from 'react';
import type { Client } from '../../../workers/client.ts';
import type { Input, JobName, Output } from '../../../workers/protocol.ts';

/** Long enough that a hand that moves comes first, and whatever follows it at once. */
const QUIET_MS = 500;

export interface Asked<T> {
  readonly answer: T | undefined;
  /** Why the worker broke off. */
  readonly trouble: string | undefined;
  /** Share that is done, where the job knows it. */
  readonly share: number | undefined;
  readonly again: () => void;
}

interface Ended {
  readonly input: object;
  readonly trouble?: string;
}

/** Answers by what was asked for: a joint never changes in place, so they hold for good. */
const known = new WeakMap<object, unknown>();

/**
 * What a worker answers: asked for once it is wanted and the hand rests, and given up when something else is. An input is told
 * from another by being another object.
 */
export function useAsked<K extends JobName>(
  client: Client,
  job: K,
  input: Input<K>,
  isWanted: boolean,
): Asked<Output<K>> {
  const [ended, setEnded] = useState<Ended>();
  const [share, setShare] = useState<number>();
  const trouble = ended?.input === input ? ended.trouble : undefined;
  const isBroken = trouble !== undefined;
  useEffect(() => {
    if (!isWanted || isBroken || known.has(input)) return undefined;
    let id: number | undefined;
    const timer = setTimeout(() => {
      const asked = client.ask(job, job, input, setShare);
      ({ id } = asked);
      void asked.settled.then((settled) => {
        setShare(undefined);
        if (settled.how === 'answered') known.set(input, settled.value);
        if (settled.how !== 'superseded')
          setEnded({ input, ...(settled.how === 'failed' ? { trouble: settled.message } : {}) });
      });
    }, QUIET_MS);
    return () => {
      clearTimeout(timer);
      if (id !== undefined) client.cancel(id);
    };
  }, [client, job, input, isWanted, isBroken]);
  const answer = known.get(input) as Output<K> | undefined;
  return { answer, trouble, share, again: () => setEnded(undefined) };
}
