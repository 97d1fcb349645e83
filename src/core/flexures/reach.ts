/** How far pads can turn before they run into each other. */
import type { Mm } from '../units.ts';

/** Past it the two ends of a panel that closes to a ring would lie in one another. */
export const FULL_TURN = 2 * Math.PI;

/**
 * How far a pad turns before it meets the other, when the leaf between them bends to an arc.
 *
 * The inner corner of either face lies (L/θ − h)·sin(θ/2) + f·cos(θ/2) off the plane of symmetry; they meet where that
 * falls to nothing.
 *
 * @param length - flexing length L [mm], > 0
 * @param inner - from the middle of the leaf to the inner edge of the pad, h [mm], > 0
 * @param standOff - from the end of the leaf to the face, f [mm], ≥ 0
 * @returns turn [rad], a full turn at most
 *
 * @example arcReach(10, 10, 0) // → 1
 */
export function arcReach(length: Mm, inner: Mm, standOff: Mm): number {
  const room = (turn: number) => (length / turn - inner) * Math.sin(turn / 2) + standOff * Math.cos(turn / 2);
  let [free, meets] = [0, FULL_TURN];
  // sin(θ/2) ≥ 0 up to a full turn, and without the fillet the room falls through nothing once.
  for (let halvings = 0; halvings < 50; halvings += 1) {
    const middle = (free + meets) / 2;
    if (room(middle) > 0) free = middle;
    else meets = middle;
  }
  return meets;
}

/**
 * How far a pad turns about a fixed centre before a corner of one pad meets the face of the other.
 *
 * @param moving - from the centre to the face of the moving pad [mm], ≥ 0
 * @param fixed - from the centre to the face of the fixed pad [mm], ≥ 0
 * @param half - half the width of either face [mm], > 0
 * @returns turn [rad], half a turn at most
 *
 * @example pinnedReach(0, 0, 5) // → 0
 */
export function pinnedReach(moving: Mm, fixed: Mm, half: Mm): number {
  return Math.min(cornerMeets(moving, fixed, half), cornerMeets(fixed, moving, half));
}

/** A corner at (d, h) from the centre, turned by θ, is d·cos θ − h·sin θ ahead of it; it meets a face at −other. */
function cornerMeets(distance: Mm, other: Mm, half: Mm): number {
  const arm = Math.hypot(distance, half);
  return other < arm ? Math.acos(-other / arm) - Math.atan2(half, distance) : Math.PI;
}

/** What would have to be longer than so many times its length has broken, and is no straight line of stress and strain. */
const LONGEST = 1.5;

/**
 * How far across one end of a flexure can be pulled while its ends stay as far apart along it: to where it would have to
 * be half as long again.
 *
 *     d = √((1.5·L)² − a²)
 *
 * @param length - of its middle line as printed L [mm], > 0
 * @param along - between its ends, along a [mm], 0 to L
 * @returns distance across [mm], > 0
 *
 * @example acrossAtMost(4, 0) // → 6
 */
export function acrossAtMost(length: Mm, along: Mm): Mm {
  return Math.sqrt((LONGEST * length) ** 2 - along ** 2);
}
