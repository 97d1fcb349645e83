/** The page's side of a worker: one job at a time, the newest waiting, and every request settled. */
import { ownFilaments } from '../core/material/shelf.ts';
import type { Engine, StartEngine } from './engine.ts';
import type { Input, JobName, News, Output, Reply, Request } from './protocol.ts';

/** How a request ended: with an answer, by giving way to a newer one, or with the worker. */
export type Settled<T> =
  | { readonly how: 'answered'; readonly value: T }
  | { readonly how: 'superseded' }
  | { readonly how: 'failed'; readonly message: string };

interface Asked<T> {
  readonly id: number;
  /** Always resolves. */
  readonly settled: Promise<Settled<T>>;
}

export interface Client {
  /**
   * Asks for a job. Of one caller only the newest request waits: an older one that waits gives way. One that runs is
   * left to finish and is answered: a worker hears nothing while it computes, and to stop it costs more than to wait.
   * Measured in a browser: 30 ms for a solve in a warm worker, 27 ms to start another and 58 ms for its first solve.
   * `onProgress` hears the share that is done, 0 to 1, of a job that knows it, `onNews` what one has found so far.
   */
  readonly ask: <K extends JobName>(
    caller: string,
    job: K,
    input: Input<K>,
    onProgress?: (share: number) => void,
    onNews?: (news: News<K>) => void,
  ) => Asked<Output<K>>;
  /**
   * Gives a request up; one that runs is stopped with its worker, which the next request replaces. Worth it for what
   * takes seconds.
   */
  readonly cancel: (id: number) => void;
}

export interface Starts {
  readonly worker: StartEngine;
  /** Takes over where no worker can start. */
  readonly page: StartEngine;
  /** So long may a worker be silent in the middle of a job before it is taken for dead. */
  readonly patienceMs?: number;
}

/** Many times the longest that a solve has been silent, 1.8 s for a panel of cells on a slow machine. */
const PATIENCE_MS = 12_000;
/** Counted in looks, so that a computer that slept does not come back to a dead worker. */
const LOOKS = 6;

interface Task {
  readonly caller: string;
  readonly request: Request;
  readonly settle: (settled: Settled<never>) => void;
  readonly onProgress: ((share: number) => void) | undefined;
  readonly onNews: ((news: never) => void) | undefined;
}

/** One engine that is replaced when it dies, and on which no more than one task runs. */
class Queue implements Client {
  readonly #starts: Starts;
  readonly #waiting = new Map<string, Task>();
  #engine: Engine | undefined;
  #running: Task | undefined;
  #isReady = false;
  #canWork = true;
  #silentLooks = 0;
  #watch: ReturnType<typeof setInterval> | undefined;
  #lastId = 0;

  constructor(starts: Starts) {
    this.#starts = starts;
  }

  ask<K extends JobName>(
    caller: string,
    job: K,
    input: Input<K>,
    onProgress?: (share: number) => void,
    onNews?: (news: News<K>) => void,
  ): Asked<Output<K>> {
    this.#lastId += 1;
    const request: Request<K> = { id: this.#lastId, job, input, own: ownFilaments() };
    const settled = new Promise<Settled<Output<K>>>((resolve) => {
      this.#waiting.get(caller)?.settle({ how: 'superseded' });
      // Put last: what was asked last is what is being looked at.
      this.#waiting.delete(caller);
      this.#waiting.set(caller, { caller, request, settle: resolve, onProgress, onNews });
    });
    this.#next();
    return { id: request.id, settled };
  }

  cancel(id: number): void {
    const waits = [...this.#waiting.values()].find((task) => task.request.id === id);
    if (waits) {
      this.#waiting.delete(waits.caller);
      waits.settle({ how: 'superseded' });
    } else if (this.#running?.request.id === id) {
      this.#stop();
      this.#end({ how: 'superseded' });
    }
  }

  #next(): void {
    if (this.#running) return;
    const task = [...this.#waiting.values()].at(-1);
    if (!task) return;
    this.#waiting.delete(task.caller);
    this.#running = task;
    this.#run(task);
  }

  #run({ request }: Task): void {
    try {
      this.#engine ??= this.#start();
      this.#silentLooks = 0;
      this.#watch ??= setInterval(() => this.#look(), (this.#starts.patienceMs ?? PATIENCE_MS) / LOOKS);
      this.#engine.post(request);
    } catch (error) {
      this.#died(error instanceof Error ? error.message : String(error));
    }
  }

  #start(): Engine {
    this.#isReady = false;
    // What an engine says after it was stopped is no longer listened to.
    let engine: Engine | undefined;
    const isHeard = () => engine === undefined || engine === this.#engine;
    engine = (this.#canWork ? this.#starts.worker : this.#starts.page)({
      reply: (reply) => isHeard() && this.#heard(reply),
      died: (why) => isHeard() && this.#died(why),
    });
    return engine;
  }

  #heard(reply: Reply): void {
    this.#silentLooks = 0;
    if (reply.is === 'ready') this.#isReady = true;
    else if (reply.id !== this.#running?.request.id) return;
    else if (reply.is === 'progress') this.#running.onProgress?.(reply.share ?? 0);
    else if (reply.is === 'news') this.#running.onNews?.(reply.news as never);
    else if (reply.is === 'done') this.#end({ how: 'answered', value: reply.output as never });
    else if (reply.is === 'crashed') this.#end({ how: 'failed', message: reply.message });
  }

  #died(why: string): void {
    this.#stop();
    const task = this.#running;
    if (task && this.#canWork && !this.#isReady) {
      // It never came to life, and neither would the next: no request is lost for it.
      this.#canWork = false;
      this.#run(task);
    } else {
      this.#end({ how: 'failed', message: why });
    }
  }

  #look(): void {
    this.#silentLooks += 1;
    if (this.#silentLooks < LOOKS || !this.#running) return;
    this.#died('it did not answer any more');
  }

  #stop(): void {
    this.#engine?.stop();
    this.#engine = undefined;
  }

  #end(settled: Settled<never>): void {
    clearInterval(this.#watch);
    this.#watch = undefined;
    const task = this.#running;
    this.#running = undefined;
    task?.settle(settled);
    this.#next();
  }
}

export function createClient(starts: Starts): Client {
  return new Queue(starts);
}
