import { radians } from '../units.ts';
import { standOff } from './commonNetwork.ts';
import { crossedLeaves, type CrossedSizes } from './crossedLeaves.ts';
import { padFor, typicalBut } from './following.ts';
import { FILLETS, ladder, LINES, upTo } from './rungs.ts';
import type { Sought } from './sought.ts';

/** Between the planes two layers: over one alone, a leaf that is laid on air hangs through to the other. Common practice. */
const LAYERS_APART = 2;

/** Crossed in the middle, where the centre wanders least; along is from pad to pad, across from foot to foot. */
export const crossedLeavesSought: Sought<CrossedSizes> = {
  rungs: [
    { size: 'lines', values: LINES },
    { size: 'length', values: ladder(4, [20, 1], [60, 2], [120, 10]) },
    { size: 'between', values: [60, 90, 120].map(radians) },
    { size: 'fused', values: [0, 1] },
    { size: 'fillet', values: upTo(FILLETS, 1.2) },
  ],
  inProportion: ['depth', 'sideBySide'],

  sizes: (tried, thickness, { layerHeight }) => {
    const { pad, gap } = crossedLeaves.parameters;
    return {
      ...typicalBut(crossedLeaves, tried),
      gap: Math.max(gap.typical, LAYERS_APART * layerHeight),
      pad: padFor(pad.typical, thickness, 0),
    };
  },

  room: ({ length, between, crossing, fused, gap, fillet, depth }, thickness) => {
    const half = between / 2;
    const off = standOff(fillet, thickness, half);
    const longer = Math.max(crossing, 1 - crossing) * length + off;
    const foot = thickness / (2 * Math.cos(half)) + fillet * Math.tan(Math.PI / 4 - half / 2);
    return {
      along: Math.cos(half) * (length + 2 * off),
      across: 2 * (Math.sin(half) * longer + foot),
      depth: fused === 1 ? depth : 2 * depth + gap,
    };
  },

  // Stacked, the upper leaf lies over the gap from pad to pad; between the pads of both planes the gap is filled.
  unsupported: ({ fused, length }) => ({ bridge: fused === 1 ? 0 : length, ledge: 0 }),
};
