/** What could be tested next for the joint, by how sure it is now. */
import type { Assessment } from '../../../core/design/assessment.ts';
import type { DoubtAnswer } from '../../../core/design/doubtAnswer.ts';
import type { LifeNow, NextTest } from '../../../core/tallies/nextTest.ts';
import type { Trial } from '../trial.ts';

export interface Proposed {
  readonly now: LifeNow;
  readonly tests: readonly NextTest[];
}

export function proposed(_trial: Trial, _a: Assessment, doubt: DoubtAnswer): Proposed {
  return { now: { life: [doubt.life.p10, doubt.life.p90], chance: [0, 1] }, tests: [] };
}
