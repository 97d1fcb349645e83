/** A swing changed in one of its parts, so that the others stay as far as they can. */
import { leastOf, type Movement, type Swing, type Ways } from './joint.ts';

/**
 * A swing that is moved by another amount: where it comes back to stays as far as it can, a step short of the amount and
 * no farther to the other side.
 *
 * @param swing - as it is: amount and other end [rad] or [mm]
 * @param amount - the new one [rad] or [mm], > 0
 * @param step - by how much it must at least move [rad] or [mm], > 0
 * @returns the swing with both ends
 *
 * @example movedBy({ amount: 3, ways: 'between', least: 2, cycles: 9 }, 1, 0.5).least // → 0.5
 */
export function movedBy<S extends Swing>(swing: S, amount: number, step: number): S {
  const { least } = swing;
  if (least === undefined) return { ...swing, amount };
  return { ...swing, amount, least: Math.max(-amount, least < amount ? least : amount - step) };
}

/**
 * A swing that goes another way: where it comes back to is said of one that goes between two amounts, and begins where it
 * was.
 *
 * @param swing - as it is: amount and other end [rad] or [mm]
 * @param ways - the new way [-]
 * @returns the swing with both ends
 *
 * @example goingIn({ amount: 3, ways: 'both ways', cycles: 9 }, 'between').least // → -3
 */
export function goingIn<S extends Swing>(swing: S, ways: Ways): S {
  const { least: _end, ...kept } = swing;
  return (ways === 'between' ? { ...kept, ways, least: leastOf(swing) } : { ...kept, ways }) as S;
}

/**
 * A movement with a stop: no swing goes beyond it to either side.
 *
 * @param movement - as it is: amounts [rad] or [mm]
 * @param amount - where it is stopped [rad] or [mm], > 0
 * @param step - by how much each swing must at least move [rad] or [mm], > 0
 * @returns the movement with every swing as far as the stop lets it
 */
export function stoppedAt(movement: Movement, amount: number, step: number): Movement {
  const stopped = movedBy(movement, amount, step);
  const furthestBack = leastOf(stopped);
  const also = movement.also?.map((swing) => {
    const shorter = movedBy(swing, Math.min(swing.amount, amount), step);
    return leastOf(shorter) < furthestBack ? { ...goingIn(shorter, 'between'), least: furthestBack } : shorter;
  });
  return also ? { ...stopped, also } : stopped;
}
