import { crease } from './crease.ts';
import type { FlexureFamily } from './family.ts';
import { straightLeaf } from './straightLeaf.ts';

/** Every kind of flexure, in the order in which they are offered. */
export const FAMILIES: readonly FlexureFamily[] = [straightLeaf, crease];

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
