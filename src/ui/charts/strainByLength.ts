/** Strain at other lengths and counts as the curves need it: a hundred times over, and by forms that may be slow. */
import type { Assessment } from '../../core/design/assessment.ts';
import { peakStrainFor } from '../../core/design/curves.ts';
import { isExactByHand } from '../../core/design/response.ts';
import { familyOf } from '../../core/flexures/known.ts';
import type { Mm } from '../../core/units.ts';

/** Whether the formulas of its kind are as good as the solver for the joint as it is. */
export function isByFormula(a: Assessment): boolean {
  const { drive, sizes, section, joint } = a;
  const { thickness } = section;
  return isExactByHand({ family: familyOf(joint), drive: drive.id, sizes, thickness, amount: joint.movement.amount });
}

/** A formula that only estimates is asked at lengths so many times apart, the present one among them. */
const APART = 1.15;

const known = new WeakMap<Assessment, Map<string, number>>();

function asked(a: Assessment, step: number, count: number | undefined): number {
  const found = known.get(a) ?? new Map<string, number>();
  known.set(a, found);
  const key = `${step} ${count}`;
  const strain = found.get(key) ?? strainAt(a, a.length * APART ** step, count);
  found.set(key, strain);
  return strain;
}

function strainAt(a: Assessment, length: Mm, count: number | undefined): number {
  return peakStrainFor(a, count === undefined ? { length } : { length, count });
}

/** Peak strain at a length, with another count where one is given; by straight lines on log paper where it is an estimate. */
export function strainByLength(a: Assessment, length: Mm, count?: number): number {
  if (isByFormula(a)) return strainAt(a, length, count);
  const steps = Math.log(length / a.length) / Math.log(APART);
  // The present length is a knot, and must stay on it for all that logarithms round.
  const below = Math.floor(steps + 1e-9);
  const share = Math.max(0, steps - below);
  const from = asked(a, below, count);
  if (share < 1e-9) return from;
  const to = asked(a, below + 1, count);
  return from > 0 && to > 0 && Number.isFinite(from + to) ? from * (to / from) ** share : strainAt(a, length, count);
}
