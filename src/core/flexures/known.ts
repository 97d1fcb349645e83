/**
 * The families that have been taken in: at first that of the first screen, and all of them once `index.ts`, the whole
 * list, has been imported. It is state, and harmless in a pure core, as a cache of imports is: it only ever grows, each
 * id by one constant value, so that a family once found is found for good and is always the same.
 */
import type { FlexureFamily } from './family.ts';
import { straightLeaf } from './straightLeaf.ts';

const known = new Map<string, FlexureFamily>();

/**
 * Takes families in; one that is known already stays as it is.
 *
 * @param families - constants of this folder [-]
 */
export function takeFamilies(families: readonly FlexureFamily[]): void {
  for (const family of families) known.set(family.id, known.get(family.id) ?? family);
}

takeFamilies([straightLeaf]);

/**
 * The family with an id.
 *
 * @param id - key of a family [-]
 * @returns the family, or undefined when there is none, or none has been taken in
 *
 * @example findFamily('straightLeaf')?.countOf // → 'lines'
 */
export function findFamily(id: string): FlexureFamily | undefined {
  return known.get(id);
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
