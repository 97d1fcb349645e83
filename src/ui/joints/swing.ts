/** A swing changed in one of its parts, so that the others stay as far as they can. */
import { leastOf, type Swing, type Ways } from '../../core/design/joint.ts';

/**
 * Moved by another amount: where it comes back to stays as far as it can, a step short of the amount and no farther to
 * the other side.
 */
export function movedBy<S extends Swing>(swing: S, amount: number, step: number): S {
  const { least } = swing;
  if (least === undefined) return { ...swing, amount };
  return { ...swing, amount, least: Math.max(-amount, least < amount ? least : amount - step) };
}

/** Going another way: where it comes back to is said of one that goes between two amounts, and begins where it was. */
export function goingIn<S extends Swing>(swing: S, ways: Ways): S {
  const { least: _end, ...kept } = swing;
  return (ways === 'between' ? { ...kept, ways, least: leastOf(swing) } : { ...kept, ways }) as S;
}
