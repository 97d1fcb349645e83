/** A file that is being checked and the one on screen: it goes on while other places are looked at. */
import type { Problem } from '../../core/problems.ts';
import type { Result } from '../../core/result.ts';
import type { Client } from '../../workers/client.ts';

/** A check that goes on. */
export interface Work<A, D extends string = string> {
  readonly asked: A;
  readonly doing: D;
  readonly share: number;
  readonly found: number;
  readonly begunMs: number;
  /** Where the step that it is at began. */
  readonly step: { readonly share: number; readonly sinceMs: number };
  /** How long the rest takes, once it is known well enough. */
  readonly secondsLeft: number | undefined;
}

/** How the last check ended, where it brought nothing to show. */
export type Ended<A> =
  | { readonly how: 'stopped'; readonly asked: A; readonly found: number }
  | { readonly how: 'refused'; readonly asked: A; readonly problems: readonly Problem[] }
  | { readonly how: 'broke'; readonly asked: A; readonly message: string };

export interface FileCheck<A, R, D extends string = string> {
  readonly standing: { readonly asked: A; readonly value: R } | undefined;
  readonly work: Work<A, D> | undefined;
  readonly ended: Ended<A> | undefined;
}

export const NO_CHECK = { standing: undefined, work: undefined, ended: undefined } as const;

/** Where the state of a check is kept. */
interface Keeping<A, R, D extends string> {
  readonly get: () => FileCheck<A, R, D>;
  readonly set: (next: Partial<FileCheck<A, R, D>>) => void;
}

interface Ways<A, R, D extends string> {
  readonly client: Client;
  readonly first: D;
  /** The steps whose share grows evenly with time: of these the time left is told. */
  readonly timed: readonly D[];
  readonly ask: (
    asked: A,
    onShare: (share: number) => void,
    onNews: (news: { readonly doing: D; readonly found: number }) => void,
  ) => { readonly id: number; readonly settled: Promise<Settling<R>> };
  /** Something has been read, and stands on the sheet now. */
  readonly stood: (asked: A, value: R, before: FileCheck<A, R, D>['standing']) => void;
}

type Settling<R> =
  | { readonly how: 'answered'; readonly value: Result<R> }
  | { readonly how: 'superseded' }
  | { readonly how: 'failed'; readonly message: string };

/** So much of a step tells how fast it goes on this machine. */
const KNOWN = { share: 0.06, ms: 800 };

function secondsLeft(work: Work<unknown>, isTimed: boolean, share: number, nowMs: number): number | undefined {
  const [done, ms] = [share - work.step.share, nowMs - work.step.sinceMs];
  const isKnown = isTimed && done >= KNOWN.share && ms >= KNOWN.ms;
  return isKnown ? (ms * (1 - share)) / done / 1000 : undefined;
}

/** A step that begins counts from where the one before it came to. */
function told<A, D extends string>(work: Work<A, D>, doing: D, found: number): Partial<Work<A, D>> {
  const isSame = doing === work.doing;
  return isSame ? { found } : { doing, found, step: { share: work.share, sinceMs: performance.now() } };
}

/** Begins, stops and repeats checks; the file on screen stays until another has been read. */
export function fileChecks<A, R, D extends string>({ get, set }: Keeping<A, R, D>, ways: Ways<A, R, D>) {
  let running: number | undefined;

  function end(ended: Ended<A>): void {
    running = undefined;
    set({ work: undefined, ended });
  }

  function stand(asked: A, value: R): void {
    running = undefined;
    const before = get().standing;
    set({ standing: { asked, value }, work: undefined, ended: undefined });
    ways.stood(asked, value, before);
  }

  function alter(asked: A, change: (work: Work<A, D>) => Partial<Work<A, D>>): void {
    const { work } = get();
    if (work?.asked === asked) set({ work: { ...work, ...change(work) } });
  }

  function check(asked: A): void {
    if (running !== undefined) ways.client.cancel(running);
    const begunMs = performance.now();
    const step = { share: 0, sinceMs: begunMs };
    const work = { asked, doing: ways.first, share: 0, found: 0, begunMs, step, secondsLeft: undefined };
    set({ work, ended: undefined });
    const isTimed = ({ doing }: Work<A, D>) => ways.timed.includes(doing);
    const request = ways.ask(
      asked,
      (share) =>
        alter(asked, (now) => ({ share, secondsLeft: secondsLeft(now, isTimed(now), share, performance.now()) })),
      ({ doing, found }) => alter(asked, (now) => told(now, doing, found)),
    );
    running = request.id;
    void request.settled.then((settled) => {
      if (get().work?.asked !== asked) return;
      if (settled.how === 'failed') end({ how: 'broke', asked, message: settled.message });
      if (settled.how !== 'answered') return;
      if (settled.value.ok) stand(asked, settled.value.value);
      else end({ how: 'refused', asked, problems: settled.value.problems });
    });
  }

  return {
    check,
    /** What was stopped, or broke off. */
    again: () => {
      const { ended } = get();
      if (ended) check(ended.asked);
    },
    /** Gives the check up; what was found so far is kept to be told. */
    stop: () => {
      const { work } = get();
      if (!work) return;
      if (running !== undefined) ways.client.cancel(running);
      end({ how: 'stopped', asked: work.asked, found: work.found });
    },
    /** Takes away what is told of a check that brought nothing. */
    forget: () => set({ ended: undefined }),
  };
}
