import type { Joint } from '../../design/joint.ts';
import type { Demo } from './demo.ts';
import { timesAsMuch } from './goals.ts';
import { LESSON_MOVEMENT, LESSON_PROFILE } from './leaves.ts';

const FEW = 2;
const TIMES = 2.5;
const SIZES = { lines: 2, length: 14, depth: 6, spacing: 4, fillet: 0.8, pad: 3, sideBySide: 1 };

function carried(leaves: number, amount: number): Joint {
  return {
    id: 'lesson',
    name: '',
    family: 'parallelLeaves',
    sizes: { ...SIZES, leaves },
    // Kept from turning, so that all leaves are bent alike.
    movement: { ...LESSON_MOVEMENT, drive: 'guided', amount },
    profile: LESSON_PROFILE,
  };
}

/** Side by side for force: more leaves push harder, and none of them strains more. */
export const SIDE_BY_SIDE: Demo = {
  id: 'side-by-side',
  handles: [
    { key: 'leaves', kind: 'count', min: 2, max: 6, step: 1, start: 3 },
    { key: 'travel', kind: 'length', min: 0.5, max: 2.5, step: 0.25, start: 1.5 },
  ],
  joints: ({ leaves = FEW, travel = 1 }) => [carried(FEW, travel), carried(leaves, travel)],
  goal: ([a, b]) => a && b && timesAsMuch(b.effort.effort, a.effort.effort, TIMES),
  law: { figure: 'effort', along: 'leaves', curves: [1], places: ({ leaves }) => [FEW, leaves] },
};
