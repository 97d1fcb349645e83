/** Engines for the client of the workers that do what a test tells them to. */
import type { Heard, StartEngine } from '../../src/workers/engine.ts';
import type { Reply, Request } from '../../src/workers/protocol.ts';

export interface FakeEngine {
  readonly heard: Heard;
  readonly posted: Request[];
  stopped: boolean;
}

/** Starts engines that answer nothing by themselves; each that was started is in the list. */
export function fakeEngines(): { readonly start: StartEngine; readonly started: FakeEngine[] } {
  const started: FakeEngine[] = [];
  const start: StartEngine = (heard) => {
    const engine: FakeEngine = { heard, posted: [], stopped: false };
    started.push(engine);
    return {
      post: (request) => engine.posted.push(request),
      stop: () => {
        engine.stopped = true;
      },
    };
  };
  return { start, started };
}

/** The answer to the last request of an engine; `word` stands in for the output. */
export function done(engine: FakeEngine | undefined, word: string): void {
  const id = engine?.posted.at(-1)?.id ?? 0;
  engine?.heard.reply({ is: 'done', id, output: word } as unknown as Reply);
}
