import type { Assessment } from './assessment.ts';

/**
 * An assessment without the way there, for those that nobody draws.
 *
 * @param assessment - of a joint, by the solver or by hand [-]
 * @returns the same figures, some of them a megabyte lighter
 */
export function withoutWay(assessment: Assessment): Assessment {
  const { solved: _solved, ...rest } = assessment;
  return rest;
}
