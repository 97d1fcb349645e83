import { useCallback, useState } from 'react';

/** Whether a place has come in sight, or nearly; and the ref for it. Once seen it stays so. */
export function useSeen(): readonly [boolean, (place: Element | null) => (() => void) | undefined] {
  const [isSeen, setSeen] = useState(false);
  const ref = useCallback((place: Element | null) => {
    if (place === null) return undefined;
    const watcher = new IntersectionObserver((entries) => {
      if (entries.some(({ isIntersecting }) => isIntersecting)) setSeen(true);
    });
    watcher.observe(place);
    return () => watcher.disconnect();
  }, []);
  return [isSeen, ref];
}
