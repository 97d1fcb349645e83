/** Looks for joints that meet a brief: apart from the other jobs, since no drawing waits for it. */
import { find } from '../core/find/find.ts';
import type { Alive, Input, Output, Tell } from './protocol.ts';

export function findJob({ wanted }: Input<'find'>, alive: Alive, tell: Tell): Output<'find'> {
  return find(wanted, { alive, tell, now: () => performance.now() });
}
