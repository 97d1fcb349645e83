/** What is looked for, changed in one of its parts; the others follow where they must. */
import type { Movement } from '../../core/design/joint.ts';
import { stoppedAt } from '../../core/design/swing.ts';
import type { Wanted } from '../../core/find/wanted.ts';
import { radians } from '../../core/units.ts';

/** One press of an arrow key on how far it is moved. */
export const AMOUNT_STEP = { turn: radians(1), travel: 0.1 } as const;

export function withMovement(wanted: Wanted, change: Partial<Movement>): Wanted {
  return { ...wanted, movement: { ...wanted.movement, ...change } };
}

/** Smaller swings go no farther than it, and no more may stay bent than it is moved. */
export function withAmount(wanted: Wanted, amount: number): Wanted {
  const { movement, measure, setAtMost } = wanted;
  const next = { ...wanted, movement: stoppedAt(movement, amount, AMOUNT_STEP[measure]) };
  return setAtMost === undefined ? next : { ...next, setAtMost: Math.min(setAtMost, amount) };
}

/** What is shallower than the room is looked for as well. */
export function withDepth(wanted: Wanted, depth: number): Wanted {
  const depthAtLeast = Math.min(wanted.depthAtLeast, depth);
  return { ...wanted, room: { ...wanted.room, depth }, depthAtLeast };
}

export type EffortWish = 'any' | 'most' | 'least' | 'between';

export function effortWishOf({ movement: { effortAtMost }, effortAtLeast }: Wanted): EffortWish {
  if (effortAtMost === undefined) return effortAtLeast === undefined ? 'any' : 'least';
  return effortAtLeast === undefined ? 'most' : 'between';
}

/** Where nothing has been said of the effort yet: a hand feels both, common practice, no source [N·mm] or [N]. */
const FIRST_MOST = { turn: 40, travel: 10 } as const;
/** A first least beside a most, as a share of it. */
const FIRST_SHARE = 0.1;

/** The same with a wish for the effort; a figure that stands is kept, one that is missing gets a first guess. */
export function withEffortWish(wanted: Wanted, wish: EffortWish): Wanted {
  const { effortAtLeast, movement, measure, ...rest } = wanted;
  const { effortAtMost, ...moved } = movement;
  const most = effortAtMost ?? Math.max(FIRST_MOST[measure], 2 * (effortAtLeast ?? 0));
  const least = effortAtLeast ?? FIRST_SHARE * most;
  const hasMost = wish === 'most' || wish === 'between';
  const hasLeast = wish === 'least' || wish === 'between';
  return {
    ...rest,
    measure,
    movement: hasMost ? { ...moved, effortAtMost: most } : moved,
    ...(hasLeast ? { effortAtLeast: least } : {}),
  };
}

/** A first limit of what may stay bent, as a share of the amount; chosen. */
const FIRST_SET = 0.05;

export function withSetWish({ setAtMost, ...rest }: Wanted, isLimited: boolean): Wanted {
  if (!isLimited) return rest;
  const { movement, measure } = rest;
  const step = AMOUNT_STEP[measure];
  const first = Math.max(1, Math.round((FIRST_SET * movement.amount) / step)) * step;
  return { ...rest, setAtMost: setAtMost ?? Math.min(first, movement.amount) };
}

export function withStays(wanted: Wanted, stays: boolean | undefined): Wanted {
  const { stays: _before, ...movement } = wanted.movement;
  return { ...wanted, movement: stays === undefined ? movement : { ...movement, stays } };
}
