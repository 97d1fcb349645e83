import type { LeafSizes } from '../../flexures/straightLeaf.ts';
import type { KindWorking } from '../kindWorking.ts';
import { aboutPinSteps } from './leafAboutPin.ts';
import { pushedSteps } from './pushedLeaf.ts';
import { turnedSteps } from './turnedLeaf.ts';

/** A straight leaf, turned, pushed and turned about a pin. */
export const STRAIGHT_LEAF_WORKING: KindWorking<LeafSizes> = {
  family: 'straightLeaf',
  drives: { turned: turnedSteps, pushed: pushedSteps, centred: aboutPinSteps },
};
