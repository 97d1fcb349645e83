import { radians } from '../units.ts';
import type { Drive } from './family.ts';

/** The moving pad is turned by a pure moment and goes where the flexure lets it. All limits are common practice. */
export const TURNED: Drive = {
  id: 'turned',
  measure: 'turn',
  min: radians(0.1),
  max: radians(360),
  step: radians(1),
  typical: radians(30),
  because: 'less is no movement, and past a full turn the pads run into each other',
};

/** The tip is pushed across the flexure in a direction that stays, and is free to turn. */
export const PUSHED: Drive = {
  id: 'pushed',
  measure: 'travel',
  min: 0.05,
  max: 100,
  step: 0.1,
  typical: 2,
  because: 'less is within the play of a print, and more needs a flexure that does not fit a usual plate',
};

/** The moving pad is turned about a pin that stays where it is. */
export const CENTRED: Drive = {
  id: 'centred',
  measure: 'turn',
  min: radians(0.1),
  max: radians(90),
  step: radians(1),
  typical: radians(20),
  because: 'less is no movement, and past a right angle a pin that stays tears at the flexure more than it bends it',
};
