import type { Mm } from '../units.ts';
import type { Flexure } from './flexure.ts';

/**
 * The less of both roots of a thin section.
 *
 * @param flexure - as found [mm]
 * @param of - fillet, or how thick what it joins is [-]
 * @returns fillet or shoulder [mm]
 */
export function leastOfRoots({ roots }: Pick<Flexure, 'roots'>, of: 'fillet' | 'shoulder'): Mm {
  return Math.min(roots[0][of], roots[1][of]);
}
