/** How far each joint is shown moved: what is on screen beside the work, and not undone with it. */
import { leastOf, type Joint } from '../core/design/joint.ts';
import { openJointOf, type Work } from './state.ts';

export interface Shown {
  /** Of the open joint, as a share of the wanted amount; below 0 the other way. */
  readonly bent: number;
  /** Where the other joints of the part were left, by their ids. */
  readonly left: Readonly<Record<string, number>>;
}

/** Every joint of a part just opened is shown as far as wanted. */
export const AS_WANTED: Shown = { bent: 1, left: {} };

/** Share of the wanted amount that it goes to the other side, as 0 or less. */
function backOf(movement: Joint['movement']): number {
  return Math.min(0, leastOf(movement) / movement.amount);
}

/** A joint that is moved another way has another way to be shown. */
function isSameWay({ family, movement }: Joint, before: Joint): boolean {
  const isAlike = family === before.family && movement.drive === before.movement.drive;
  return isAlike && backOf(movement) === backOf(before.movement);
}

/**
 * The share nearest to one that a joint surely goes to: from rest, or from its other end, to the wanted amount. How
 * far it goes past that only its answer tells.
 */
function surely({ movement }: Joint, share: number): number {
  return Math.min(1, Math.max(backOf(movement), share));
}

/** What is shown after a change: each joint where it was left, and none where its movement does not take it. */
export function shownAfter(before: Work & Shown, after: Work): Shown {
  const [was, is] = [openJointOf(before), openJointOf(after)];
  const kept = new Set(after.part.joints.map(({ id }) => id));
  const places = { ...before.left, ...(was ? { [was.id]: before.bent } : {}) };
  const left = Object.fromEntries(Object.entries(places).filter(([id]) => kept.has(id) && id !== is?.id));
  if (!is) return { bent: AS_WANTED.bent, left };
  const share = places[is.id] ?? AS_WANTED.bent;
  const known = before.part.joints.find(({ id }) => id === is.id);
  return { bent: known && isSameWay(is, known) ? share : surely(is, share), left };
}
