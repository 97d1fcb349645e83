/** Hand forms of a neck between two notches: a slender bar of changing thickness under a moment. */
import { ellipticNotch } from '../closedForms/notchHinge.ts';
import type { Mm } from '../units.ts';
import { CENTRED, TURNED } from './commonDrives.ts';
import type { HandForm } from './family.ts';
import type { NeckSizes } from './neck.ts';

/** Turn per moment of one neck of unit modulus [rad/(N·mm)·MPa]: the notch, and the straight part cut into it. */
function compliance({ along, deep, straight, depth }: NeckSizes, thickness: Mm): number {
  return ellipticNotch(1, depth, thickness, along, deep) + (12 * straight) / (depth * thickness ** 3);
}

function moment(sizes: NeckSizes, thickness: Mm, amount: number): number {
  return amount / (sizes.inRow * compliance(sizes, thickness));
}

/** ε = 6·M/(E·b·t²), where it is thinnest and without the concentration there. */
function peakStrain(sizes: NeckSizes, thickness: Mm, amount: number): number {
  return (6 * moment(sizes, thickness, amount)) / (sizes.depth * thickness ** 2);
}

function effort(sizes: NeckSizes, thickness: Mm, amount: number): number {
  return sizes.sideBySide * moment(sizes, thickness, amount);
}

/** So much of the bending strain may a pin add by holding the neck short. */
const PINCHED = 0.02;

/** Length of a straight leaf as thin as the neck that would turn as far. */
function worth(sizes: NeckSizes, thickness: Mm): Mm {
  return (compliance(sizes, thickness) * sizes.depth * thickness ** 3) / 12;
}

export const NECK_FORMS: readonly HandForm<NeckSizes>[] = [
  {
    drive: TURNED.id,
    source: 'notch-hinge',
    appliesTo: () => true,
    peakStrain,
    effort,
    rel: 1e-3,
    because:
      'a pure moment is the same all along, so the curvature everywhere is M/(E·I) at any angle; only the mesh differs, most in deep notches with a thin neck',
  },
  {
    drive: CENTRED.id,
    source: 'notch-hinge',
    // As for a leaf: the chord of the arc wants to be θ²/12 of the length longer than the pin lets it.
    appliesTo: (sizes, thickness, amount) => (amount * worth(sizes, thickness)) / (6 * thickness) <= PINCHED,
    peakStrain,
    effort,
    rel: 0.05,
    because:
      'by symmetry a pin in the middle asks nothing across at small angles, and along it holds the neck short by less than 2 % of the bending strain here',
  },
];
