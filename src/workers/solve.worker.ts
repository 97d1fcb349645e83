/** The worker: looks a job up, does it, and says how it ended. */
import { runRequest } from './jobs.ts';
import type { Reply, Request } from './protocol.ts';

const BEAT_MS = 120;

function reply(message: Reply): void {
  globalThis.postMessage(message);
}

async function answer(request: Request): Promise<void> {
  const { id } = request;
  let beat = performance.now();
  const alive = (share?: number) => {
    if (performance.now() - beat < BEAT_MS) return;
    beat = performance.now();
    reply({ is: 'progress', id, ...(share === undefined ? {} : { share }) });
  };
  try {
    reply({ is: 'done', id, output: await runRequest(request, alive, (news) => reply({ is: 'news', id, news })) });
  } catch (error) {
    reply({ is: 'crashed', id, message: error instanceof Error ? error.message : String(error) });
  }
}

globalThis.addEventListener('message', ({ data }: MessageEvent<Request>) => void answer(data));
reply({ is: 'ready' });
