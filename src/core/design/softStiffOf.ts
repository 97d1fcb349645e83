import { referencePoint } from '../beam/frames.ts';
import { softStiff, type SoftStiff } from '../beam/softStiff.ts';
import { DIRECTIONS, type SixStiffnesses } from '../beam/spatialStiffness.ts';
import type { FlexureNetwork } from '../flexures/network.ts';
import type { Mm, MPa } from '../units.ts';
import type { Solved } from './solved.ts';

/** How a moving pad gives, with what that rests on. */
export interface PadGives extends SoftStiff {
  readonly six: SixStiffnesses;
  readonly radius: Mm;
}

/** As far as the network reaches from the reference point of the moving pad, as printed [mm]. */
function reachOf({ model, moving }: FlexureNetwork): Mm {
  const at = referencePoint(model, moving);
  return Math.max(...model.nodes.map(({ x, y }) => Math.hypot(x - at.x, y - at.y)));
}

/**
 * In which directions the moving pad is soft and in which stiff; a turn counts by how far it takes a place as far away as
 * the flexure reaches from the pad.
 *
 * @param solved - of any joint [-]
 * @param modulus - E [MPa], > 0
 * @returns the six stiffnesses [N/mm, N·mm/rad], how far they give [mm/N], and the radius at which turns count [mm]
 *
 * Source: unit-load-method.
 */
export function softStiffOf({ network, stiffness }: Pick<Solved, 'network' | 'stiffness'>, modulus: MPa): PadGives {
  const radius = reachOf(network);
  const six = Object.fromEntries(DIRECTIONS.map((name) => [name, modulus * stiffness.free[name]])) as SixStiffnesses;
  return { ...softStiff(six, radius), six, radius };
}
