import { typicalBut } from './following.ts';
import { LINES, upTo } from './rungs.ts';
import type { Sought } from './sought.ts';
import { roomBetweenArms, spiral } from './spiral.ts';
import type { SpiralSizes } from './spiralSizes.ts';

/**
 * How much nearer arms come to each other, over the radius of the ring and the turn in rad: of eighteen solved spirals, of one to
 * four arms and 0.75 to 4 turns at 17° and 35°, 0.06 to 0.21, more the more turns. They bulge to one side, which winding them up evenly does not tell.
 */
const NEARER = 0.2;

/**
 * Arms are told apart, not in proportion: one more leaves less room between them, and short ones strain by how many hold
 * the hub. Few values of each, because its hand form sums along the arms and takes most of a millisecond. Its room is the opening
 * of the ring, into which the arms run by half their thickness; the hub lies within.
 */
export const spiralSought: Sought<SpiralSizes> = {
  rungs: [
    { size: 'lines', values: upTo(LINES, 3) },
    { size: 'arms', values: [1, 2, 3] },
    { size: 'hub', values: [4, 6, 10] },
    { size: 'ring', values: [12, 16, 20, 24, 30, 40, 55, 80] },
    { size: 'turns', values: [1, 1.5, 2, 3] },
  ],
  inProportion: ['depth'],

  sizes: (tried) => typicalBut(spiral, tried),

  // Pushed aside, it is clear up to its reach, which is asked of every kind.
  mayClear: (sizes, thickness, drive, amount) =>
    drive === 'shifted' || roomBetweenArms(sizes, thickness) >= (NEARER * amount * sizes.ring) / 2,

  room: ({ ring, depth }, thickness) => ({ along: ring + thickness, across: ring + thickness, depth }),
};
