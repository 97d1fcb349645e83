/** How several stand side by side, and how a joint stands while it is printed. */
import type { Drive } from '../flexures/family.ts';
import type { Room, Unsupported } from '../flexures/sought.ts';
import type { Lying } from '../print/profile.ts';
import type { Mm } from '../units.ts';

/** Left open between neighbours side by side, so that they do not fuse. Common practice, no source. */
export const BETWEEN: Mm = 1;

/**
 * Room of several alike: those that are turned stand along their common axis, those that are pushed beside each other.
 *
 * @param one - room of one [mm]
 * @param alike - how many [-], whole, at least 1
 * @param measure - how they are moved [-]
 * @returns room of all [mm]
 *
 * @example roomOfAll({ along: 10, across: 2, depth: 6 }, 3, 'travel').across // → 8
 */
export function roomOfAll(one: Room, alike: number, measure: Drive['measure']): Room {
  const all = (side: Mm) => alike * side + (alike - 1) * BETWEEN;
  return measure === 'turn' ? { ...one, depth: all(one.depth) } : { ...one, across: all(one.across) };
}

/**
 * What is laid over air of several alike: printed flat, those that stand along their axis lie above one another.
 *
 * @param one - of one [mm]
 * @param along - room of one along it [mm]
 * @param alike - how many [-]
 * @param measure - how they are moved [-]
 * @param lying - how they lie in the print [-]
 * @returns bridge and ledge [mm]
 */
export function airOfAll(
  one: Unsupported,
  along: Mm,
  alike: number,
  measure: Drive['measure'],
  lying: Lying,
): Unsupported {
  const isStacked = alike > 1 && measure === 'turn' && lying === 'flat';
  return isStacked ? { ...one, bridge: Math.max(one.bridge, along) } : one;
}
