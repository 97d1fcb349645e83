import { useState } from 'react';
import { clamp, type Span } from './frame.ts';
import { movedTo, moveOf } from './stops.ts';

interface Reading {
  /** Where it is read, or would be. */
  readonly now: number;
  readonly active: boolean;
  readonly read: (at: number) => void;
  readonly leave: () => void;
  /** Whether the key meant something here; Escape does only while something is read. */
  readonly key: (pressed: string, shift: boolean) => boolean;
}

/** A reading along one axis: it begins at `start`, and keys take it from stop to stop. */
export function useReading(x: Span, start: number, stops: () => readonly number[]): Reading {
  const [at, setAt] = useState<number>();
  const now = clamp(at ?? start, x);
  const leave = () => setAt(undefined);
  const key = (pressed: string, shift: boolean): boolean => {
    if (pressed === 'Escape' && at !== undefined) {
      leave();
      return true;
    }
    const move = moveOf(pressed, shift);
    if (move !== undefined) setAt(movedTo(stops(), now, move));
    return move !== undefined;
  };
  return { now, active: at !== undefined, read: setAt, leave, key };
}
