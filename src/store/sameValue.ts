/** Whether two plain values (records, lists, text, numbers) hold the same; shared pieces are seen at once. */
export function sameValue(a: unknown, b: unknown): boolean {
  if (Object.is(a, b)) return true;
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false;
  const keys = Object.keys(a);
  if (keys.length !== Object.keys(b).length) return false;
  return keys.every((key) => Object.hasOwn(b, key) && sameValue(Reflect.get(a, key), Reflect.get(b, key)));
}
