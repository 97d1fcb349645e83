import { isTouching } from '../geometry/touching.ts';
import type { Filament } from '../material/types.ts';
import type { EffortAnswer, Grade, VerdictReason } from './assessment.ts';
import type { Movement } from './joint.ts';
import type { Solved } from './solved.ts';
import { leastGap, secondRest } from './solvedPath.ts';

/** One matter that the verdict weighs: its grade, why, and the room to spare as a ratio. */
export interface Finding {
  readonly grade: Grade;
  readonly reason: VerdictReason;
  readonly margin: number;
}

/** TPU sags out of its second place, which no elastic path tells (common practice, no source). */
export function sagsOut({ id }: Pick<Filament, 'id'>): boolean {
  return id === 'tpu95a';
}

/**
 * Whether a joint moves as wanted: not harder to push than asked, staying or coming back as asked, and clear of itself.
 * What only the solver can tell is left out where it was not asked.
 *
 * @param movement - the brief [-]
 * @param effort - largest effort on the way [N·mm] or [N]
 * @param filament - what it is printed in [-]
 * @param solved - the whole way, where the solver was asked [-]
 * @returns one finding for each matter that can be judged
 */
export function feelOf(
  movement: Movement,
  { effort }: EffortAnswer,
  filament: Pick<Filament, 'id'>,
  solved: Solved | undefined,
): readonly Finding[] {
  const { effortAtMost, stays, amount } = movement;
  const findings: Finding[] = [];
  if (effortAtMost !== undefined) {
    const margin = effort > 0 ? effortAtMost / effort : Number.POSITIVE_INFINITY;
    findings.push({ grade: margin >= 1 ? 'pass' : 'fail', reason: 'effort', margin });
  }
  if (!solved) return findings;
  if (stays !== undefined) {
    const isAsWanted = (secondRest(solved) !== undefined) === stays;
    const sags = stays && sagsOut(filament);
    findings.push({
      grade: !isAsWanted ? 'fail' : sags ? 'caution' : 'pass',
      reason: stays ? 'comes back' : 'stays',
      margin: isAsWanted ? 1 : 0,
    });
  }
  const gap = leastGap(solved, amount);
  if (gap !== undefined) {
    const [grade, margin] = isTouching(gap.gap) ? (['fail', 0] as const) : (['pass', 1] as const);
    findings.push({ grade, reason: 'touches', margin });
  }
  return findings;
}
