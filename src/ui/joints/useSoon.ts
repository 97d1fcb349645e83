import { useCallback, useState } from 'react';
import { firstScreenStands } from './firstScreen.ts';

/** After this long without being seen it is fetched all the same, so that scrolling finds it there. */
const QUIET_MS = 1000;

/** Once it has been time, it is time for every joint of the visit. */
let was = false;

/**
 * Whether it is time to fetch what lies below the first screen: once that stands and the place below is in sight, or
 * after a while. Returns that, and the ref for its place.
 */
export function useSoon(): readonly [boolean, (place: Element | null) => (() => void) | undefined] {
  const [soon, setSoon] = useState(was);
  const ref = useCallback((place: Element | null) => {
    if (place === null) return undefined;
    const begin = () =>
      void firstScreenStands().then(() => {
        was = true;
        setSoon(true);
      });
    const watcher = new IntersectionObserver((entries) => {
      if (entries.some(({ isIntersecting }) => isIntersecting)) begin();
    });
    watcher.observe(place);
    const timer = setTimeout(begin, QUIET_MS);
    return () => {
      watcher.disconnect();
      clearTimeout(timer);
    };
  }, []);
  return [soon, ref];
}
