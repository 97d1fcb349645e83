import type { WorkingWords } from './words.ts';

/** Words that only a panel of slats and leaves has. */
export const CELL_PANEL_WORDS: WorkingWords = {
  steps: {
    'in-row': { name: 'What each leaf turns', holds: 'All leaves share one moment, and the slats stay straight.' },
    'arc-strain': {
      name: 'Strain of the skin of each leaf, bent to an arc',
      holds:
        'Every leaf bends to the same arc under a pure moment, at any angle; past the yield strain it is a nominal figure.',
    },
  },
  symbols: { n_r: 'leaves one behind the other', θ_1: 'angle that each leaf takes', b: 'width of the row of slats' },
};
