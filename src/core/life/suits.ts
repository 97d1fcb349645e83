/** What a filament suits in terms of flexing, by stated limits on its figures. */
import { softensAt } from '../material/choose.ts';
import type { WholeFilament } from '../material/types.ts';
import { DAY_MINUTES, stressLeft } from './relaxation.ts';
import { reckonedFolds } from './reckonedFolds.ts';

/** Limits by which a filament suits a use or does not; between them nothing is said. */
export const SUITS = {
  /** Median folds at the fold of practice. */
  fullFolds: { many: 100_000, few: 1000 },
  /** Strain stood again and again, as a fraction. */
  bends: { far: 0.025, little: 0.01 },
  /** Modulus [MPa]. */
  springs: { stiff: 1800, soft: 1000 },
  /** Share of the push left after a day. */
  held: { keeps: 0.75, loses: 0.6 },
  /** Where it softens [°C]. */
  warmth: { warm: 90, cool: 65 },
  /** Share of the dry modulus that is left in a room. */
  damp: { changes: 0.7 },
} as const;

export type Use = 'full folds' | 'far bends' | 'stiff springs' | 'being held' | 'warm places' | 'damp and dry';

export interface Suited {
  readonly use: Use;
  readonly suits: boolean;
  /** The figure that decides: folds, a strain or a share as a fraction, [MPa] or [°C]. */
  readonly figure: number;
}

function judged(use: Use, figure: number, suits: boolean, not: boolean): readonly Suited[] {
  return suits || not ? [{ use, suits, figure }] : [];
}

/**
 * What a filament suits, and what it does not, by `SUITS`.
 *
 * @param row - a whole row [-]
 * @returns the uses that its figures decide, each with the figure
 */
export function suitsOf(row: WholeFilament): readonly Suited[] {
  const { properties: p } = row;
  const folds = reckonedFolds(row).practice;
  const bends = p.permissibleStrainRepeated.typical;
  const modulus = p.youngsModulus.typical;
  const left = stressLeft(DAY_MINUTES, p.relaxationExponent.typical);
  const soft = softensAt(row).typical;
  const damp = p.conditionedOverDryModulus?.typical ?? 1;
  const { fullFolds, bends: bend, springs, held, warmth } = SUITS;
  return [
    ...judged('full folds', folds, folds >= fullFolds.many, folds < fullFolds.few),
    ...judged('far bends', bends, bends >= bend.far, bends < bend.little),
    ...judged('stiff springs', modulus, modulus >= springs.stiff, modulus < springs.soft),
    ...judged('being held', left, left >= held.keeps, left < held.loses),
    ...judged('warm places', soft, soft >= warmth.warm, soft < warmth.cool),
    ...judged('damp and dry', damp, false, damp < SUITS.damp.changes),
  ];
}
