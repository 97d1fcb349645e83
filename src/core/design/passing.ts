import type { Assessment } from './assessment.ts';
import type { Judge } from './assess.ts';
import type { Joint } from './joint.ts';

/** Whether a joint, as assessed, does all that its brief asks. */
export function isPassing({ verdict }: Pick<Assessment, 'verdict'>): boolean {
  return verdict.grade === 'pass';
}

/** Whether a joint is not refused and passes. */
export function passes(joint: Joint, judge: Judge): boolean {
  const judged = judge(joint);
  return judged.ok && isPassing(judged.value);
}
