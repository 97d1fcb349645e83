import { radians } from '../../units.ts';
import type { Demo } from './demo.ts';
import { timesAsMuch } from './goals.ts';
import { leaf } from './leaves.ts';

const LINES = 2;
/** Pads that leave room for the thickest. */
const PAD = 6;
/** Between three lines, 27/8 times as hard, and four, 8 times: only whole lines answer. */
const TIMES = 5;

/** One line more: effort goes by the cube of the lines, strain by the lines. */
export const ONE_LINE_MORE: Demo = {
  id: 'one-line-more',
  handles: [
    { key: 'lines', kind: 'count', min: 1, max: 6, step: 1, start: 3 },
    { key: 'angle', kind: 'angle', min: radians(5), max: radians(20), step: radians(1), start: radians(10) },
  ],
  joints: ({ lines = LINES, angle = 0 }) => [
    leaf(angle, { sizes: { lines: LINES, pad: PAD } }),
    leaf(angle, { sizes: { lines, pad: PAD } }),
  ],
  goal: ([a, b]) => a && b && timesAsMuch(b.effort.effort, a.effort.effort, TIMES),
  law: { figure: 'effort', along: 'lines', curves: [1], places: ({ lines }) => [LINES, lines] },
};
