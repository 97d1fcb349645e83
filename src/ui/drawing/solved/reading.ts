import type { Assessment } from '../../../core/design/assessment.ts';
import { peakStrainFor } from '../../../core/design/curves.ts';
import { feltAt, strainOutOfSight } from '../../../core/design/feltEffort.ts';
import type { StateNow } from './state.ts';

/** Whether the skin that strains most lies in the members drawn, or in strips that twist out of the plane. */
export function isStrainInPlane(a: Assessment): boolean {
  return !a.solved || strainOutOfSight(a) === 0;
}

/** What is felt in a state: strain of the skin, roots included, and effort against the movement [N·mm] or [N], below 0 where it pulls itself on. */
export interface Reading {
  readonly strain: number;
  readonly effort: number;
}

export function readingOf(a: Assessment, state: StateNow): Reading {
  const drawn = Math.max(state.within, state.atRoots * a.strain.rootFactor);
  const strain = isStrainInPlane(a) ? drawn : peakStrainFor(a, { amount: Math.abs(state.amount) });
  const effort = feltAt(a, state.amount);
  return { strain, effort: state.amount < 0 ? -effort : effort };
}
