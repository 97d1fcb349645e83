import type { Mm } from '../units.ts';
import { padLength } from './commonSizes.ts';

/**
 * How far a row of flexures reaches along, from the face of the first pad to that of the last.
 *
 *     n·s + (n − 1)·p
 *
 * @param count - flexures one behind the other n [-], ≥ 1
 * @param span - of each, with its root fillets, s [mm], > 0
 * @param thickness - of the thin section, which says how long the pads between are [mm], > 0
 * @returns length [mm], the pads between counted and those at the ends not
 *
 * @example rowAlong(2, 10, 0.84) // → 22.5
 */
export function rowAlong(count: number, span: Mm, thickness: Mm): Mm {
  return count * span + (count - 1) * padLength(thickness);
}
