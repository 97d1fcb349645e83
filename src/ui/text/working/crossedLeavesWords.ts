import type { WorkingWords } from './words.ts';

const PINNED =
  'Small turns, leaves of 20 thicknesses and more and 60° to 120° apart; with a pin as long as it adds under 2 % to the strain.';

/** Words that only crossed leaves have. */
export const CROSSED_LEAVES_WORDS: WorkingWords = {
  steps: {
    'crossing-past': { name: 'What of a leaf lies past the crossing' },
    'crossing-moment': {
      name: 'Largest moment, over that of a leaf bent evenly',
      holds: 'A pad that is free to wander: 1 where they cross in the middle, 4 at either end.',
    },
    'stacked-strain': {
      name: 'Strain of the skin at the harder bent end',
      holds:
        'Small turns: the leaves pull and push each other along, which adds up to 1.5 % a degree at 120° between them.',
    },
    'fused-strain': {
      name: 'Strain of the skin where the leaves are grown together',
      holds: 'Small turns: the crossing turns along and does not move.',
    },
    'stacked-stiffness': { name: 'Moment for each radian, of one pair', holds: PINNED },
    'fused-stiffness': {
      name: 'Moment for each radian, grown together',
      holds:
        'Small turns, parts of 20 thicknesses and more and 60° to 120° apart; with a pin as long as it adds under 2 % to the strain.',
    },
    'crossed-moment': {
      name: 'Moment that turns it, narrow and springy',
      holds: 'Up to 10° the exact moment of leaves that cross is at most 1.5 % more.',
    },
  },
  symbols: {
    L: 'flexing length of each leaf',
    b: 'width of one leaf, out of the plane',
    λ: 'where they cross, as a share of the length from the fixed pad',
    μ: 'share of the length past the crossing',
    m_λ: 'largest moment over that of an even bend',
    K: 'moment for each radian, of one pair',
    n_s: 'how many pairs side by side',
  },
};
