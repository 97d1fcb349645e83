import { useEffect } from 'react';
import { fetchKinds } from './fetchKinds.ts';
import { firstScreenStands } from './firstScreen.ts';

/** A new part offers every kind, and should do so even when the page has been cut off since. */
const fetchLater = () => Promise.allSettled([fetchKinds(), import('./EmptyPart.tsx')]);

/** Fetches the other kinds once the first screen stands. */
export function useKindsLater(): void {
  useEffect(() => {
    void firstScreenStands().then(fetchLater);
  }, []);
}
