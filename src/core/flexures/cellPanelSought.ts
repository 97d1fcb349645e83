import { cellPanel, type CellPanelSizes } from './cellPanel.ts';
import { padFor, roundedUp, typicalBut } from './following.ts';
import { FILLETS, LINES, upTo } from './rungs.ts';
import type { Sought } from './sought.ts';

/** Lines along a slat, from face to face: two contours, the least that is stiff beside its leaves. Common practice. */
const SLAT = 4;

/** Cells follow from their leaves; along is the panel, across is through it, depth is its width. */
export const cellPanelSought: Sought<CellPanelSizes> = {
  rungs: [
    { size: 'lines', values: upTo(LINES, 4) },
    { size: 'cells', values: [2, 3, 4, 5, 6, 8, 10, 12, 16, 20, 25, 30, 40] },
    { size: 'leaf', values: [1, 1.5, 2, 2.5, 3, 3.5, 4, 4.5, 5, 6, 7, 8, 10, 12, 15, 20, 30] },
    { size: 'fillet', values: upTo(FILLETS, 1.2) },
  ],
  inProportion: ['depth'],

  sizes: (tried, thickness, { lineWidth }) => {
    const sizes = typicalBut(cellPanel, tried);
    const { leaf, fillet } = sizes;
    return {
      ...sizes,
      cell: roundedUp(leaf + 2 * fillet + SLAT * lineWidth),
      pad: padFor(cellPanel.parameters.pad.typical, thickness, 2 * fillet),
    };
  },

  // From the face of the first slat to that of the last; with one leaf alone no slat lies between.
  room: ({ cells, cell, leaf, fillet, pad, depth }, thickness) => ({
    along: (cells - 1) * cell + leaf + 2 * fillet,
    across: cells === 1 ? thickness + 2 * fillet : pad,
    depth,
  }),

  unsupported: ({ pad }, thickness, lying) => ({
    bridge: 0,
    ledge: lying === 'upright' ? (pad - thickness) / 2 : 0,
  }),
};
