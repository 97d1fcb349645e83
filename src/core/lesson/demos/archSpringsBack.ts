import type { Joint } from '../../design/joint.ts';
import { secondRest } from '../../design/solvedPath.ts';
import type { Demo } from './demo.ts';
import { LESSON_MOVEMENT, LESSON_PROFILE } from './leaves.ts';

const SIZES = { lines: 2, span: 40, depth: 6, fillet: 0.6, sideBySide: 1 };
/** Nearly as far as its mirror image, where an arch that stays comes to rest. */
const PUSHED_BY = 1.95;

function arch(arches: number, rise: number, parts: { readonly apart: number; readonly block: number }): Joint {
  return {
    id: 'lesson',
    name: '',
    family: 'snapArch',
    sizes: { ...SIZES, arches, rise, ...parts },
    movement: { ...LESSON_MOVEMENT, drive: 'pressed', amount: PUSHED_BY * rise, stays: true },
    profile: LESSON_PROFILE,
  };
}

/** A symmetric arch that should snap and does not: it leans aside and comes back, until it rises high enough. */
export const ARCH_SPRINGS_BACK: Demo = {
  id: 'arch-springs-back',
  handles: [
    { key: 'rise', kind: 'length', min: 1, max: 6, step: 0.25, start: 3 },
    { key: 'push', kind: 'share', min: 0, max: 1, step: 0.05, start: 0.5 },
  ],
  joints: ({ rise = 3 }) => [arch(1, rise, { apart: 4, block: 0 }), arch(2, rise, { apart: 4, block: 4 })],
  goal: ([a, b]) => {
    // What is said of A is said against B.
    if (!a?.solved || !b?.solved) return undefined;
    const rests = secondRest(a.solved) ? 1 : 0;
    return { figure: 'rests', sense: 'at least', now: rests, wanted: 1, isMet: rests === 1 };
  },
  shown: ({ push = 1 }) => push,
};
