import { useSyncExternalStore } from 'react';
import { PLACES, type Place } from './places.ts';

function subscribe(changed: () => void): () => void {
  window.addEventListener('hashchange', changed);
  return () => window.removeEventListener('hashchange', changed);
}

/** The place that the address names before any `/`, else the first. */
export function usePlace(): Place {
  const hash = useSyncExternalStore(subscribe, () => location.hash);
  return PLACES.find(({ id }) => hash.split('/')[0] === `#${id}`) ?? PLACES[0];
}
