import { useSyncExternalStore } from 'react';

const query = () => matchMedia('(prefers-reduced-motion: reduce)');

function subscribe(onChange: () => void): () => void {
  const list = query();
  list.addEventListener('change', onChange);
  return () => list.removeEventListener('change', onChange);
}

/** Whether the user has asked for less movement on screen. */
export function useReducedMotion(): boolean {
  return useSyncExternalStore(subscribe, () => query().matches);
}
