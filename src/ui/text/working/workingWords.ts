import { CELL_PANEL_WORDS } from './cellPanelWords.ts';
import { CREASE_WORDS } from './creaseWords.ts';
import { CROSSED_LEAVES_WORDS } from './crossedLeavesWords.ts';
import { FOLDED_LEAF_WORDS } from './foldedLeafWords.ts';
import { NECK_WORDS } from './neckWords.ts';
import { PARALLEL_LEAVES_WORDS } from './parallelLeavesWords.ts';
import { SHARED_WORDS } from './sharedWords.ts';
import { SLIT_PANEL_WORDS } from './slitPanelWords.ts';
import { SNAP_ARCH_WORDS } from './snapArchWords.ts';
import { SPIRAL_WORDS } from './spiralWords.ts';
import { STRAIGHT_LEAF_WORDS } from './straightLeafWords.ts';
import { TOGGLE_WORDS } from './toggleWords.ts';
import type { StepWords, WorkingWords } from './words.ts';

/** Words that only one kind has, by its id. */
const KIND_WORDS: Readonly<Record<string, WorkingWords>> = {
  straightLeaf: STRAIGHT_LEAF_WORDS,
  crease: CREASE_WORDS,
  neck: NECK_WORDS,
  crossedLeaves: CROSSED_LEAVES_WORDS,
  cellPanel: CELL_PANEL_WORDS,
  slitPanel: SLIT_PANEL_WORDS,
  parallelLeaves: PARALLEL_LEAVES_WORDS,
  foldedLeaf: FOLDED_LEAF_WORDS,
  snapArch: SNAP_ARCH_WORDS,
  spiral: SPIRAL_WORDS,
  toggle: TOGGLE_WORDS,
};

/** A row of the table of stepped bars, and terms that are numbered, share their words. */
const NUMBERED: Readonly<Record<string, string>> = {
  a: 'of the table',
  b: 'of the table',
  c: 'of the table',
  C: 'row of the table at this fillet',
  n: 'flexes that are wanted of another swing',
  N: 'flexes that half last of another swing',
};

/** What a step is called and within what it holds. */
export function stepWords(family: string, id: string): StepWords | undefined {
  return KIND_WORDS[family]?.steps[id] ?? SHARED_WORDS.steps[id];
}

/** What a symbol stands for in the working of a kind. */
export function symbolWords(family: string, symbol: string): string | undefined {
  const own = KIND_WORDS[family]?.symbols[symbol] ?? SHARED_WORDS.symbols[symbol];
  return own ?? (/_\d+$/.test(symbol) ? NUMBERED[symbol.replace(/_\d+$/, '')] : undefined);
}
