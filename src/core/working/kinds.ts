import type { KindWorking } from './kindWorking.ts';
import { CELL_PANEL_WORKING } from './kinds/cellPanel.ts';
import { CREASE_WORKING } from './kinds/crease.ts';
import { CROSSED_LEAVES_WORKING } from './kinds/crossedLeaves.ts';
import { FOLDED_LEAF_WORKING } from './kinds/foldedLeaf.ts';
import { NECK_WORKING } from './kinds/neck.ts';
import { PARALLEL_LEAVES_WORKING } from './kinds/parallelLeaves.ts';
import { SLIT_PANEL_WORKING } from './kinds/slitPanel.ts';
import { SNAP_ARCH_WORKING } from './kinds/snapArch.ts';
import { SPIRAL_WORKING } from './kinds/spiral.ts';
import { STRAIGHT_LEAF_WORKING } from './kinds/straightLeaf.ts';
import { TOGGLE_WORKING } from './kinds/toggle.ts';

/** The working of every kind, one line each; the names of sizes are checked in its own file. */
const KIND_WORKINGS = [
  STRAIGHT_LEAF_WORKING,
  CREASE_WORKING,
  NECK_WORKING,
  CROSSED_LEAVES_WORKING,
  CELL_PANEL_WORKING,
  SLIT_PANEL_WORKING,
  PARALLEL_LEAVES_WORKING,
  FOLDED_LEAF_WORKING,
  SNAP_ARCH_WORKING,
  SPIRAL_WORKING,
  TOGGLE_WORKING,
] as unknown as readonly KindWorking[];

/**
 * The working of a kind.
 *
 * @param family - id of a kind of flexure [-]
 * @returns its drives with their steps [-]; undefined when it has none
 */
export function kindWorking(family: string): KindWorking | undefined {
  return KIND_WORKINGS.find((one) => one.family === family);
}
