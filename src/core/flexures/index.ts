import { cellPanel } from './cellPanel.ts';
import { crease } from './crease.ts';
import { crossedLeaves } from './crossedLeaves.ts';
import type { FlexureFamily } from './family.ts';
import { foldedLeaf } from './foldedLeaf.ts';
import { takeFamilies } from './known.ts';
import { neck } from './neck.ts';
import { parallelLeaves } from './parallelLeaves.ts';
import { slitPanel } from './slitPanel.ts';
import { snapArch } from './snapArch.ts';
import { spiral } from './spiral.ts';
import { straightLeaf } from './straightLeaf.ts';
import { toggle } from './toggle.ts';

/**
 * Every kind of flexure, in the order in which they are offered. To import this list is to take all of them in; what the
 * first screen needs imports `known.ts` alone.
 */
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

takeFamilies(FAMILIES);

export { findFamily } from './known.ts';
