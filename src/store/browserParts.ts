import { createStore, del, get, keys, set, type UseStore } from 'idb-keyval';
import type { PartStorage } from './savedPart.ts';

let opened: UseStore | undefined;

/** Opened at the first call and not before, since a browser without storage throws when asked. */
const store: UseStore = (mode, use) => (opened ??= createStore('bendbook', 'parts'))(mode, use);

/** The IndexedDB of this browser; where there is none, every call rejects. */
export const browserParts: PartStorage = {
  get: async (key) => get<unknown>(key, store),
  set: async (key, value) => set(key, value, store),
  del: async (key) => del(key, store),
  keys: async () => keys(store),
};
