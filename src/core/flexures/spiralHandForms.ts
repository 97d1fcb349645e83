/** Hand forms of a hub on spiral arms: small movements of any spiral, and even bending of a long one. */
import { bendingStrain } from '../closedForms/leafBending.ts';
import { spiralStiffness } from '../closedForms/spiralArm.ts';
import { hubMoved, type HubAnswer, type HubDrive } from '../closedForms/spiralHub.ts';
import { asRad, type Mm } from '../units.ts';
import type { HandForm } from './family.ts';
import { armLength, type SpiralSizes } from './spiralSizes.ts';

/** What was asked last, and its answer: strain and effort, and every amount, ask the same of one spiral, which takes a millisecond. */
let last: { readonly key: string; readonly moved: HubAnswer } | undefined;

/**
 * How hard a hub is to move by little, and how its arms strain.
 *
 * @param sizes - of the spiral, checked [mm], turns and arms [-]
 * @param thickness - of an arm [mm], > 0
 * @param drive - how it is moved [-]
 * @returns as `hubMoved`
 *
 * Source: unit-load-method.
 */
export function movedHub({ hub, ring, turns, arms }: SpiralSizes, thickness: Mm, drive: HubDrive): HubAnswer {
  const key = `${hub} ${ring} ${turns} ${arms} ${thickness} ${drive}`;
  if (last?.key === key) return last.moved;
  const moved = hubMoved({ inner: hub / 2, outer: ring / 2, turns, arms, thickness }, drive);
  last = { key, moved };
  return moved;
}

/** Turns from which arms are long enough that a small movement neither stretches nor straightens them. */
const LONG_ENOUGH = 1;
/** How far a movement is small: a turn [rad], and a push over the distance from hub to ring. */
const SMALL = { turn: 0.25, push: 0.05 };

function isSmall({ hub, ring, turns }: SpiralSizes, drive: HubDrive, amount: number): boolean {
  const most = drive === 'shifted' ? (SMALL.push * (ring - hub)) / 2 : SMALL.turn;
  return turns >= LONG_ENOUGH && Math.abs(amount) <= most;
}

/** The first of each drive, because it knows short arms; it grows in proportion to the movement. */
function smallMovement(drive: HubDrive): HandForm<SpiralSizes> {
  return {
    drive,
    source: 'unit-load-method',
    appliesTo: (sizes, _, amount) => isSmall(sizes, drive, amount),
    peakStrain: (sizes, thickness, amount) => movedHub(sizes, thickness, drive).strain * Math.abs(amount),
    effort: (sizes, thickness, amount) =>
      (movedHub(sizes, thickness, drive).effort * sizes.depth * thickness ** 3 * amount) / 12,
    rel: 0.06,
    because:
      'exact for a very small movement, but for shear; solved spirals of one turn and more drawn at random differ by at most 4.5 % in effort and 5.1 % in strain where the movement is largest',
  };
}

function evenStrain(sizes: SpiralSizes, thickness: Mm, amount: number): number {
  return bendingStrain(thickness, armLength(sizes), asRad(amount));
}

function evenTorque(sizes: SpiralSizes, thickness: Mm, amount: number): number {
  return spiralStiffness(1, sizes.depth, thickness, armLength(sizes), sizes.arms) * amount;
}

/** Where the form of even bending holds: up to so far, and from so many turns for the strain and for the torque. */
const EVEN = { turn: Math.PI, strainFrom: 6, torqueFrom: 3 };

/** With several arms the hub stays in the middle by itself, and both drives are one. */
function manyTurns(drive: 'centred' | 'turned'): readonly HandForm<SpiralSizes>[] {
  return [
    {
      drive,
      source: 'spiral-arm',
      appliesTo: ({ turns }, _, amount) => turns >= EVEN.strainFrom && amount <= EVEN.turn,
      peakStrain: evenStrain,
      effort: evenTorque,
      rel: 0.2,
      because:
        'a hub kept central bends its arms unevenly: from six turns on, up to half a turn, the peak is 3 to 20 % over the even strain (arms solved as unstretched curves, hub to ring 1:1.4 to 1:20)',
    },
    {
      drive,
      source: 'spiral-arm',
      appliesTo: ({ turns }, _, amount) => turns >= EVEN.torqueFrom && amount <= EVEN.turn,
      effort: evenTorque,
      rel: 0.06,
      because:
        'from three turns on, up to half a turn, the torque is at most 6 % over arms·E·I/L (arms solved as unstretched curves, hub to ring 1:1.4 to 1:20)',
    },
  ];
}

const SINGLE_ARM: HandForm<SpiralSizes> = {
  drive: 'turned',
  source: 'spiral-arm',
  appliesTo: ({ arms }) => arms === 1,
  peakStrain: evenStrain,
  effort: evenTorque,
  rel: 1e-6,
  because:
    'a pure moment on a hub that may wander is the same all along a single arm, whatever its turns; only round-off differs',
};

export const SPIRAL_FORMS: readonly HandForm<SpiralSizes>[] = [
  smallMovement('centred'),
  smallMovement('turned'),
  smallMovement('shifted'),
  ...manyTurns('centred'),
  ...manyTurns('turned'),
  SINGLE_ARM,
];
