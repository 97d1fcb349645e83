import { radians } from '../../units.ts';
import type { Demo } from './demo.ts';
import { strainKept } from './goals.ts';
import { leaf } from './leaves.ts';

const SHORT = 6;
const LONG = 24;

/** Same angle, three lengths: twice the length, half the strain. */
export const THREE_LENGTHS: Demo = {
  id: 'three-lengths',
  handles: [
    { key: 'length', kind: 'length', min: 4, max: 24, step: 1, start: 12 },
    { key: 'angle', kind: 'angle', min: radians(10), max: radians(40), step: radians(1), start: radians(40) },
  ],
  joints: ({ length = 12, angle = 0 }) => [
    leaf(angle, { sizes: { length: SHORT } }),
    leaf(angle, { sizes: { length } }),
    leaf(angle, { sizes: { length: LONG } }),
  ],
  goal: ([, b]) => b && strainKept(b),
  law: {
    figure: 'strain',
    along: 'length',
    curves: [1],
    places: ({ length }) => [SHORT, length, LONG],
  },
};
