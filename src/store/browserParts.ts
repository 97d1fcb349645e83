import { createStore, del, get, keys, set } from 'idb-keyval';
import type { PartStorage } from './savedPart.ts';

/** The IndexedDB of this browser; where there is none, every call is refused. */
export function browserParts(): PartStorage {
  const store = createStore('bendbook', 'parts');
  return {
    get: (key) => get<unknown>(key, store),
    set: (key, value) => set(key, value, store),
    del: (key) => del(key, store),
    keys: () => keys(store),
  };
}
