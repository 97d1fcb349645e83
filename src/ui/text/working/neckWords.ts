import type { WorkingWords } from './words.ts';

/** Words that only a neck has. */
export const NECK_WORDS: WorkingWords = {
  steps: {
    'notch-ratio': { name: 'Neck over twice the depth of the notch' },
    'notch-d': { name: 'A figure that comes back in the next two' },
    'notch-braces': { name: 'What the integral along a round notch comes to' },
    'notch-turning': {
      name: 'How far the notch turns for each moment',
      holds:
        'A slender bar of changing thickness: finite elements are 5 to 20 % softer for a neck of 0.14 to 0.6 of the notch radius, and beyond that nobody has looked.',
    },
    'neck-turning': { name: 'The same with the straight part', holds: 'The straight part turns as a leaf does.' },
    'neck-moment': {
      name: 'Moment that turns one neck',
      holds: 'A pure moment; a pin in the middle is left out, which holds as long as it adds under 2 % to the strain.',
    },
    'neck-strain': {
      name: 'Strain of the skin where it is thinnest',
      holds: 'Without the concentration at the bottom of the notch; past the yield strain it is a nominal figure.',
    },
    'neck-moment-alone': { name: 'Moment that turns it, narrow and springy', holds: 'Before anything flows.' },
    'neck-moment-all': { name: 'Moment that turns all of them, narrow and springy', holds: 'Before anything flows.' },
    'root-step': { name: 'Step from the neck to the pad', holds: 'The depth of the notch on each side.' },
  },
  symbols: {
    t: 'thickness where it is thinnest',
    a: 'half the length of the notch',
    c: 'depth of the notch from either side',
    ℓ: 'straight part in the middle',
    β: 'neck over twice the depth',
    d: '2·β + β²',
    Φ: 'what the integral comes to',
    C_n: 'turn for each moment, of the notch',
    C: 'turn for each moment, of one neck',
    M_1: 'moment on one neck',
    r: 'radius at the bottom of the notch',
    L_f: 'half the length of the notch',
  },
};
