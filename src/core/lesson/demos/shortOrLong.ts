import { assess } from '../../design/assess.ts';
import type { Joint } from '../../design/joint.ts';
import { withSize } from '../../design/withSize.ts';
import { DEPTH } from '../../flexures/commonSizes.ts';
import { findRoot } from '../../numeric/roots.ts';
import { radians } from '../../units.ts';
import type { Demo } from './demo.ts';
import { strainKept } from './goals.ts';
import { leaf } from './leaves.ts';

const THICK = { lines: 3, length: 8, depth: 4 };
const THIN_LINES = 2;
/** Depths are told to a hundredth of a millimetre; the search goes on well past that, as a share. */
const FINE = 1e-9;

function effortOf(joint: Joint): number {
  const assessed = assess(joint);
  return assessed.ok ? assessed.value.effort.effort : Number.NaN;
}

/**
 * The joint made so deep that it pushes back as hard as another.
 *
 * @param joint - any leaf that rolls to an arc; its effort grows with its depth [-]
 * @param like - the one that it should push back as hard as [-]
 * @returns the joint with another depth [mm], or the nearest that its kind may have
 *
 * Source: plane-bending, wide-strip, chandrupatla.
 */
export function asDeepAs(joint: Joint, like: Joint): Joint {
  const wanted = effortOf(like);
  const deep = (logOf: number) => withSize(joint, 'depth', Math.exp(logOf));
  const [low, high] = [Math.log(DEPTH.min), Math.log(DEPTH.max)];
  const found = findRoot((logOf) => effortOf(deep(logOf)) / wanted - 1, low, high, FINE);
  if (found.ok) return deep(found.value.value);
  return deep(effortOf(deep(low)) > wanted ? low : high);
}

/** Short and thick against long and thin at the same effort: made deeper, the thin one strains far less. */
export const SHORT_OR_LONG: Demo = {
  id: 'short-or-long',
  handles: [
    { key: 'length', kind: 'length', min: 6, max: 30, step: 1, start: 8 },
    { key: 'angle', kind: 'angle', min: radians(5), max: radians(30), step: radians(1), start: radians(20) },
  ],
  joints: ({ length = THICK.length, angle = 0 }) => {
    const thick = leaf(angle, { sizes: THICK });
    return [thick, asDeepAs(leaf(angle, { sizes: { lines: THIN_LINES, length } }), thick)];
  },
  goal: ([, b]) => b && strainKept(b),
  law: { figure: 'strain', along: 'length', curves: [1], places: ({ length }) => [THICK.length, length] },
};
