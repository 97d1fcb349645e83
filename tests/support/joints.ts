import { assess } from '../../src/core/design/assess.ts';
import type { Assessment } from '../../src/core/design/assessment.ts';
import type { Joint } from '../../src/core/design/joint.ts';
import { radians } from '../../src/core/units.ts';

/** A leaf that nothing is unusual about; its figures are invented. */
export const LEAF: Joint = {
  id: 'leaf',
  name: 'Leaf',
  family: 'straightLeaf',
  sizes: { lines: 2, length: 12, depth: 6, fillet: 0.8, pad: 4, inRow: 1, sideBySide: 1, taper: 1, centre: 0.5 },
  movement: { drive: 'turned', amount: radians(35), ways: 'one way', cycles: 5000, held: false, chance: 0.9 },
  profile: {
    nozzle: 0.4,
    lineWidth: 0.42,
    layerHeight: 0.2,
    firstLayerHeight: 0.2,
    lying: 'flat',
    fitRule: 'nominal',
    filament: 'petg',
  },
};

/** A crease that nothing is unusual about; its figures are invented. */
export const CREASE: Joint = {
  ...LEAF,
  id: 'crease',
  name: 'Crease',
  family: 'crease',
  sizes: { layers: 2, length: 6, depth: 40, fillet: 0.4, pad: 2, inRow: 1, sideBySide: 1 },
  movement: { ...LEAF.movement, amount: radians(100), cycles: 600 },
  profile: { ...LEAF.profile, lying: 'crease', filament: 'pp' },
};

/** A joint with some of its values changed, by group. */
export function changed(
  joint: Joint,
  change: {
    readonly sizes?: Joint['sizes'];
    readonly movement?: Partial<Joint['movement']>;
    readonly profile?: Partial<Joint['profile']>;
    readonly measuredThickness?: number;
  },
): Joint {
  const { measuredThickness } = change;
  return {
    ...joint,
    sizes: { ...joint.sizes, ...change.sizes },
    movement: { ...joint.movement, ...change.movement },
    profile: { ...joint.profile, ...change.profile },
    ...(measuredThickness === undefined ? {} : { measuredThickness }),
  };
}

/** The assessment of a joint that must not be refused. */
export function assessed(joint: Joint): Assessment {
  const result = assess(joint);
  if (!result.ok) throw new Error(result.problems.map((problem) => problem.message).join('; '));
  return result.value;
}
