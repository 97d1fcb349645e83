import type { CreaseSizes } from '../../flexures/crease.ts';
import type { KindWorking } from '../kindWorking.ts';
import { turnedSteps } from './turnedLeaf.ts';

/** A crease, whose web bends as a leaf does. */
export const CREASE_WORKING: KindWorking<CreaseSizes> = {
  family: 'crease',
  drives: { turned: turnedSteps },
};
