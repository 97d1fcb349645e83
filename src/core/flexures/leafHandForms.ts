/** Hand forms of a straight leaf of constant thickness, one for each way in which it is moved. */
import { endLoadAtTravel, strainOfMoment } from '../closedForms/endLoadedLeaf.ts';
import { bendingStrain } from '../closedForms/leafBending.ts';
import { leafTorque } from '../closedForms/leafTorque.ts';
import { asRad, type Mm } from '../units.ts';
import { CENTRED, PUSHED, TURNED } from './commonDrives.ts';
import type { HandForm } from './family.ts';

/** The sizes of a leaf that a pure moment knows. */
interface Bent {
  readonly length: Mm;
  readonly depth: Mm;
  readonly inRow: number;
  readonly sideBySide: number;
}

/** The sizes that a push and a pin know besides. */
interface Driven extends Omit<Bent, 'inRow'> {
  readonly taper: number;
  readonly centre: number;
}

/** Second moment of area of all that push side by side [mm⁴]. */
function secondMoment({ depth, sideBySide }: Pick<Bent, 'depth' | 'sideBySide'>, thickness: Mm): number {
  return (sideBySide * depth * thickness ** 3) / 12;
}

export const TURNED_FORM: HandForm<Bent> = {
  drive: TURNED.id,
  source: 'plane-bending',
  appliesTo: () => true,
  peakStrain: ({ length, inRow }, thickness, amount) => bendingStrain(thickness, length, asRad(amount / inRow)),
  effort: ({ length, depth, inRow, sideBySide }, thickness, amount) =>
    sideBySide * leafTorque(1, depth, thickness, length, asRad(amount / inRow), 1),
  rel: 1e-6,
  because: 'a pure end moment bends a leaf of constant thickness to an arc at any angle; only round-off differs',
};

/** Thicker ones shear by a share that grows with (t/L)². */
const SLENDER = 0.1;
/** A tip pushed further than most of its length is pulled more than it is bent, and a real leaf stretches. */
const FAR_PUSH = 0.8;
/** Nothing pushes a tip by its own length; past this share of it the figures of this share stand. */
const FARTHEST_PUSH = 0.99;

function pushed(length: Mm, travel: Mm) {
  return endLoadAtTravel(Math.min(travel / length, FARTHEST_PUSH));
}

export const PUSHED_FORM: HandForm<Driven> = {
  drive: PUSHED.id,
  source: 'end-loaded-elastica',
  appliesTo: ({ length, taper }, thickness, amount) =>
    taper === 1 && amount <= FAR_PUSH * length && thickness <= SLENDER * length,
  peakStrain: ({ length }, thickness, amount) => strainOfMoment(thickness, length, pushed(length, amount).rootMoment),
  effort: (sizes, thickness, amount) =>
    (pushed(sizes.length, amount).load * secondMoment(sizes, thickness)) / sizes.length ** 2,
  rel: 0.02,
  because:
    'the leaf of this form neither shears nor stretches, which at t = L/10 makes about 1 % of force; a taper it does not know',
};

/** So much of the bending strain may a pin add by pulling the leaf short. */
const PINCHED = 0.02;

/** Curvature at either end over that of a pure moment, κ·L/θ. */
function endCurvatures(centre: number): { readonly root: number; readonly tip: number } {
  return { root: 4 - 6 * centre, tip: 6 * centre - 2 };
}

/**
 * Leaf whose moving end turns by θ about a fixed point at c·L from the root, small angle. The end moves across by
 * (1 − c)·L·θ and turns by θ, so the curvature runs straight from root to end:
 *
 *     κ·L/θ = 4 − 6c at the root, 6c − 2 at the end,   T/E = 4·(1 − 3c + 3c²)·I·θ/L
 */
export const CENTRED_FORM: HandForm<Driven> = {
  drive: CENTRED.id,
  source: 'small-deflection',
  // At c = ½ the arc's chord wants to be θ²/12 of the leaf longer than the pin lets it; that over t·θ/(2L).
  appliesTo: ({ length }, thickness, amount) =>
    (amount * length) / (6 * thickness) <= PINCHED && thickness <= SLENDER * length,
  peakStrain: ({ length, centre }, thickness, amount) => {
    const { root, tip } = endCurvatures(centre);
    return bendingStrain(thickness, length, asRad(amount)) * Math.max(Math.abs(root), Math.abs(tip));
  },
  effort: (sizes, thickness, amount) => {
    const { centre, length } = sizes;
    return (4 * (1 - 3 * centre + 3 * centre ** 2) * secondMoment(sizes, thickness) * amount) / length;
  },
  rel: 0.05,
  because:
    'a pin that stays pulls the leaf short by about θ²/12 of its length, which this form leaves out: with θ·L/(6·t) under 0.02 that is 2 % of the strain, with 3 % for shear and the slope',
};
