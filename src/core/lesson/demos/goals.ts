/** The kinds of question that demonstrations ask, as rules over assessments. */
import { allowableNamed } from '../../design/allowables.ts';
import type { Assessment } from '../../design/assessment.ts';
import type { Goal } from './demo.ts';

/**
 * A joint should strain no more than its filament stands again and again.
 *
 * @param a - the joint as assessed [-]
 * @returns strains as fractions
 */
export function strainKept(a: Assessment): Goal {
  const { limit, strain } = allowableNamed(a.allowables, 'repeated');
  return { figure: 'strain', sense: 'at most', now: strain, wanted: limit, isMet: strain <= limit };
}

/**
 * One figure should be at least so many times another.
 *
 * @param figure - of the joint that is asked about [-]
 * @param other - of the joint it is compared with, > 0 [-]
 * @param wanted - how many times [-]
 * @returns ratios [-]
 */
export function timesAsMuch(figure: number, other: number, wanted: number): Goal {
  const now = figure / other;
  // Round-off must not fail what comes out at the very ratio.
  return { figure: 'times', sense: 'at least', now, wanted, isMet: now >= wanted * (1 - 1e-9) };
}

/**
 * Median life as far as anyone has counted.
 *
 * @param a - the joint as assessed [-]
 * @returns cycles, 0 where the first flex breaks it
 */
export function countedLife({ life }: Pick<Assessment, 'life'>): number {
  return life.breaksOnFirstFlex ? 0 : Math.min(life.median, life.maxReportableCycles);
}
