import { cellPanelNetwork } from './cellPanelNetwork.ts';
import { creaseNetwork } from './creaseNetwork.ts';
import { crossedLeavesNetwork } from './crossedLeavesNetwork.ts';
import { foldedLeafNetwork } from './foldedLeafNetwork.ts';
import { neckNetwork } from './neckNetwork.ts';
import type { Mechanics } from './network.ts';
import { parallelLeavesNetwork } from './parallelLeavesNetwork.ts';
import { slitPanelNetwork } from './slitPanelNetwork.ts';
import { snapArchNetwork } from './snapArchNetwork.ts';
import { spiralNetwork } from './spiralNetwork.ts';
import { straightLeafNetwork } from './straightLeafNetwork.ts';
import { toggleNetwork } from './toggleNetwork.ts';

/** The mechanics of every family by its id, apart from the families themselves so that a page may do without them. */
const MECHANICS: Readonly<Record<string, Mechanics>> = {
  straightLeaf: straightLeafNetwork,
  crease: creaseNetwork,
  neck: neckNetwork,
  crossedLeaves: crossedLeavesNetwork,
  parallelLeaves: parallelLeavesNetwork,
  foldedLeaf: foldedLeafNetwork,
  spiral: spiralNetwork,
  snapArch: snapArchNetwork,
  toggle: toggleNetwork,
  cellPanel: cellPanelNetwork,
  slitPanel: slitPanelNetwork,
};

/**
 * The mechanics of a family; one without is a mistake of the caller.
 *
 * @param family - id of a family [-]
 * @returns what makes its network [-]
 */
export function mechanicsOf(family: string): Mechanics {
  const mechanics = MECHANICS[family];
  if (!mechanics) throw new RangeError(`there is no network for ${family}`);
  return mechanics;
}
