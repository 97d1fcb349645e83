import { roundedUp, typicalBut } from './following.ts';
import { slitPanel, type SlitPanelSizes } from './slitPanel.ts';
import type { Sought } from './sought.ts';

/**
 * It bends out of its plate: along is the panel, across is through the sheet, depth is its width, along the slits.
 *
 * Depth is tried like what shapes it, because a panel must be wide enough for one slit and its bridge, though strain does
 * not depend on it and effort grows in proportion. Slits are as wide as usual, and at least one line.
 */
export const slitPanelSought: Sought<SlitPanelSizes> = {
  rungs: [
    { size: 'layers', values: [2, 3, 4, 6, 8, 10] },
    { size: 'rows', values: [6, 10, 15, 20, 30, 40, 60] },
    { size: 'pitch', values: [2, 3, 4] },
    { size: 'slit', values: [10, 20, 30, 40] },
    { size: 'bridge', values: [1, 2] },
    { size: 'depth', values: [15, 25, 40, 66, 100, 150] },
  ],
  inProportion: [],

  sizes: (tried, _, { lineWidth }) => {
    const slitWidth = Math.max(slitPanel.parameters.slitWidth.typical, roundedUp(lineWidth));
    return { ...typicalBut(slitPanel, tried), slitWidth };
  },

  room: ({ rows, pitch, depth }, thickness) => ({ along: rows * pitch, across: thickness, depth }),
};
