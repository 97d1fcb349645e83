import { radians } from '../../units.ts';
import type { Demo } from './demo.ts';
import { strainKept } from './goals.ts';
import { leaf } from './leaves.ts';

const LEAF = { length: 4, fillet: 0.4, pad: 4 };

/** One bend against many small bends: each of n in a row takes one nth of the angle, and of the strain. */
export const ONE_OR_MANY_BENDS: Demo = {
  id: 'one-or-many-bends',
  handles: [
    { key: 'bends', kind: 'count', min: 1, max: 8, step: 1, start: 4 },
    { key: 'angle', kind: 'angle', min: radians(15), max: radians(60), step: radians(5), start: radians(45) },
  ],
  joints: ({ bends = 1, angle = 0 }) => [
    leaf(angle, { sizes: LEAF }),
    leaf(angle, { sizes: { ...LEAF, inRow: bends } }),
  ],
  goal: ([, b]) => b && strainKept(b),
  law: { figure: 'strain', along: 'bends', curves: [1], places: ({ bends }) => [1, bends] },
};
