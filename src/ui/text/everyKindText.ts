/** The words of every kind, one file a kind in `kinds/`. To import this list is to take all of them in. */
import type { KindText } from './kinds/kind.ts';
import { CELL_PANEL } from './kinds/cellPanel.ts';
import { CREASE } from './kinds/crease.ts';
import { CROSSED_LEAVES } from './kinds/crossedLeaves.ts';
import { FOLDED_LEAF } from './kinds/foldedLeaf.ts';
import { NECK } from './kinds/neck.ts';
import { PARALLEL_LEAVES } from './kinds/parallelLeaves.ts';
import { SLIT_PANEL } from './kinds/slitPanel.ts';
import { SNAP_ARCH } from './kinds/snapArch.ts';
import { SPIRAL } from './kinds/spiral.ts';
import { STRAIGHT_LEAF } from './kinds/straightLeaf.ts';
import { TOGGLE } from './kinds/toggle.ts';
import { takeKindText } from './kindText.ts';

const EVERY_KIND: Readonly<Record<string, KindText>> = {
  straightLeaf: STRAIGHT_LEAF,
  crease: CREASE,
  neck: NECK,
  crossedLeaves: CROSSED_LEAVES,
  parallelLeaves: PARALLEL_LEAVES,
  foldedLeaf: FOLDED_LEAF,
  spiral: SPIRAL,
  snapArch: SNAP_ARCH,
  toggle: TOGGLE,
  cellPanel: CELL_PANEL,
  slitPanel: SLIT_PANEL,
};

takeKindText(EVERY_KIND);
