/** Hand forms of a straight leaf of constant thickness, one for each way in which it is moved. */
import { endLoadAtTravel, strainOfMoment } from '../closedForms/endLoadedLeaf.ts';
import { leafAboutPin } from '../closedForms/leafAboutPin.ts';
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

/** As far as the small slopes of the form were compared with exact shapes [rad], and between which places of the pin. */
const SMALL_TURN = 0.3;
const COMPARED_PINS = { from: 0.1, to: 0.9 } as const;

export const CENTRED_FORM: HandForm<Driven> = {
  drive: CENTRED.id,
  source: 'leaf-about-pin',
  appliesTo: ({ length, centre }, thickness, amount) =>
    amount <= SMALL_TURN && thickness <= SLENDER * length && centre >= COMPARED_PINS.from && centre <= COMPARED_PINS.to,
  peakStrain: ({ length, centre }, thickness, amount) => leafAboutPin(thickness, length, asRad(amount), centre).strain,
  effort: (sizes, thickness, amount) => {
    const { stiffness } = leafAboutPin(thickness, sizes.length, asRad(amount), sizes.centre);
    return (stiffness * secondMoment(sizes, thickness) * amount) / sizes.length;
  },
  rel: 0.05,
  because:
    'slopes of the form are small, which up to 0.3 rad makes 1.3 % of strain, and it does not shear, which at t = L/10 makes up to 3 % where the leaf bends to an S',
};
