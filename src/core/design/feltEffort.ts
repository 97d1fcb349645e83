import type { Assessment } from './assessment.ts';
import { effortBeyondYield } from './effortAnswer.ts';
import { strainsUpTo } from './solvedPath.ts';

/**
 * What is felt of an effort on the solved way with the typical modulus: less where the skin has been strained past yield
 * on the way there.
 *
 * @param a - a joint that the solver has answered [-]
 * @param state - a point or event of its way: amount [rad] or [mm], effort per MPa [mm³] or [mm²]
 * @returns effort [N·mm] or [N], below 0 where it pulls itself on
 *
 * Source: elastic-plastic.
 */
export function feltEffort(a: Assessment, state: { readonly amount: number; readonly effort: number }): number {
  const { modulus } = a.effort;
  if (!a.solved) throw new RangeError('only a solved way has efforts to be felt');
  const { within, atRoots } = strainsUpTo(a.solved, state.amount);
  const yieldStress = a.filament.properties.yieldStress.typical;
  return effortBeyondYield(modulus * state.effort, (Math.max(within, atRoots) * modulus) / yieldStress);
}
