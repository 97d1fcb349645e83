import { useSyncExternalStore } from 'react';
import { PLACES, type Place } from './places.ts';

function subscribe(changed: () => void): () => void {
  window.addEventListener('hashchange', changed);
  return () => window.removeEventListener('hashchange', changed);
}

/** The place that the address begins with, else the first. */
export function usePlace(): Place {
  const hash = useSyncExternalStore(subscribe, () => location.hash);
  return PLACES.find(({ id }) => hash.startsWith(`#${id}`)) ?? PLACES[0];
}
