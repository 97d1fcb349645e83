/** Words of “Held bent”: what is left of the push, what stays when it is let go, and what a load does that stays on. */
import type { Assessment } from '../../core/design/assessment.ts';
import type { Between, Held, HoldAnswer } from '../../core/design/hold.ts';
import { soundness, weakest } from '../../core/material/choose.ts';
import { effortText } from './amountText.ts';
import { share, type LengthUnit } from './numbers.ts';
import { figure, type Said } from './said.ts';
import { leftText } from './setText.ts';
import { spanText } from './countText.ts';

export const HELD_BENT = 'Held bent';
export const IF_HELD = 'if it were held';
export const AS_HELD = 'as long as is set above';
export const HELD_PLOT = 'held bent for';
export const HELD_AID = 'push left, of that after a minute';
export const HELD_HOW = 'Left and Right move the reading from a minute on, Home and End to the ends. Escape leaves it.';
export const HELD_TABLE = 'By time held: push left, of that after a minute, and what stays bent when it is let go';
export const HELD_HEADS = ['held for', 'push left', 'low', 'high', 'stays bent'];
export const PUSH_LABEL = 'push left';
export const STAYS_LABEL = 'stays bent';

const range = (between: Between, say: (value: number) => string) => `${say(between.low)} to ${say(between.high)}`;

/** “a week: 62 % left, 45 % to 74 %; 8° stay bent”. */
export function pushReading({ hours, left, stays }: Held, { drive }: Assessment, unit: LengthUnit): string {
  const bent = leftText(stays.typical, drive, unit);
  return `${spanText(hours)}: ${share(left.typical)} left, ${range(left, share)}; ${bent} stay bent`;
}

/** What is left and what stays at the time that is set, and what a load does that stays on instead. */
export function heldSaid(
  a: Assessment,
  { held, sags, exponent, setAfterDay }: HoldAnswer,
  unit: LengthUnit,
): readonly Said[] {
  const { joint, drive, effort } = a;
  const say = (amount: number) => leftText(amount, drive, unit);
  const ofPush = soundness(exponent.provenance);
  const ofSet = weakest(ofPush, soundness(setAfterDay.provenance));
  const begins = joint.movement.held ? 'Held for' : 'If it were held for';
  const [keeps, stay] = joint.movement.held ? ['it keeps ', 'stay'] : ['it would keep ', 'would stay'];
  return [
    [
      `${begins} ${spanText(held.hours)} ${keeps}`,
      figure(share(held.left.typical), ofPush, 'push'),
      ` of its push, ${range(held.left, share)}, which leaves ${effortText(held.effort.typical, effort.measure)}; let go, `,
      figure(say(held.stays.typical), ofSet, 'held'),
      `, ${range(held.stays, say)}, ${stay} bent.`,
    ],
    [
      'Under a load that stays on it sags instead: ',
      figure(share(sags.typical), ofPush, 'push'),
      ` farther in a day, ${range(sags, share)}.`,
    ],
  ];
}
