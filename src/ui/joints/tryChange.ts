import type { Assessment } from '../../core/design/assessment.ts';
import type { Joint } from '../../core/design/joint.ts';
import type { FlexureFamily } from '../../core/flexures/family.ts';
import type { Problem } from '../../core/problems.ts';
import { assessOnce } from './assessOnce.ts';
import { sizeLimits } from './briefValues.ts';

function problemsOf(joint: Joint): readonly Problem[] {
  const assessed = assessOnce(joint);
  return assessed.ok ? [] : assessed.problems;
}

/** The joint with a count that records the nearest whole number to a measured thickness. */
function recounted(joint: Joint, family: FlexureFamily, assessment: Assessment | undefined): Joint {
  if (joint.measuredThickness === undefined || assessment === undefined) return joint;
  const name = family.roles.count;
  const count = Math.min(assessment.fit.nearest, sizeLimits(family, name).max);
  return joint.sizes[name] === count ? joint : { ...joint, sizes: { ...joint.sizes, [name]: count } };
}

/**
 * A changed joint, or the problem that the change would bring. What was wrong before is no reason to refuse a change:
 * a joint from a file that cannot be assessed could otherwise never be put right one value at a time.
 */
export function tryChange(
  joint: Joint,
  asked: Joint,
  family: FlexureFamily,
): { readonly next: Joint; readonly problem: Problem | undefined } {
  const before = problemsOf(joint);
  const known = (problem: Problem) =>
    before.some(({ code, field }) => code === problem.code && field === problem.field);
  const problem = problemsOf(asked).find((found) => !known(found));
  const assessed = assessOnce(asked);
  return { next: recounted(asked, family, assessed.ok ? assessed.value : undefined), problem };
}
