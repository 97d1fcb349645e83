import { typicalBut } from './following.ts';
import { ladder, LINES, upTo } from './rungs.ts';
import type { Sought } from './sought.ts';
import { spiral } from './spiral.ts';
import type { SpiralSizes } from './spiralSizes.ts';

/**
 * Arms are told apart, not in proportion: one more leaves less room between them, and short ones strain by how many hold
 * the hub. Its room is the opening of the ring, into which the arms run by half their thickness; the hub lies within.
 */
export const spiralSought: Sought<SpiralSizes> = {
  rungs: [
    { size: 'lines', values: upTo(LINES, 4) },
    { size: 'arms', values: [1, 2, 3, 4] },
    { size: 'hub', values: [3, 4, 6, 8, 12, 16] },
    { size: 'ring', values: ladder(10, [30, 2], [60, 5], [120, 20]) },
    { size: 'turns', values: [0.5, 0.75, 1, 1.25, 1.5, 2, 3, 4] },
    { size: 'fillet', values: [0.6, 1.2] },
  ],
  inProportion: ['depth'],

  sizes: (tried) => typicalBut(spiral, tried),

  room: ({ ring, depth }, thickness) => ({ along: ring + thickness, across: ring + thickness, depth }),
};
