/**
 * Puts items in the order of their keys; those of equal key stay as they were, so that sorting by the last key first and
 * by the first key last sorts by both. Takes the same time whatever the keys are.
 *
 * @param items - what is sorted, each the number of a key [-]
 * @param keys - a whole number of each item [-], 0 to range − 1
 * @param range - how many keys there are [-]
 * @returns the items in order [-]
 */
export function sortedByKey(items: Uint32Array, keys: Uint32Array, range: number): Uint32Array {
  const next = new Uint32Array(range + 1);
  for (let i = 0; i < items.length; i += 1) next[keys[items[i]!]! + 1]! += 1;
  for (let k = 0; k < range; k += 1) next[k + 1]! += next[k]!;
  const sorted = new Uint32Array(items.length);
  for (let i = 0; i < items.length; i += 1) {
    const item = items[i]!;
    const key = keys[item]!;
    sorted[next[key]!] = item;
    next[key]! += 1;
  }
  return sorted;
}

/**
 * The whole numbers from 0.
 *
 * @param count - how many [-], ≥ 0
 * @returns 0, 1, 2 … [-]
 */
export function wholeNumbers(count: number): Uint32Array {
  const all = new Uint32Array(count);
  for (let i = 0; i < count; i += 1) all[i] = i;
  return all;
}
