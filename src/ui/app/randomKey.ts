/** A key that nobody else's has by chance, so that shared files seldom meet one of the same key. */
export function randomKey(stem: string, isTaken: (key: string) => boolean): string {
  const [number = 0] = crypto.getRandomValues(new Uint32Array(1));
  const key = `${stem}-${number.toString(36)}`;
  return isTaken(key) ? randomKey(stem, isTaken) : key;
}
