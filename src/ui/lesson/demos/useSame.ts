import { useState } from 'react';

/** The value as it was before, while the new one is no different. */
export function useSame<T>(now: T, isSame: (before: T, now: T) => boolean): T {
  const [kept, setKept] = useState(now);
  if (now === kept || isSame(kept, now)) return kept;
  setKept(now);
  return now;
}

/** Whether two lists hold the same things. */
export function holdsSame<T>(before: readonly T[], now: readonly T[]): boolean {
  return now.length === before.length && now.every((one, i) => one === before[i]);
}
