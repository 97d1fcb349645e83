import type { Joint } from '../../core/design/joint.ts';
import { FAMILIES } from '../../core/flexures/index.ts';
import { newJoint, newMeasuredJoint } from '../../store/newJoint.ts';
import { useSession } from '../../store/session.ts';
import { kindText } from '../text/kindText.ts';
import { MEASURED_KIND, newName, SAID } from '../text/shellText.ts';

/** Something that can be added to a part: its words, and how the joint is made after the one that is open. */
export interface Addition {
  readonly id: string;
  /** As it is offered, and what the joint is called once it is there. */
  readonly words: string;
  readonly name: string;
  readonly make: (name: string, like: Joint | undefined) => Joint;
}

/** Every kind of flexure, and one of someone else's that is to be checked. */
export const ADDITIONS: readonly Addition[] = [
  ...FAMILIES.map((family) => {
    const { name } = kindText(family.id);
    return {
      id: family.id,
      words: name,
      name,
      make: (given: string, like: Joint | undefined) => newJoint(family, given, like),
    };
  }),
  { id: 'measured', ...MEASURED_KIND, make: newMeasuredJoint },
];

/** Adds it at the end, with the open joint's printer and filament, and opens it. */
export function add(addition: Addition): void {
  const { part, current, addJoint } = useSession.getState();
  const like = part.joints.find(({ id }) => id === current);
  const name = newName(
    addition.name,
    part.joints.map((joint) => joint.name),
  );
  addJoint(addition.make(name, like), SAID.added(name));
}
