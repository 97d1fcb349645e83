/** Smaller movements beside the joint's own: adding, changing and taking out. */
import { leastOf, type Joint, type Movement, type Swing } from '../../core/design/joint.ts';

/** A first guess is this share of the joint's own movement, so many times as often. */
const FIRST_GUESS = { share: 1 / 3, times: 10 } as const;

export function swingsOf({ movement }: Joint): readonly Swing[] {
  return movement.also ?? [];
}

/** The movement that a part of the wear is of; the joint's own is the first. */
export function swingOfWear({ movement }: Joint, at: number): Swing {
  return [movement, ...(movement.also ?? [])][at] ?? movement;
}

function withSwings(joint: Joint, also: readonly Swing[]): Joint {
  const { also: _before, ...movement } = joint.movement;
  return { ...joint, movement: also.length === 0 ? movement : { ...movement, also } };
}

/** A swing that the joint's own allows: to the same sides, smaller and more often. */
function firstSwing(movement: Movement, step: number, mostCycles: number): Swing {
  const cycles = Math.min(mostCycles, movement.cycles * FIRST_GUESS.times);
  const { amount } = movement;
  const least = leastOf(movement);
  if (least > 0) return { amount, ways: 'between', least: (amount + least) / 2, cycles };
  const ways = movement.ways === 'both ways' ? 'both ways' : 'one way';
  const inSteps = Math.max(1, Math.round((amount * FIRST_GUESS.share) / step)) * step;
  return { amount: Math.min(amount, inSteps), ways, cycles };
}

export function withAnother(joint: Joint, step: number, mostCycles: number): Joint {
  return withSwings(joint, [...swingsOf(joint), firstSwing(joint.movement, step, mostCycles)]);
}

export function without(joint: Joint, at: number): Joint {
  return withSwings(joint, swingsOf(joint).toSpliced(at, 1));
}

export function withSwing(joint: Joint, at: number, swing: Swing): Joint {
  return withSwings(joint, swingsOf(joint).with(at, swing));
}
