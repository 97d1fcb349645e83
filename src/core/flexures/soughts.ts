import { cellPanelSought } from './cellPanelSought.ts';
import { creaseSought } from './creaseSought.ts';
import { crossedLeavesSought } from './crossedLeavesSought.ts';
import { foldedLeafSought } from './foldedLeafSought.ts';
import { neckSought } from './neckSought.ts';
import { parallelLeavesSought } from './parallelLeavesSought.ts';
import { slitPanelSought } from './slitPanelSought.ts';
import { snapArchSought } from './snapArchSought.ts';
import type { Sought } from './sought.ts';
import { spiralSought } from './spiralSought.ts';
import { straightLeafSought } from './straightLeafSought.ts';
import { toggleSought } from './toggleSought.ts';

/** What a search varies of every family by its id, apart from the families themselves so that a page may do without. */
const SOUGHTS: Readonly<Record<string, Sought>> = {
  straightLeaf: straightLeafSought,
  crease: creaseSought,
  neck: neckSought,
  crossedLeaves: crossedLeavesSought,
  parallelLeaves: parallelLeavesSought,
  foldedLeaf: foldedLeafSought,
  spiral: spiralSought,
  snapArch: snapArchSought,
  toggle: toggleSought,
  cellPanel: cellPanelSought,
  slitPanel: slitPanelSought,
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
