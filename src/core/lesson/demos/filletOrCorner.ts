import { radians } from '../../units.ts';
import type { Demo, Goal } from './demo.ts';
import { leaf } from './leaves.ts';

const LEAF = { length: 8, pad: 6 };
/** The root may strain so many times as much as the leaf between its roots. */
const AT_MOST = 1.1;

/** Fillet or sharp corner: the same leaf, and a root that strains much more or hardly more than the rest of it. */
export const FILLET_OR_CORNER: Demo = {
  id: 'fillet-or-corner',
  handles: [
    { key: 'fillet', kind: 'length', min: 0, max: 1.6, step: 0.1, start: 0.1 },
    { key: 'angle', kind: 'angle', min: radians(5), max: radians(30), step: radians(1), start: radians(20) },
  ],
  joints: ({ fillet = 0, angle = 0 }) => [
    leaf(angle, { sizes: { ...LEAF, fillet: 0 } }),
    leaf(angle, { sizes: { ...LEAF, fillet } }),
  ],
  goal: ([, b]): Goal | undefined =>
    b && {
      figure: 'times',
      sense: 'at most',
      now: b.strain.rootFactor,
      wanted: AT_MOST,
      isMet: b.strain.rootFactor <= AT_MOST,
    },
  looksAtRoot: true,
  law: { figure: 'strain', along: 'fillet', curves: [1], places: ({ fillet }) => [0, fillet] },
};
