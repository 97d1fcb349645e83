/** Hand forms of two crossed leaves, stacked or fused. */
import { crossedLeavesStiffness, crossedLeavesStrain } from '../closedForms/crossedLeaves.ts';
import { bendingStrain } from '../closedForms/leafBending.ts';
import { leafStiffness } from '../closedForms/leafTorque.ts';
import { asRad, radians, type Mm } from '../units.ts';
import { CENTRED, TURNED } from './commonDrives.ts';
import type { CrossedSizes } from './crossedLeaves.ts';
import type { HandForm } from './family.ts';

/**
 * Fused, at small angles: the crossing turns by λ·θ and does not move, so each of the four parts is held at one end and
 * bent at the crossing by 4·E·I·θ/L, wherever that is; K = 8·E·I/L.
 */
const FUSED = { stiffness: 8, moment: 4 };

function effort({ depth, length, crossing, fused, sideBySide }: CrossedSizes, thickness: Mm, amount: number): number {
  const perAngle =
    fused === 1
      ? FUSED.stiffness * leafStiffness(1, depth, thickness, length, 1)
      : crossedLeavesStiffness(1, depth, thickness, length, crossing);
  return sideBySide * perAngle * amount;
}

function peakStrain({ length, crossing, fused }: CrossedSizes, thickness: Mm, amount: number): number {
  const turn = asRad(amount);
  return fused === 1
    ? FUSED.moment * bendingStrain(thickness, length, turn)
    : crossedLeavesStrain(thickness, length, turn, crossing);
}

/** Lengths over thickness from which stretch and shear, which the forms leave out, are small. */
const SLENDER = 20;
/** Leaves that nearly lie along each other stretch more than they bend. */
const ACROSS = radians(60);

function isSlender({ length, crossing, fused, between }: CrossedSizes, thickness: Mm): boolean {
  const part = fused === 1 ? length * Math.min(crossing, 1 - crossing) : length;
  return SLENDER * thickness <= part && between >= ACROSS - 1e-9 && between <= Math.PI - ACROSS + 1e-9;
}

/** So much of the bending strain may a pin add by holding the leaves short. */
const PINCHED = 0.02;

export const CROSSED_FORMS: readonly HandForm<CrossedSizes>[] = [
  {
    drive: TURNED.id,
    source: 'crossed-leaves',
    appliesTo: (sizes, thickness, amount) => isSlender(sizes, thickness) && amount <= radians(5),
    peakStrain,
    effort,
    rel: 0.1,
    because:
      'small turns: the leaves pull and push each other along, which raises the peak by up to 1.5 % a degree at 120° between leaves that cross in the middle (both leaves solved as unstretched curves)',
  },
  {
    drive: TURNED.id,
    source: 'crossed-leaves',
    appliesTo: (sizes, thickness, amount) => isSlender(sizes, thickness) && amount <= radians(10),
    effort,
    rel: 0.04,
    because:
      'up to 10° and between 60° and 120° the exact torque is at most 1.5 % over the small-turn form (both leaves solved as unstretched curves), with the rest for stretch and shear',
  },
  {
    drive: CENTRED.id,
    source: 'crossed-leaves',
    appliesTo: (sizes, thickness, amount) =>
      isSlender(sizes, thickness) && (amount * sizes.length) / (6 * thickness) <= PINCHED,
    peakStrain,
    effort,
    rel: 0.1,
    because:
      'small turns: a pin in the crossing holds the leaves short by up to θ²/12 of their length, under 2 % of the bending strain here; the rest as without a pin',
  },
];
