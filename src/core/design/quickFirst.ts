import type { Judge } from './assess.ts';
import { isPassing } from './passing.ts';

/**
 * A judge that lets one which does not look at shapes judge first: only what passes it is worth solving again in full.
 *
 * @param quick - what judges strain, effort and life [-]
 * @param full - what judges all [-]
 * @returns a judge under which a joint passes as under `full`
 */
export function quickFirst(quick: Judge, full: Judge): Judge {
  return (joint) => {
    const judged = quick(joint);
    return judged.ok && isPassing(judged.value) ? full(joint) : judged;
  };
}
