/** Smaller movements beside the joint's own: adding, changing and taking out. */
import { leastOf, type Joint, type Movement, type Swing } from '../../core/design/joint.ts';
import { settled } from '../controls/settle.ts';
import type { Measure } from '../text/amountText.ts';

/** A first guess is this share of the joint's own movement, so many times as often. */
const FIRST_GUESS = { share: 1 / 3, times: 10 } as const;

export function swingsOf({ movement }: Joint): readonly Swing[] {
  return movement.also ?? [];
}

function withSwings(joint: Joint, also: readonly Swing[]): Joint {
  const { also: _before, ...movement } = joint.movement;
  return { ...joint, movement: also.length === 0 ? movement : { ...movement, also } };
}

/** A swing that the joint's own allows: to the same sides, smaller and more often. */
function firstSwing(movement: Movement, measure: Measure, mostCycles: number): Swing {
  const cycles = Math.min(mostCycles, movement.cycles * FIRST_GUESS.times);
  const { amount } = movement;
  const least = leastOf(movement);
  const round = (value: number) => settled(value, measure === 'turn' ? 'angle' : 'length', 'mm');
  if (least > 0) return { amount, ways: 'between', least: round((amount + least) / 2), cycles };
  const ways = movement.ways === 'both ways' ? 'both ways' : 'one way';
  return { amount: round(amount * FIRST_GUESS.share), ways, cycles };
}

export function withAnother(joint: Joint, measure: Measure, mostCycles: number): Joint {
  return withSwings(joint, [...swingsOf(joint), firstSwing(joint.movement, measure, mostCycles)]);
}

export function without(joint: Joint, at: number): Joint {
  return withSwings(joint, swingsOf(joint).toSpliced(at, 1));
}

export function withSwing(joint: Joint, at: number, swing: Swing): Joint {
  return withSwings(joint, swingsOf(joint).with(at, swing));
}
