import { useCallback, useState } from 'react';
import type { FindAnswer } from '../../core/find/findAnswer.ts';

interface Held {
  readonly answer: FindAnswer;
  /** Whether there is a newer one that is not shown. */
  readonly isWaiting: boolean;
  readonly onHold: (isHeld: boolean) => void;
}

/**
 * The answer that is listed: the newest, but the one that stands as long as something in the list has the focus.
 *
 * @param now - the newest answer
 * @param of - what was looked for: once that is otherwise, nothing is held
 */
export function useHeld(now: FindAnswer, of: string): Held {
  const [kept, keep] = useState<{ readonly of: string; readonly answer: FindAnswer }>();
  const held = kept?.of === of ? kept.answer : undefined;
  const onHold = useCallback(
    (isHeld: boolean) => keep(isHeld ? { of, answer: held ?? now } : undefined),
    [of, held, now],
  );
  return { answer: held ?? now, isWaiting: held !== undefined && held !== now, onHold };
}
