import type { KindWorking } from './kindWorking.ts';
import { STRAIGHT_LEAF_WORKING } from './kinds/straightLeaf.ts';

/** The working of every kind, one line each; the names of sizes are checked in its own file. */
const KIND_WORKINGS: readonly KindWorking[] = [STRAIGHT_LEAF_WORKING as unknown as KindWorking];

/**
 * The working of a kind.
 *
 * @param family - id of a kind of flexure [-]
 * @returns its drives with their steps [-]; undefined when it has none
 */
export function kindWorking(family: string): KindWorking | undefined {
  return KIND_WORKINGS.find((one) => one.family === family);
}
