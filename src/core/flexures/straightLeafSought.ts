import { padFor, typicalBut } from './following.ts';
import { rowAlong } from './rowRoom.ts';
import { FILLETS, IN_A_ROW, LENGTHS, LINES } from './rungs.ts';
import type { Sought } from './sought.ts';
import { straightLeaf, type LeafSizes } from './straightLeaf.ts';

/** Even in thickness, and about a pin in its middle where it has one. */
export const straightLeafSought: Sought<LeafSizes> = {
  rungs: [
    { size: 'lines', values: LINES },
    { size: 'length', values: LENGTHS },
    { size: 'fillet', values: FILLETS },
    { size: 'inRow', values: IN_A_ROW },
  ],
  inProportion: ['depth', 'sideBySide'],

  sizes: (tried, thickness) => {
    const sizes = typicalBut(straightLeaf, tried);
    return { ...sizes, pad: padFor(straightLeaf.parameters.pad.typical, thickness, 2 * sizes.fillet) };
  },

  room: ({ length, fillet, inRow, pad, depth }, thickness) => ({
    along: rowAlong(inRow, length + 2 * fillet, thickness),
    across: inRow === 1 ? thickness + 2 * fillet : pad,
    depth,
  }),

  // A fillet grows out of the leaf ever faster: its last layers lie on as little as those of a square ledge.
  unsupported: ({ pad }, thickness, lying) => ({
    bridge: 0,
    ledge: lying === 'upright' ? (pad - thickness) / 2 : 0,
  }),
};
