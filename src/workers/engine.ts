/** Where jobs run: in a worker, or on the page where none can start. */
import type { Reply, Request } from './protocol.ts';

export interface Engine {
  readonly post: (request: Request) => void;
  /** Ends it at once, in the middle of whatever it does; nothing is heard of it any more. */
  readonly stop: () => void;
}

export interface Heard {
  readonly reply: (reply: Reply) => void;
  /** It has died by itself, or never came to life. */
  readonly died: (why: string) => void;
}

export type StartEngine = (heard: Heard) => Engine;

/** A worker of its own; throws where workers are forbidden. */
export const startWorker: StartEngine = ({ reply, died }) => {
  const worker = new Worker(new URL('./solve.worker.ts', import.meta.url), { type: 'module' });
  worker.addEventListener('message', ({ data }: MessageEvent<Reply>) => reply(data));
  worker.addEventListener('error', (event) => {
    event.preventDefault();
    died(event.message);
  });
  worker.addEventListener('messageerror', () => died('its answer could not be read'));
  return { post: (request) => worker.postMessage(request), stop: () => worker.terminate() };
};

/** The same functions on the page, which stands still while one of them computes. */
export const startOnPage: StartEngine = ({ reply, died }) => {
  let stopped = false;
  const tell = (message: Reply) => {
    if (!stopped) reply(message);
  };
  async function run(request: Request): Promise<void> {
    const { id } = request;
    const { runRequest } = await import('./jobs.ts');
    // A moment to paint what is there already.
    await new Promise((resolve) => {
      setTimeout(resolve);
    });
    if (stopped) return;
    try {
      tell({
        is: 'done',
        id,
        output: await runRequest(
          request,
          () => undefined,
          (news) => tell({ is: 'news', id, news }),
        ),
      });
    } catch (error) {
      tell({ is: 'crashed', id, message: error instanceof Error ? error.message : String(error) });
    }
  }
  queueMicrotask(() => tell({ is: 'ready' }));
  return {
    post: (request) => {
      run(request).catch((error: unknown) => {
        if (!stopped) died(error instanceof Error ? error.message : String(error));
      });
    },
    stop: () => {
      stopped = true;
    },
  };
};
