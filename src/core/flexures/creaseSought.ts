import { crease, type CreaseSizes } from './crease.ts';
import { padFor, typicalBut } from './following.ts';
import { rowAlong } from './rowRoom.ts';
import { IN_A_ROW, ladder } from './rungs.ts';
import type { Sought } from './sought.ts';

/** A crease folds in little length; its web lies on the plate, so that nothing is laid over air. */
export const creaseSought: Sought<CreaseSizes> = {
  rungs: [
    { size: 'layers', values: ladder(1, [6, 1]) },
    { size: 'length', values: ladder(0.5, [12, 0.5], [20, 1], [60, 5]) },
    { size: 'fillet', values: [0.4, 0.6, 0.8, 1.2] },
    { size: 'inRow', values: IN_A_ROW },
  ],
  inProportion: ['depth', 'sideBySide'],

  sizes: (tried, thickness) => {
    const sizes = typicalBut(crease, tried);
    return { ...sizes, pad: padFor(crease.parameters.pad.typical, thickness, sizes.fillet) };
  },

  // Its fillets are on the upper side only; the plates between webs stand up from its lower side.
  room: ({ length, fillet, inRow, pad, depth }, thickness) => ({
    along: rowAlong(inRow, length + 2 * fillet, thickness),
    across: inRow === 1 ? thickness + fillet : pad,
    depth,
  }),
};
