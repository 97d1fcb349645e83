/** Words of each kind of flexure, one file a kind in `kinds/`; and how a joint lies, in words. */
import type { Lying } from '../../core/print/profile.ts';
import { CELL_PANEL } from './kinds/cellPanel.ts';
import { CREASE } from './kinds/crease.ts';
import { CROSSED_LEAVES } from './kinds/crossedLeaves.ts';
import { FOLDED_LEAF } from './kinds/foldedLeaf.ts';
import type { KindText } from './kinds/kind.ts';
import { NECK } from './kinds/neck.ts';
import { PARALLEL_LEAVES } from './kinds/parallelLeaves.ts';
import { SLIT_PANEL } from './kinds/slitPanel.ts';
import { SNAP_ARCH } from './kinds/snapArch.ts';
import { SPIRAL } from './kinds/spiral.ts';
import { STRAIGHT_LEAF } from './kinds/straightLeaf.ts';
import { TOGGLE } from './kinds/toggle.ts';

const KINDS: Readonly<Record<string, KindText>> = {
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

/** Words of a kind; every family of the core has some, and a test holds them together. */
export function kindText(family: string): KindText {
  const text = KINDS[family];
  if (!text) throw new RangeError(`no words for the family ${family}`);
  return text;
}

const LYING_TEXT: Readonly<Record<Lying, string>> = { flat: 'flat', crease: 'as a crease', upright: 'upright' };

/** How a joint of a kind lies, as it stands after “printed”. */
export function lyingText(family: string, lying: Lying): string {
  return kindText(family).lying?.[lying] ?? LYING_TEXT[lying];
}
