import { neck, type NeckSizes } from './neck.ts';
import { typicalBut } from './following.ts';
import { rowAlong } from './rowRoom.ts';
import { IN_A_ROW, LINES } from './rungs.ts';
import type { Sought } from './sought.ts';

/** Round, elliptical and straight necks; its pads are as thick as the neck and both notches. */
export const neckSought: Sought<NeckSizes> = {
  rungs: [
    { size: 'lines', values: LINES },
    { size: 'along', values: [0.5, 1, 1.5, 2, 3, 4, 6, 10] },
    { size: 'deep', values: [0.5, 1, 2, 4] },
    { size: 'straight', values: [0, 1, 2, 4, 8] },
    { size: 'inRow', values: IN_A_ROW },
  ],
  inProportion: ['depth', 'sideBySide'],

  sizes: (tried) => typicalBut(neck, tried),

  room: ({ along, deep, straight, inRow, depth }, thickness) => ({
    along: rowAlong(inRow, 2 * along + straight, thickness),
    across: thickness + 2 * deep,
    depth,
  }),

  // Up to a slope of 45° each layer holds the next; from there an ellipse reaches c²/√(a² + c²) further out.
  unsupported: ({ along, deep }, _, lying) => ({
    bridge: 0,
    ledge: lying === 'upright' ? deep ** 2 / Math.hypot(along, deep) : 0,
  }),
};
