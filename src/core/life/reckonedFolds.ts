import { PRACTICE_FOLD } from '../material/evidence.ts';
import type { Filament } from '../material/types.ts';
import { lifeAtStrain } from './strainLife.ts';

/** Strains between which a hinge that is folded hard may lie, as fractions. */
export const FOLD_STRAINS = { hard: 0.3, practice: PRACTICE_FOLD, mild: 0.05 } as const;

/** Median folds of a thin hinge along lines by the curve of its row, none above what anyone has counted. */
export type Reckoned = Readonly<Record<keyof typeof FOLD_STRAINS, number>>;

/**
 * What the curve of a filament gives for a thin hinge that is folded from flat and back.
 *
 * @param filament - row of the filament table [-]
 * @returns median folds [-] at 30, 14.7 and 5 % strain; 0 where the first fold breaks it, never past the end of counting
 *
 * Source: strain-life.
 */
export function reckonedFolds({ life }: Pick<Filament, 'life'>): Reckoned {
  const at = (strain: number) => Math.min(lifeAtStrain(strain, life), life.maxReportableCycles);
  return { hard: at(FOLD_STRAINS.hard), practice: at(FOLD_STRAINS.practice), mild: at(FOLD_STRAINS.mild) };
}
