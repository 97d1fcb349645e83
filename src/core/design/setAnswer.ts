import { setAfterOneBend } from '../strength/permanentSet.ts';
import type { Assessment, EffortAnswer } from './assessment.ts';
import type { Response } from './response.ts';
import type { Understood } from './understand.ts';

/**
 * What stays bent after one flex to the wanted amount, and between what it lies.
 *
 * A plastic springs back by much of what it was strained past its yield stress, so that the least is that of a skin that flows
 * from the yield strain of its row on; the most is that of the row's low yield stress with its high modulus. Where the whole way
 * is known it is summed up along the joint; else the joint is taken to be bent all along as at its worst place, which is the
 * most that can stay and caps the sum.
 *
 * @param understood - a checked joint [-]
 * @param response - its mechanics: strain as a fraction [-], what stays along it [rad] or [mm]
 * @param effort - moduli [MPa]
 * @returns what stays [rad] or [mm] with its share of the amount, and k, strain over strain at the yield stress [-]
 *
 * Source: elastic-plastic.
 */
export function setAnswer(
  { joint, filament }: Understood,
  { nominalStrain, setLeft }: Response,
  { modulus, modulusHigh }: EffortAnswer,
): { readonly set: Assessment['set']; readonly kappaRatio: number } {
  const { amount } = joint.movement;
  const { yieldStress, yieldStrain } = filament.properties;
  const left = (onset: number) => {
    const uniform = amount * setAfterOneBend(nominalStrain, 1, onset).fraction;
    return setLeft ? Math.min(uniform, setLeft(onset)) : uniform;
  };
  const onset = yieldStress.typical / modulus;
  const typical = left(onset);
  const low = Math.min(typical, left(yieldStrain.typical));
  const high = Math.max(typical, left((yieldStress.low ?? yieldStress.typical) / modulusHigh));
  return { set: { amount: typical, fraction: typical / amount, low, high }, kappaRatio: nominalStrain / onset };
}
