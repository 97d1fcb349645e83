import { creaseSought } from './creaseSought.ts';
import { crossedLeavesSought } from './crossedLeavesSought.ts';
import type { Sought } from './sought.ts';
import { straightLeafSought } from './straightLeafSought.ts';

/** What a search varies of every family by its id, apart from the families themselves so that a page may do without. */
const SOUGHTS: Readonly<Record<string, Sought>> = {
  straightLeaf: straightLeafSought,
  crease: creaseSought,
  crossedLeaves: crossedLeavesSought,
};

/**
 * How a search goes about a family; one that cannot be searched is a mistake of the caller.
 *
 * @param family - id of a family [-]
 * @returns what is varied of it, and the room that it takes [-]
 */
export function soughtOf(family: string): Sought {
  const sought = SOUGHTS[family];
  if (!sought) throw new RangeError(`nothing is said of how to search ${family}`);
  return sought;
}
