/** What is needed to look for cures of a part, and what counts as one. */
import type { Box3 } from '../geometry/mesh/triangleMesh.ts';
import type { Cure, CureChange } from './cure.ts';
import type { Flexure } from './flexure.ts';
import type { AskedOfAll, Judged, PrintedAs } from './judged.ts';
import type { Tally } from './verdicts.ts';

/** A part as it is checked, and what becomes of it otherwise. */
export interface Curable {
  readonly flexures: readonly Flexure[];
  readonly box: Box3;
  readonly as: PrintedAs;
  readonly asked: AskedOfAll;
  readonly before: readonly Judged[];
  readonly judge: (as: PrintedAs, asked?: AskedOfAll) => readonly Judged[];
  /** The change as a cure, with what it does to every section. */
  readonly cureOf: (change: CureChange, as: PrintedAs, asked?: AskedOfAll) => Cure;
}

/**
 * Whether a change helps: nothing is worse, and something is better.
 *
 * @param before - counts of sections [-]
 * @param after - counts of sections with the change [-]
 * @returns true for a change worth telling [-]
 */
export function isHelp(before: Tally, after: Tally): boolean {
  const isWorse = (['passing', 'lasting', 'whole'] as const).some((what) => after[what] < before[what]);
  const isBetter = (['passing', 'lasting', 'whole', 'even'] as const).some((what) => after[what] > before[what]);
  return isBetter && !isWorse;
}
