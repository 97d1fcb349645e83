import type { WorkingWords } from './words.ts';

/** Words that only a straight leaf has. */
export const STRAIGHT_LEAF_WORDS: WorkingWords = { steps: {}, symbols: {} };
