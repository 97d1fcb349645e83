import { asRad, type Rad } from '../units.ts';
import type { OverBend, StrainAnswer } from './assessment.ts';
import type { Limits } from './allowables.ts';

/**
 * How far the joint may be bent before each limit, and where a hard stop should hold it.
 *
 * Strain is proportional to angle, so an angle is the wanted one times limit over strain. The stop belongs where a
 * single careless flex does no harm, and never short of the wanted angle.
 *
 * @param angle - wanted angle θ of the whole joint [rad], > 0
 * @param strain - strain at that angle [-]
 * @param limits - what the filament may see [-]
 * @returns angles of the whole joint [rad]
 *
 * Source: plane-bending.
 */
export function overBendOf(angle: Rad, strain: StrainAnswer, limits: Limits): OverBend {
  const at = (limit: number) => asRad((angle * limit) / strain.peak);
  const atSingle = at(limits.single.value);
  return {
    atSingle,
    atYield: at(limits.yield.value),
    atBreak: at(limits.break.value),
    hardStop: atSingle > angle ? atSingle : angle,
  };
}
