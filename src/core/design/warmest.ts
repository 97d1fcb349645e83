import { softensAt } from '../material/choose.ts';
import type { Filament } from '../material/types.ts';
import { A_ROOM, type Joint } from './joint.ts';
import { warmthOf } from './warmth.ts';

/** Further below where it softens than any rule asks to stay [K]. */
const FAR_BELOW = 100;

/**
 * The warmest that a joint may get before its filament is too near to softening, by the same rule as the verdict.
 *
 * @param joint - the joint, wherever it is used [-]
 * @param filament - row of the filament table [-]
 * @returns temperature in whole degrees [°C]
 */
export function warmestFor(joint: Joint, filament: Filament): number {
  const surroundings = joint.surroundings ?? A_ROOM;
  const stands = (temperatureC: number) =>
    warmthOf({ joint: { ...joint, surroundings: { ...surroundings, temperatureC } }, filament }).grade === 'pass';
  const highest = Math.floor(softensAt(filament).typical);
  const degrees = Array.from({ length: FAR_BELOW }, (_, i) => highest - i);
  return degrees.find(stands) ?? highest - FAR_BELOW;
}
