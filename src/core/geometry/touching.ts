import type { Mm } from '../units.ts';

/** Gaps below this would be told as 0.00 mm. */
export const TOUCHING: Mm = 0.005;

/**
 * Whether two parts touch: the clear distance between them is nothing that would be told, or they overlap.
 *
 * @param gap - clear distance [mm], below 0 where they overlap
 * @returns true below half a hundredth of a millimetre
 *
 * @example isTouching(0.004) // → true
 */
export function isTouching(gap: Mm): boolean {
  return gap < TOUCHING;
}
