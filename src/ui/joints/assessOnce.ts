import { assess } from '../../core/design/assess.ts';
import type { Assessment } from '../../core/design/assessment.ts';
import type { Joint } from '../../core/design/joint.ts';
import type { Result } from '../../core/result.ts';

const known = new WeakMap<Joint, Result<Assessment>>();

/** The assessment of a joint; joints never change in place, so each is assessed once. */
export function assessOnce(joint: Joint): Result<Assessment> {
  let assessed = known.get(joint);
  if (assessed === undefined) {
    assessed = assess(joint);
    known.set(joint, assessed);
  }
  return assessed;
}
