import { findRoot } from '../numeric/roots.ts';
import type { ArchForm, ArchState } from './archModes.ts';
import { archPath } from './archPath.ts';

/**
 * Where on its path an arch has been pushed to a travel.
 *
 * @param ratio - Q = h/t [-], > 0
 * @param form - how it is kept from leaning [-]
 * @param travel - Δ = d/h of the middle [-], 0 to 2; what is outside counts as the nearer end
 * @returns the parameter of `archPath` [-], 0 to 3
 *
 * Source: shallow-arch.
 * @example alongAtTravel(5, 'double', 2) // → 3
 */
export function alongAtTravel(ratio: number, form: ArchForm, travel: number): number {
  if (!(travel > 0)) return 0;
  if (travel >= 2) return 3;
  const path = archPath(ratio, form);
  const found = findRoot((along) => path(along).travel - travel, 0, 3, 1e-9);
  if (!found.ok) throw new RangeError(`an arch is never pushed to ${travel} of its rise`);
  return found.value.value;
}

/**
 * State of an arch whose middle has been pushed so far.
 *
 * @param ratio - Q = h/t [-], > 0
 * @param form - how it is kept from leaning [-]
 * @param travel - Δ = d/h of the middle [-], 0 to 2; what is outside counts as the nearer end
 * @returns the state [-]
 *
 * Source: shallow-arch.
 * @example archAtTravel(5, 'double', 1).force // → 210.551
 */
export function archAtTravel(ratio: number, form: ArchForm, travel: number): ArchState {
  return archPath(ratio, form)(alongAtTravel(ratio, form, travel));
}
