/** What the solver has answered, by joint: joints never change in place, so an answer holds for good. */
import { useSyncExternalStore } from 'react';
import type { Assessment } from '../../core/design/assessment.ts';
import type { Joint } from '../../core/design/joint.ts';
import type { Result } from '../../core/result.ts';
import { assessOnce } from './assessOnce.ts';

const whole = new WeakMap<Joint, Result<Assessment>>();
const verdicts = new WeakMap<Joint, Result<Assessment>>();
const listeners = new Set<() => void>();

/** Keeps an answer; one that is not `drawn` serves for the verdict only. */
export function keepAnswer(joint: Joint, answer: Result<Assessment>, drawn: boolean): void {
  (drawn ? whole : verdicts).set(joint, answer);
  for (const listener of listeners) listener();
}

function listen(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}

/** Whether the solver has more to say than the hand form: all but what rolls to an arc, and what is refused anyway. */
export function needsSolver(joint: Joint): boolean {
  const byHand = assessOnce(joint);
  return byHand.ok && byHand.value.travel === undefined;
}

export function wholeAnswer(joint: Joint): Result<Assessment> | undefined {
  return whole.get(joint);
}

export function hasVerdict(joint: Joint): boolean {
  return whole.has(joint) || verdicts.has(joint);
}

/** The answer with its way, once it is there. */
export function useWholeAnswer(joint: Joint): Result<Assessment> | undefined {
  return useSyncExternalStore(listen, () => whole.get(joint));
}

/** The best that is known of a joint: by the solver, or by hand until then. */
export function useBestKnown(joint: Joint): Result<Assessment> {
  return useSyncExternalStore(listen, () => whole.get(joint) ?? verdicts.get(joint) ?? assessOnce(joint));
}
