import { radians } from '../units.ts';
import { padFor, typicalBut } from './following.ts';
import type { Sought } from './sought.ts';
import { toggle } from './toggle.ts';
import { staysByHand } from './toggleHandForms.ts';
import { endWidth } from './toggleNetwork.ts';
import { roofHeight, thrustArm, type ToggleSizes } from './toggleSizes.ts';

/**
 * Along is the line of thrust, from the wall to the far side of the end pad; across is from the foot of the spring leaf to
 * the top of the roof. Links and end pad belong to it: only the frame is the user's own body.
 */
export const toggleSought: Sought<ToggleSizes> = {
  rungs: [
    { size: 'lines', values: [1, 2, 3] },
    { size: 'springLines', values: [3, 4, 6, 8] },
    { size: 'hinge', values: [2.5, 4, 6, 8] },
    { size: 'link', values: [10, 15, 20, 30, 40, 60] },
    { size: 'incline', values: [8, 12, 16, 20].map(radians) },
    { size: 'spring', values: [10, 16, 24, 40] },
  ],
  inProportion: ['depth', 'sideBySide'],

  sizes: (tried, thickness) => {
    const sizes = typicalBut(toggle, tried);
    return { ...sizes, pad: padFor(toggle.parameters.pad.typical, thickness, 2 * sizes.fillet) };
  },

  room: (sizes, thickness) => {
    const { hinge, link, incline, spring, fillet, pad, depth } = sizes;
    const run = link * Math.cos(incline);
    return {
      along: 4 * hinge + 2 * run + 2 * fillet + endWidth(sizes, thickness),
      across: roofHeight(sizes) + pad / 2 + thrustArm(sizes) + spring + fillet,
      depth,
    };
  },

  mayStay: staysByHand,
};
