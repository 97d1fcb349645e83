import type { CellPanelSizes } from '../../flexures/cellPanel.ts';
import type { KindWorking } from '../kindWorking.ts';
import { turnedSteps } from './turnedLeaf.ts';

/** A panel of cells: its leaves share the wrap as leaves in a row do. */
export const CELL_PANEL_WORKING: KindWorking<CellPanelSizes> = {
  family: 'cellPanel',
  drives: {
    wrapped: (asked) => {
      const { leaf, depth, cells } = asked.sizes;
      return turnedSteps({ ...asked, sizes: { length: leaf, depth, inRow: cells, sideBySide: 1 } });
    },
  },
};
