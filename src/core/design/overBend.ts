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
 * @param setRatio - k of section set at the wanted angle: curvature over curvature at yield stress [-], > 0
 * @returns angles of the whole joint [rad]
 *
 * Source: plane-bending, elastic-plastic.
 */
export function overBendOf(angle: Rad, strain: StrainAnswer, limits: Limits, setRatio: number): OverBend {
  const at = (limit: number) => asRad((angle * limit) / strain.peak);
  const atSingle = at(limits.single.value);
  return {
    atSet: asRad(angle / setRatio),
    atSingle,
    atYield: at(limits.yield.value),
    atBreak: at(limits.break.value),
    hardStop: atSingle > angle ? atSingle : angle,
  };
}
