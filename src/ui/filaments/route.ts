import { useSyncExternalStore } from 'react';

const PLACE = '#filaments';

function subscribe(changed: () => void): () => void {
  window.addEventListener('hashchange', changed);
  return () => window.removeEventListener('hashchange', changed);
}

/** Address of one filament, or of all of them. */
export function addressOf(id?: string): string {
  return id === undefined ? PLACE : `${PLACE}/${encodeURIComponent(id)}`;
}

/** Key of the filament in an address; `undefined` for all of them. */
export function filamentIn(hash: string): string | undefined {
  const [, id = ''] = hash.split('/');
  try {
    return id === '' ? undefined : decodeURIComponent(id);
  } catch {
    return id;
  }
}

/** The filament that the address names. */
export function useFilamentId(): string | undefined {
  return filamentIn(useSyncExternalStore(subscribe, () => location.hash));
}
