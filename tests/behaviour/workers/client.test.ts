import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { putOnShelf } from '../../../src/core/material/shelf.ts';
import { createClient, type Client, type Settled } from '../../../src/workers/client.ts';
import type { StartEngine } from '../../../src/workers/engine.ts';
import type { Reply } from '../../../src/workers/protocol.ts';
import { done, fakeEngines } from '../../support/engines.ts';
import { LEAF } from '../../support/joints.ts';
import { ownPetg } from '../../support/ownFilaments.ts';

const INPUT = { joint: LEAF, drawn: true };
const ask = (client: Client, caller = 'sheet') => client.ask(caller, 'assess', INPUT);
const noPage: StartEngine = () => {
  throw new Error('the page must not be asked');
};
/** How a promise stands now: its value, or `pending`. */
const now = (settled: Promise<Settled<unknown>>) => Promise.race([settled, Promise.resolve({ how: 'pending' })]);

function clientOnFakes(page: StartEngine = noPage) {
  const workers = fakeEngines();
  return { client: createClient({ worker: workers.start, page, patienceMs: 6000 }), started: workers.started };
}

describe('requests of one caller', () => {
  it('wait while one runs, and only the newest of them', async () => {
    const { client, started } = clientOnFakes();
    const asked = Array.from({ length: 60 }, () => ask(client));
    const [worker] = started;
    expect(worker?.posted.map(({ id }) => id)).toEqual([asked[0]?.id]);
    done(worker, 'first');
    done(worker, 'last');
    const settled = await Promise.all(asked.map((one) => one.settled));
    expect(settled[0]).toEqual({ how: 'answered', value: 'first' });
    expect(settled.slice(1, -1).every(({ how }) => how === 'superseded')).toBe(true);
    expect(settled.at(-1)).toEqual({ how: 'answered', value: 'last' });
    expect(worker?.posted).toHaveLength(2);
    expect(started).toHaveLength(1);
  });

  it('never supersede those of another, and the newest caller goes first', async () => {
    const { client, started } = clientOnFakes();
    const first = ask(client);
    const other = ask(client, 'strip');
    const last = ask(client);
    for (const word of ['a', 'b', 'c']) done(started[0], word);
    expect(await first.settled).toEqual({ how: 'answered', value: 'a' });
    expect(await last.settled).toEqual({ how: 'answered', value: 'b' });
    expect(await other.settled).toEqual({ how: 'answered', value: 'c' });
  });

  it('are all settled, whatever happens in whatever order', async () => {
    const step = fc.oneof(
      fc.record({ is: fc.constant('ask' as const), caller: fc.constantFrom('sheet', 'strip', 'search') }),
      fc.constantFrom(...(['done', 'stale', 'crashed', 'died', 'cancel'] as const).map((is) => ({ is }))),
    );
    await fc.assert(
      fc.asyncProperty(fc.array(step, { maxLength: 40 }), async (steps) => {
        const { client, started } = clientOnFakes();
        const asked: ReturnType<typeof ask>[] = [];
        for (const one of steps) {
          const engine = started.at(-1);
          const id = engine?.posted.at(-1)?.id ?? 0;
          if (one.is === 'ask') asked.push(ask(client, one.caller));
          else if (one.is === 'done') done(engine, 'x');
          else if (one.is === 'stale') engine?.heard.reply({ is: 'progress', id: id - 1 });
          else if (one.is === 'crashed') engine?.heard.reply({ is: 'crashed', id, message: 'broken' });
          else if (one.is === 'cancel') client.cancel(id);
          else if (engine && !engine.stopped) {
            engine.heard.reply({ is: 'ready' });
            engine.heard.died('gone');
          }
        }
        for (let i = 0; i < 4; i += 1) done(started.at(-1), 'x');
        const settled = await Promise.all(asked.map((one) => now(one.settled)));
        expect(settled.filter(({ how }) => !['answered', 'superseded', 'failed'].includes(how))).toEqual([]);
      }),
    );
  });
});

describe('a request that is given up', () => {
  it('gives way while it waits, and the running one is left alone', async () => {
    const { client, started } = clientOnFakes();
    const running = ask(client);
    const waiting = ask(client);
    client.cancel(waiting.id);
    done(started[0], 'kept');
    expect(await waiting.settled).toEqual({ how: 'superseded' });
    expect(await running.settled).toEqual({ how: 'answered', value: 'kept' });
    expect(started[0]?.stopped).toBe(false);
  });

  it('is stopped with its worker while it runs, and what the old worker still says is not heard', async () => {
    const { client, started } = clientOnFakes();
    const running = ask(client);
    client.cancel(running.id);
    expect(await running.settled).toEqual({ how: 'superseded' });
    expect(started[0]?.stopped).toBe(true);
    const next = ask(client);
    expect(started).toHaveLength(2);
    started[0]?.heard.reply({ is: 'done', id: next.id, output: 'stale' } as unknown as Reply);
    started[0]?.heard.died('late');
    done(started[1], 'fresh');
    expect(await next.settled).toEqual({ how: 'answered', value: 'fresh' });
  });

  it('may be settled already, or never have been', async () => {
    const { client, started } = clientOnFakes();
    const asked = ask(client);
    done(started[0], 'x');
    await asked.settled;
    client.cancel(asked.id);
    client.cancel(999);
    expect(started[0]?.stopped).toBe(false);
  });
});

