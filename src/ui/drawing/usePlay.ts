import { useCallback, useEffect, useState } from 'react';
import { throughTravel, TRAVEL_TIME } from './travel.ts';

/**
 * Moves the joint through its travel and back once. Frames stay in here: nothing else on the page follows them.
 * Stopping leaves it where it is.
 */
export function usePlay(onStop: (fraction: number) => void): {
  /** Where it is while it moves. */
  readonly playing: number | undefined;
  readonly toggle: () => void;
} {
  const [playing, setPlaying] = useState<number>();
  const isPlaying = playing !== undefined;
  useEffect(() => {
    if (!isPlaying) return undefined;
    let frame = 0;
    let begun: number | undefined;
    const step = (now: number) => {
      begun ??= now;
      const elapsed = now - begun;
      setPlaying(elapsed >= TRAVEL_TIME ? undefined : throughTravel(elapsed));
      frame = requestAnimationFrame(step);
    };
    frame = requestAnimationFrame(step);
    return () => cancelAnimationFrame(frame);
  }, [isPlaying]);
  const toggle = useCallback(() => {
    if (playing === undefined) return setPlaying(0);
    setPlaying(undefined);
    return onStop(playing);
  }, [playing, onStop]);
  return { playing, toggle };
}
