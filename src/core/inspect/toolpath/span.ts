import type { Span } from './audit.ts';

/**
 * Least and greatest of some numbers, one after the other: there may be too many for arguments of a call.
 *
 * @param values - numbers [-]
 * @returns both [-]; undefined where there are none
 *
 * @example spanOf([3, 1, 2]) // → { least: 1, most: 3 }
 */
export function spanOf(values: Iterable<number>): Span | undefined {
  let [least, most] = [Infinity, -Infinity];
  for (const value of values) {
    least = Math.min(least, value);
    most = Math.max(most, value);
  }
  return most >= least ? { least, most } : undefined;
}
