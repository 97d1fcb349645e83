import type { Assessment } from './assessment.ts';
import { secondRest } from './solvedPath.ts';

/**
 * Whether a wish to stay, or to come back, can only be judged beyond the wanted amount.
 *
 * @param a - a joint as the solver answers it [-]
 * @returns true when neighbours of it are to be solved further than they are moved [-]
 */
export function looksBeyond({ joint, solved }: Pick<Assessment, 'joint' | 'solved'>): boolean {
  const { stays, amount } = joint.movement;
  if (stays === undefined) return false;
  const rest = solved && secondRest(solved);
  return !stays || rest === undefined || rest.amount > amount;
}
