import type { PartStorage } from '../../src/store/savedPart.ts';

/** A storage of parts and filaments that is a map, and the map. */
export function mapStorage(entries: Readonly<Record<string, unknown>> = {}) {
  const map = new Map<string, unknown>(Object.entries(entries));
  const storage: PartStorage = {
    get: (key) => Promise.resolve(map.get(key)),
    set: (key, value) => Promise.resolve(void map.set(key, value)),
    del: (key) => Promise.resolve(void map.delete(key)),
    keys: () => Promise.resolve([...map.keys()]),
  };
  return { map, storage };
}
