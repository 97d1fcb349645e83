import type { Mm } from '../units.ts';
import { padFor, typicalBut } from './following.ts';
import { foldedLeaf, type FoldedSizes } from './foldedLeaf.ts';
import { ladder, LINES } from './rungs.ts';
import type { Sought, Unsupported } from './sought.ts';

/** Steps in which a pad is made thinner to fit beside a turn [mm]. */
const STEP: Mm = 0.5;

/**
 * Pads are as thick as usual where there is room beside the next turn, or the other pad, and a line between; else as
 * thick as that leaves them, but never thinner than their root asks for.
 */
function padOf({ runs, spacing, fillet }: FoldedSizes, thickness: Mm, lineWidth: Mm): Mm {
  const fits = runs === 2 ? spacing - lineWidth : 2 * (spacing - lineWidth) - thickness;
  const usual = Math.min(foldedLeaf.parameters.pad.typical, Math.floor(fits / STEP) * STEP);
  return padFor(usual, thickness, 2 * fillet);
}

/** How far the spring reaches past its runs: a turn, the fillet of a pad, or both. */
function past(hasTurn: boolean, hasPad: boolean, { spacing, fillet }: FoldedSizes, thickness: Mm): Mm {
  return Math.max(hasTurn ? (spacing + thickness) / 2 : 0, hasPad ? fillet : 0);
}

/**
 * Upright, with the runs standing. A turn above is laid from run to run; one below begins over air, on nothing at all.
 * Of an odd number of runs the last pad lies on top.
 */
function standing({ runs, spacing, pad }: FoldedSizes, thickness: Mm): Unsupported {
  const begins = runs > 2 ? spacing + thickness : 0;
  const tops = runs % 2 === 1 ? (pad - thickness) / 2 : 0;
  return { bridge: runs > 1 ? spacing - thickness : 0, ledge: Math.max(begins, tops) };
}

/** Along is from run to run, the way it is pulled; across is along the runs, with the turns. */
export const foldedLeafSought: Sought<FoldedSizes> = {
  rungs: [
    { size: 'lines', values: LINES },
    { size: 'runs', values: [2, 3, 4, 6, 8, 12] },
    { size: 'length', values: ladder(3, [10, 1], [20, 2], [60, 10]) },
    { size: 'spacing', values: [2, 3, 4, 5, 6, 8, 12] },
    { size: 'fillet', values: [0.5, 0.8] },
  ],
  inProportion: ['depth', 'sideBySide'],

  sizes: (tried, thickness, { lineWidth }) => {
    const sizes = typicalBut(foldedLeaf, tried);
    return { ...sizes, pad: padOf(sizes, thickness, lineWidth) };
  },

  room: (sizes, thickness) => {
    const { runs, length, spacing, fillet, depth } = sizes;
    const isOdd = runs % 2 === 1;
    const above = past(runs > 1, isOdd, sizes, thickness);
    const below = past(runs > 2, true, sizes, thickness);
    return {
      along: (runs - 1) * spacing + thickness + 2 * fillet,
      across: below + length + above,
      depth,
    };
  },

  unsupported: (sizes, thickness, lying) =>
    lying === 'upright' ? standing(sizes, thickness) : { bridge: 0, ledge: 0 },
};
