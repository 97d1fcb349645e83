import type { Assessment } from '../../design/assessment.ts';
import { holdAnswer, type Held } from '../../design/hold.ts';
import { radians } from '../../units.ts';
import type { Demo, Goal } from './demo.ts';
import { leaf } from './leaves.ts';

/** How long it is held, as it stands in an address, and how long that is [h]. */
const TIMES = [
  ['1min', 1 / 60],
  ['10min', 1 / 6],
  ['1h', 1],
  ['6h', 6],
  ['1day', 24],
  ['1week', 168],
  ['1month', 720],
  ['1year', 8760],
] as const;
/** It has lost a quarter of its push. */
const LEFT = 0.75;
const LENGTH = 24;

/**
 * How long the held one is held.
 *
 * @param time - number of the choice, from 0 [-]
 * @returns time [h]
 *
 * @example hoursHeld(4) // → 24
 */
export function hoursHeld(time: number): number {
  return TIMES[time]?.[1] ?? TIMES[0][1];
}

/**
 * What becomes of a joint that is held for as long as its movement says.
 *
 * @param a - the joint as assessed [-]
 * @returns shares of the push left [-], what stays [rad]; undefined for a joint that is let go, or too near to softening
 */
export function heldOf(a: Assessment): Held | undefined {
  if (!a.joint.movement.held) return undefined;
  const answer = holdAnswer(a);
  return answer.ok ? answer.value.held : undefined;
}

function pushLost(held: Held): Goal {
  const now = held.left.typical;
  return { figure: 'share', sense: 'at most', now, wanted: LEFT, isMet: now <= LEFT };
}

/** Held bent against flexed: what is let go comes back, what is held loses its push and stays. */
export const HELD_OR_FLEXED: Demo = {
  id: 'held-or-flexed',
  handles: [
    {
      key: 'time',
      kind: 'choice',
      min: 0,
      max: TIMES.length - 1,
      step: 1,
      start: 0,
      options: TIMES.map(([word]) => word),
    },
    { key: 'angle', kind: 'angle', min: radians(10), max: radians(45), step: radians(1), start: radians(40) },
  ],
  joints: ({ time = 0, angle = 0 }) => [
    leaf(angle, { sizes: { length: LENGTH } }),
    leaf(angle, { sizes: { length: LENGTH }, held: { hours: hoursHeld(time) } }),
  ],
  goal: ([, b]) => {
    const held = b && heldOf(b);
    return held && pushLost(held);
  },
  law: {
    figure: 'push left',
    along: 'time',
    curves: [1],
    places: ({ time }) => [undefined, hoursHeld(time ?? 0)],
  },
};
