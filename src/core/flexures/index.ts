import { cellPanel } from './cellPanel.ts';
import { crease } from './crease.ts';
import { crossedLeaves } from './crossedLeaves.ts';
import type { FlexureFamily } from './family.ts';
import { foldedLeaf } from './foldedLeaf.ts';
import { neck } from './neck.ts';
import { parallelLeaves } from './parallelLeaves.ts';
import { slitPanel } from './slitPanel.ts';
import { snapArch } from './snapArch.ts';
import { spiral } from './spiral.ts';
import { straightLeaf } from './straightLeaf.ts';
import { toggle } from './toggle.ts';

/** Every kind of flexure, in the order in which they are offered. */
export const FAMILIES: readonly FlexureFamily[] = [
  straightLeaf,
  crease,
  neck,
  crossedLeaves,
  parallelLeaves,
  foldedLeaf,
  spiral,
  snapArch,
  toggle,
  cellPanel,
  slitPanel,
];

/**
 * The family with an id.
 *
 * @param id - key of a family [-]
 * @returns the family, or undefined when there is none
 *
 * @example findFamily('straightLeaf')?.countOf // → 'lines'
 */
export function findFamily(id: string): FlexureFamily | undefined {
  return FAMILIES.find((family) => family.id === id);
}

/**
 * The family of a joint that has been checked; a joint of no known family is a mistake of the caller.
 *
 * @param joint - a joint, by the id of its family [-]
 * @returns the family
 *
 * @example familyOf({ family: 'crease' }).countOf // → 'layers'
 */
export function familyOf(joint: { readonly family: string }): FlexureFamily {
  const family = findFamily(joint.family);
  if (!family) throw new RangeError(`there is no kind of flexure called ${joint.family}`);
  return family;
}
