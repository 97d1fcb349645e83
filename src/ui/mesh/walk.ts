import { choose } from './partCheck.ts';

/** What of a key event is asked here. */
type Key = { readonly key: string; readonly preventDefault: () => void };

/** Left and right walk the thin sections, Home and End go to the ends; says whether the key was one of those. */
export function walk(event: Key, numbers: readonly number[], chosen: number): boolean {
  const at = Math.max(0, numbers.indexOf(chosen));
  const to = { ArrowLeft: at - 1, ArrowRight: at + 1, Home: 0, End: numbers.length - 1 }[event.key];
  const next = to === undefined ? undefined : numbers[Math.min(Math.max(to, 0), numbers.length - 1)];
  if (next === undefined) return false;
  event.preventDefault();
  choose(next);
  return next !== chosen;
}
