import type { Flex } from '../life/assessLife.ts';
import type { StrainAnswer } from './assessment.ts';
import { leastOf, type Swing } from './joint.ts';
import { askedOf, handResponse, type Response } from './response.ts';
import { strainsOver } from './solvedPath.ts';

/** What of a checked joint tells how it is moved, and what its hand forms say of that. */
type Moved = Parameters<typeof askedOf>[0];

/**
 * Every kind of flex that is asked of a joint as its skin sees it, its own first.
 *
 * On a solved way strains are looked up there, else they grow as the hand form says. A swing to both sides is taken to
 * strain one place by all that either side strains anywhere, and one that never comes to rest to be let back to the least
 * that the skin strains between its ends: both are the safe side.
 *
 * @param understood - a checked joint, as far as it tells how it is moved [-]
 * @param response - its mechanics [-]
 * @param strain - peak strain at the wanted amount, and the root factor [-]
 * @returns amounts [rad] or [mm], peak strains as fractions, ratios R [-], wanted cycles [-]
 *
 * Source: strain-life.
 */
export function flexesOf(
  understood: Moved,
  { solved, strainByHand }: Pick<Response, 'solved' | 'strainByHand'>,
  { peak, rootFactor }: Pick<StrainAnswer, 'peak' | 'rootFactor'>,
): readonly [Flex, ...Flex[]] {
  const { movement } = understood.joint;
  const way = strainByHand === true ? undefined : solved;
  const asked = askedOf(understood);
  const byHand = (amount: number) => handResponse({ ...asked, amount }).nominalStrain;
  const over = (from: number, amount: number, path = way?.forward): readonly number[] => {
    if (amount === 0) return [0];
    if (from === 0 && amount === movement.amount) return [0, peak];
    if (path) return strainsOver(path, from, amount, rootFactor);
    return [from, amount].map((at) => (at > 0 ? (peak * byHand(at)) / byHand(movement.amount) : 0));
  };
  const flex = (swing: Swing): Flex => {
    const { amount, cycles } = swing;
    const least = leastOf(swing);
    const there = over(Math.max(0, least), amount);
    const back = Math.max(...over(0, Math.max(0, -least), way?.back));
    const peakStrain = Math.max(...there, back);
    const other = least < 0 ? -Math.min(back, Math.max(...there)) : Math.min(...there);
    return { amount, peakStrain, ratio: peakStrain > 0 ? other / peakStrain : 0, cycles };
  };
  return [flex(movement), ...(movement.also ?? []).map(flex)];
}
