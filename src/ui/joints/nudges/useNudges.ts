import { useMemo } from 'react';
import type { Assessment } from '../../../core/design/assessment.ts';
import type { Joint } from '../../../core/design/joint.ts';
import { nudged, type Nudged } from '../../../core/design/nudges.ts';
import type { Input } from '../../../workers/protocol.ts';
import { useAsked, type Asked } from '../match/useAsked.ts';
import { background } from '../solver.ts';

const inputs = new WeakMap<Joint, Input<'nudges'>>();

/** The same object for the same joint, so that what was answered is found again. */
function inputFor(joint: Joint): Input<'nudges'> {
  const input = inputs.get(joint) ?? { joint };
  inputs.set(joint, input);
  return input;
}

export interface Told {
  readonly before: Assessment;
  readonly nudged: readonly Nudged[];
}

/** What small changes do: at once where hand forms are exact, else when the solver has worked them out. */
export function useNudges(
  a: Assessment,
  isWanted: boolean,
): Omit<Asked<unknown>, 'answer'> & { readonly told: Told | undefined } {
  const isAtHand = a.travel !== undefined;
  const byHand = useMemo(() => (isAtHand ? { before: a, nudged: nudged(a.joint) } : undefined), [a, isAtHand]);
  const { answer, ...asked } = useAsked(background, 'nudges', inputFor(a.joint), !isAtHand && isWanted);
  return { ...asked, told: byHand ?? (answer?.ok ? answer.value : undefined) };
}
