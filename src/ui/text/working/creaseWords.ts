import type { WorkingWords } from './words.ts';

/** Words that only a crease has. */
export const CREASE_WORDS: WorkingWords = {
  steps: {
    'arc-strain': {
      name: 'Strain of the skin of the web, bent to an arc',
      holds: 'Exact at any angle under a pure moment; past the yield strain it is a nominal figure.',
    },
    'root-step': {
      name: 'Step from the web to the plate',
      holds: 'The step is on one side only; it is taken as the same on both, which is thought to err on the safe side.',
    },
  },
  symbols: { b: 'length of the fold', t: 'thickness of the web', L: 'flexing length across the fold' },
};
