import type { Assessment } from './assessment.ts';
import { effortByModulus } from './effortAnswer.ts';
import type { Solved } from './solved.ts';
import { readAt, strainsUpTo } from './solvedPath.ts';

/** A network that strains by so much less than is told of the joint has something that strains out of its sight [-]. */
const SEEN = 0.999;

/** A place on a solved way: amount [rad] or [mm], effort per MPa [mm³] or [mm²]. */
interface Place {
  readonly amount: number;
  readonly effort: number;
}

function wayOf({ solved }: Assessment): Solved {
  if (!solved) throw new RangeError('only a solved way has efforts to be felt');
  return solved;
}

/**
 * Strain of the skin for each unit of the movement that no member of the network has, because it stands for strips that
 * twist by springs.
 *
 * @param a - a joint that the solver has answered [-]
 * @returns strain per amount [1/rad] or [1/mm]; 0 where the members strain as much as is told of the joint
 */
export function strainOutOfSight(a: Assessment): number {
  const solved = wayOf(a);
  const { within, atRoots } = strainsUpTo(solved, solved.amount);
  return Math.max(within, atRoots) < SEEN * a.strain.nominal ? a.strain.nominal / solved.amount : 0;
}

/**
 * What is felt of efforts on a solved way for each modulus: less where the skin has been strained past yield on the way
 * there.
 *
 * @param a - a joint that the solver has answered [-]
 * @returns a function from a point or event of its way to efforts [N·mm] or [N] for the typical, low and high modulus, in
 *   the direction of positive amounts
 *
 * Source: elastic-plastic.
 */
export function feltEfforts(
  a: Assessment,
): (place: Place) => { readonly typical: number; readonly low: number; readonly high: number } {
  const { back, ...ahead } = wayOf(a);
  const behind = back ? { ...ahead, forward: back } : ahead;
  const unseen = strainOutOfSight(a);
  return ({ amount, effort }) => {
    const { within, atRoots } = strainsUpTo(amount < 0 ? behind : ahead, amount);
    const strain = Math.max(within, atRoots, unseen * Math.abs(amount));
    return effortByModulus(a, effort, strain);
  };
}

/**
 * What is felt of an effort on the solved way with the typical modulus.
 *
 * @param a - a joint that the solver has answered [-]
 * @param place - a point or event of its way: amount [rad] or [mm], effort per MPa [mm³] or [mm²]
 * @returns effort [N·mm] or [N] in the direction of positive amounts
 *
 * Source: elastic-plastic.
 */
export function feltEffort(a: Assessment, place: Place): number {
  return feltEfforts(a)(place).typical;
}

/**
 * What is felt at any amount of the solved way with the typical modulus, by straight lines between its states.
 *
 * @param a - a joint that the solver has answered [-]
 * @param amount - [rad] or [mm]; negative for the way back
 * @returns effort [N·mm] or [N] in the direction of positive amounts
 *
 * Source: elastic-plastic.
 */
export function feltAt(a: Assessment, amount: number): number {
  return feltEffort(a, { amount, effort: readAt(wayOf(a), amount).effort });
}