describe('what a request brings along', () => {
  afterEach(() => putOnShelf([]));

  it('are the filaments of the user as they are when it is asked', () => {
    const { client, started } = clientOnFakes();
    ask(client);
    const own = ownPetg('own-spool');
    putOnShelf([own]);
    ask(client);
    done(started[0], 'x');
    expect(started[0]?.posted.map((request) => request.own)).toEqual([[], [own]]);
  });
});

describe('how far a job is', () => {
  it('is told to who asked, while it runs', async () => {
    const { client, started } = clientOnFakes();
    const shares: number[] = [];
    const { id, settled } = client.ask('sheet', 'assess', INPUT, (share) => shares.push(share));
    ask(client, 'other');
    const tell = (of: number, share: number) => started[0]?.heard.reply({ is: 'progress', id: of, share });
    tell(id, 0.25);
    tell(id + 1, 0.5);
    tell(id, 0.75);
    done(started[0], 'x');
    await settled;
    tell(id, 0.9);
    expect(shares).toEqual([0.25, 0.75]);
  });
});

describe('an answer to a request that is no longer running', () => {
  it('is dropped', async () => {
    const { client, started } = clientOnFakes();
    const first = ask(client);
    done(started[0], 'first');
    await first.settled;
    const second = ask(client);
    started[0]?.heard.reply({ is: 'done', id: first.id, output: 'again' } as unknown as Reply);
    started[0]?.heard.reply({ is: 'crashed', id: first.id, message: 'late' });
    expect(await now(second.settled)).toEqual({ how: 'pending' });
    done(started[0], 'second');
    expect(await second.settled).toEqual({ how: 'answered', value: 'second' });
  });
});

describe('a worker that fails', () => {
  beforeEach(() => vi.useFakeTimers());
  afterEach(() => vi.useRealTimers());

  it('in one job goes on to the next', async () => {
    const { client, started } = clientOnFakes();
    const asked = ask(client);
    const next = ask(client);
    started[0]?.heard.reply({ is: 'crashed', id: asked.id, message: 'a broken precondition' });
    done(started[0], 'next');
    expect(await asked.settled).toEqual({ how: 'failed', message: 'a broken precondition' });
    expect(await next.settled).toEqual({ how: 'answered', value: 'next' });
    expect(started).toHaveLength(1);
  });

  it('by dying is replaced for the next request', async () => {
    const { client, started } = clientOnFakes();
    const asked = ask(client);
    const next = ask(client);
    started[0]?.heard.reply({ is: 'ready' });
    started[0]?.heard.died('out of memory');
    expect(await asked.settled).toEqual({ how: 'failed', message: 'out of memory' });
    done(started[1], 'next');
    expect(await next.settled).toEqual({ how: 'answered', value: 'next' });
  });

  it('by silence is stopped and replaced, but not while it shows signs of life', async () => {
    const { client, started } = clientOnFakes();
    const asked = ask(client);
    started[0]?.heard.reply({ is: 'ready' });
    for (let second = 0; second < 30; second += 1) {
      vi.advanceTimersByTime(1000);
      started[0]?.heard.reply({ is: 'progress', id: asked.id });
    }
    expect(await now(asked.settled)).toEqual({ how: 'pending' });
    vi.advanceTimersByTime(6000);
    expect((await asked.settled).how).toBe('failed');
    expect(started[0]?.stopped).toBe(true);
    expect(vi.getTimerCount()).toBe(0);
    const next = ask(client);
    done(started[1], 'next');
    expect(await next.settled).toEqual({ how: 'answered', value: 'next' });
    expect(vi.getTimerCount()).toBe(0);
  });
});

describe('where no worker can start', () => {
  it.each([
    [
      'because it is forbidden',
      (() => {
        throw new Error('forbidden');
      }) satisfies StartEngine,
    ],
    [
      'because its file does not come',
      ((heard) => {
        queueMicrotask(() => heard.died('not found'));
        return { post: () => undefined, stop: () => undefined };
      }) satisfies StartEngine,
    ],
  ])('the page does the job, %s', async (_, worker) => {
    const page = fakeEngines();
    const client = createClient({ worker, page: page.start });
    const asked = ask(client);
    await vi.waitFor(() => expect(page.started).toHaveLength(1));
    done(page.started[0], 'on the page');
    expect(await asked.settled).toEqual({ how: 'answered', value: 'on the page' });
    const next = ask(client);
    done(page.started[0], 'again');
    expect(await next.settled).toEqual({ how: 'answered', value: 'again' });
    expect(page.started).toHaveLength(1);
  });
});
