import { assess } from '../../src/core/design/assess.ts';
import type { Assessment } from '../../src/core/design/assessment.ts';
import { bySolver } from '../../src/core/design/bySolver.ts';
import type { Joint } from '../../src/core/design/joint.ts';
import type { Solved } from '../../src/core/design/solved.ts';
import { FAMILIES } from '../../src/core/flexures/index.ts';
import { newJoint } from '../../src/store/newJoint.ts';
import { sceneOf, type Scene } from '../../src/ui/drawing/solved/scene.ts';
import { travelledOf, type Travelled } from '../../src/ui/drawing/solved/travelled.ts';

export interface SolvedCase {
  readonly name: string;
  readonly a: Assessment;
  readonly solved: Solved;
  readonly scene: Scene;
  readonly travelled: Travelled;
}

/** Joints of typical sizes that the solver answers: every kind in each of its drives, and one of each kind both ways. */
const JOINTS: readonly (readonly [string, Joint])[] = FAMILIES.flatMap((family) =>
  family.drives.map((drive, i): readonly [string, Joint] => {
    const joint = newJoint(family, family.id);
    const ways = i === 0 ? 'both ways' : 'one way';
    return [
      `${family.id}, ${drive.id} ${ways}`,
      { ...joint, movement: { ...joint.movement, drive: drive.id, amount: drive.typical, ways } },
    ];
  }),
);

function solvedCase([name, joint]: (typeof JOINTS)[number]): SolvedCase {
  const result = assess(joint, bySolver({ parts: 12 }));
  if (!result.ok) throw new Error(`${name}: ${result.problems.map(({ message }) => message).join('; ')}`);
  const { solved } = result.value;
  if (!solved) throw new Error(`${name} was not solved`);
  return {
    name,
    a: result.value,
    solved,
    scene: sceneOf(result.value, solved),
    travelled: travelledOf(result.value, solved),
  };
}

export const SOLVED_CASES: readonly SolvedCase[] = JOINTS.map(solvedCase);
