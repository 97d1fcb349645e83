/** The worker: looks a job up, does it, and says how it ended. */
import { runJob } from './jobs.ts';
import type { Reply, Request } from './protocol.ts';

const BEAT_MS = 250;

function reply(message: Reply): void {
  globalThis.postMessage(message);
}

globalThis.addEventListener('message', ({ data }: MessageEvent<Request>) => {
  const { id, job, input } = data;
  let beat = performance.now();
  const alive = () => {
    if (performance.now() - beat < BEAT_MS) return;
    beat = performance.now();
    reply({ is: 'progress', id });
  };
  try {
    reply({ is: 'done', id, output: runJob(job, input, alive) });
  } catch (error) {
    reply({ is: 'crashed', id, message: error instanceof Error ? error.message : String(error) });
  }
});
reply({ is: 'ready' });
