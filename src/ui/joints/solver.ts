import { createClient } from '../../workers/client.ts';
import { startOnPage, startWorker } from '../../workers/engine.ts';

const starts = { worker: startWorker, page: startOnPage };

/** Solves the joint that is open, in tens of milliseconds; nothing starts before it is asked. */
export const solver = createClient(starts);

/**
 * Looks for ways out, which takes seconds and is broken off when the joint changes, and solves joints that are not open:
 * in a worker of its own, so that none of it stands in the way of a hand that moves.
 */
export const background = createClient(starts);
