/**
 * Things in groups: two are in one group when a chain of pairs joins them.
 *
 * @param count - how many things [-], numbered from 0
 * @param pairs - numbers of two that belong together [-]
 * @returns the numbers of each group [-], groups and numbers in rising order
 *
 * @example groupsOf(4, [[3, 0]]) // → [[0, 3], [1], [2]]
 */
export function groupsOf(count: number, pairs: readonly (readonly [number, number])[]): readonly (readonly number[])[] {
  const parent = Array.from({ length: count }, (_, i) => i);
  const rootOf = (i: number): number => {
    let at = i;
    while (parent[at] !== at) at = parent[at] = parent[parent[at]!]!;
    return at;
  };
  for (const [a, b] of pairs) {
    const [first, second] = [rootOf(a), rootOf(b)];
    // The lower number leads, so that groups come in the order of their first things.
    parent[Math.max(first, second)] = Math.min(first, second);
  }
  const groups = new Map<number, number[]>();
  for (let i = 0; i < count; i += 1) groups.set(rootOf(i), [...(groups.get(rootOf(i)) ?? []), i]);
  return [...groups.values()];
}
