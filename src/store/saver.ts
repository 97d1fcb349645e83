import type { Part } from '../core/design/joint.ts';

/** How the work is kept, as the title block says it. */
export type Kept = 'nothing to keep' | 'saving' | 'saved' | 'full' | 'unavailable';

export interface Saver {
  /** Saves soon; a part that comes meanwhile takes its place. */
  readonly save: (part: Part) => void;
  /** Saves at once what still waits, and resolves when nothing is under way. */
  readonly flush: () => Promise<void>;
}

/** Long enough that a drag is one save, short enough that little is lost when the power goes. */
const DELAY_MS = 400;

function whyNot(error: unknown): Kept {
  return error instanceof Error && error.name === 'QuotaExceededError' ? 'full' : 'unavailable';
}

/** Saves one part at a time, the newest last; a failure is told and the next change tries again. */
export function createSaver(write: (part: Part) => Promise<void>, tell: (kept: Kept) => void, delay = DELAY_MS): Saver {
  let waiting: Part | undefined;
  let timer: ReturnType<typeof setTimeout> | undefined;
  let underWay = Promise.resolve();

  async function writeWaiting(): Promise<void> {
    const part = waiting;
    if (part === undefined) return;
    waiting = undefined;
    try {
      await write(part);
      if (waiting === undefined) tell('saved');
    } catch (error) {
      tell(whyNot(error));
    }
  }

  function flush(): Promise<void> {
    clearTimeout(timer);
    underWay = underWay.then(writeWaiting);
    return underWay;
  }

  return {
    save(part) {
      waiting = part;
      tell('saving');
      clearTimeout(timer);
      timer = setTimeout(() => void flush(), delay);
    },
    flush,
  };
}
