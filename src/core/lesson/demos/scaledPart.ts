import { scaleJoint } from '../../design/scalePart.ts';
import { radians } from '../../units.ts';
import type { Demo } from './demo.ts';
import { strainKept } from './goals.ts';
import { leaf } from './leaves.ts';

/** Two lines, on a part that exists already: what is scaled has a thickness and no count of lines. */
const THICKNESS = 0.84;
const LENGTH = 8;

/** Scale the whole part: at the same angle it strains the same, however hard it then pushes. */
export const SCALED_PART: Demo = {
  id: 'scaled-part',
  handles: [
    { key: 'scale', kind: 'scale', min: 1, max: 3, step: 0.05, start: 1.5 },
    { key: 'angle', kind: 'angle', min: radians(5), max: radians(45), step: radians(1), start: radians(30) },
  ],
  joints: ({ scale = 1, angle = 0 }) => {
    const part = leaf(angle, { sizes: { length: LENGTH }, measuredThickness: THICKNESS });
    const scaled = scaleJoint(part, scale);
    // The count only records the nearest whole number of what is measured.
    return [part, { ...scaled, sizes: { ...scaled.sizes, lines: Math.max(1, Math.round(2 * scale)) } }];
  },
  goal: ([, b]) => b && strainKept(b),
  law: { figure: 'strain', along: 'scale', curves: [1], places: ({ scale }) => [1, scale] },
};
