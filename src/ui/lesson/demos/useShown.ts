import { useEffect, useState } from 'react';
import { lessonIn, noteInAddress, type LessonAddress } from '../route.ts';
import { addressOf, shownIn, type Shown } from './demoState.ts';

/** A hand that has not moved for so long rests [ms]. */
const REST = 300;

/** What is shown: as the address says whenever that changes, then as it is moved; noted in the address when the hand rests. */
export function useShown(address: LessonAddress): readonly [Shown, (change: Partial<Shown>) => void] {
  const [shown, setShown] = useState(() => shownIn(address));
  const [read, setRead] = useState(address);
  if (address !== read) {
    setRead(address);
    setShown(shownIn(address));
  }
  const now = addressOf(shown);
  useEffect(() => {
    const timer = setTimeout(() => {
      // An address that comes to the same is left as somebody wrote it.
      if (now !== addressOf(shownIn(lessonIn(location.hash)))) noteInAddress(now);
    }, REST);
    return () => clearTimeout(timer);
  }, [now]);
  return [shown, (change) => setShown((before) => ({ ...before, ...change }))];
}
