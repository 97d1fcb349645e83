import type { Assessment } from '../../../core/design/assessment.ts';
import { effortAt, peakStrainFor } from '../../../core/design/curves.ts';
import { strainsUpTo } from '../../../core/design/solvedPath.ts';
import type { StateNow } from './state.ts';

/** A network may strain by so much less than the assessment says before something in it is known to be out of sight. */
const SEEN = 0.99;

/** Whether the skin that strains most lies in the members drawn, or in strips that twist out of the plane. */
export function isStrainInPlane(a: Assessment): boolean {
  if (!a.solved) return true;
  const { within, atRoots } = strainsUpTo(a.solved, a.joint.movement.amount);
  return Math.max(within, atRoots * a.strain.rootFactor) >= SEEN * a.strain.peak;
}

/** What is felt in a state: strain of the skin, roots included, and effort against the movement [N·mm] or [N], below 0 where it pulls itself on. */
export interface Reading {
  readonly strain: number;
  readonly effort: number;
}

export function readingOf(a: Assessment, state: StateNow): Reading {
  const drawn = Math.max(state.within, state.atRoots * a.strain.rootFactor);
  const strain = isStrainInPlane(a) ? drawn : peakStrainFor(a, { amount: Math.abs(state.amount) });
  const { typical } = effortAt(a, state.amount);
  return { strain, effort: state.amount < 0 ? -typical : typical };
}
