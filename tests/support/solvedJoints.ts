import { assess } from '../../src/core/design/assess.ts';
import { bySolver } from '../../src/core/design/bySolver.ts';
import type { Joint } from '../../src/core/design/joint.ts';
import { familyOf } from '../../src/core/flexures/known.ts';
import { newJoint } from '../../src/store/newJoint.ts';
import { isAnswered, type Answered } from '../../src/ui/charts/solved/way.ts';

/** A joint of typical sizes in its usual movement, some of it changed, answered by the solver. */
export function answered(
  family: string,
  movement: Partial<Joint['movement']> = {},
  sizes: Partial<Joint['sizes']> = {},
): Answered {
  const joint = newJoint(familyOf({ family }), family);
  const changed = {
    ...joint,
    sizes: { ...joint.sizes, ...sizes } as Joint['sizes'],
    movement: { ...joint.movement, ...movement },
  };
  const result = assess(changed, bySolver());
  if (!result.ok) throw new Error(result.problems.map((problem) => problem.message).join('; '));
  if (!isAnswered(result.value)) throw new Error(`the solver did not answer ${family}`);
  return result.value;
}
