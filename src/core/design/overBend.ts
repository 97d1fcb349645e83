import type { OverBend, StrainAnswer } from './assessment.ts';
import type { Limits } from './allowables.ts';
import type { Solved } from './solved.ts';
import { amountAtStrain, knownUpTo, touchesAt } from './solvedPath.ts';

/**
 * How far the joint may be bent before each limit, and where a hard stop should hold it.
 *
 * Strain is taken as proportional to the amount, which is exact for a pure moment; so an amount is the wanted one times
 * limit over strain. The stop belongs where a single careless flex does no harm and nothing touches yet, never past what
 * has been solved, where nobody has looked whether it does, and never short of the wanted amount.
 *
 * @param amount - wanted amount of the whole joint [rad] or [mm], > 0
 * @param strain - strain at that amount [-]
 * @param limits - what the filament may see [-]
 * @param setRatio - k of section set at the wanted amount: curvature over curvature at yield stress [-], > 0
 * @param solved - the whole way, where the solver was asked: it then says where something touches [-]
 * @param byHand - whether a hand form that is exact tells the strain: limits are then not looked up on that way [-]
 * @returns amounts of the whole joint [rad] or [mm]
 *
 * Source: plane-bending, elastic-plastic.
 */
export function overBendOf(
  amount: number,
  strain: StrainAnswer,
  limits: Limits,
  setRatio: number,
  solved?: Solved,
  byHand = false,
): OverBend {
  const way = byHand ? undefined : solved;
  const at = (limit: number) => (way ? amountAtStrain(way, limit, strain.rootFactor) : (amount * limit) / strain.peak);
  const atSingle = at(limits.single.value);
  const safe = Math.min(atSingle, ...(solved ? [touchesAt(solved), knownUpTo(solved)] : []));
  return {
    atSet: way ? at(strain.peak / setRatio) : amount / setRatio,
    atSingle,
    atYield: at(limits.yield.value),
    atBreak: at(limits.break.value),
    hardStop: Math.max(safe, amount),
  };
}
