import type { Joint } from '../../core/design/joint.ts';
import { newMeasuredJoint } from '../../store/newJoint.ts';
import { useSession } from '../../store/session.ts';
import { openJointOf } from '../../store/state.ts';
import { MEASURED_KIND, newName, SAID } from '../text/shellText.ts';

/** Something that can be added to a part: its words, and how the joint is made after the one that is open. */
export interface Addition {
  readonly id: string;
  /** Id of the family whose sign stands for it. */
  readonly family: string;
  /** As it is offered, and what the joint is called once it is there. */
  readonly words: string;
  readonly name: string;
  readonly make: (name: string, like: Joint | undefined) => Joint;
}

/** One of someone else's that is to be checked. */
export const MEASURED: Addition = {
  id: 'measured',
  family: 'straightLeaf',
  ...MEASURED_KIND,
  make: newMeasuredJoint,
};

/** Adds it at the end, with the open joint's printer and filament, and opens it. */
export function add({ name: kind, make }: Pick<Addition, 'name' | 'make'>): void {
  const session = useSession.getState();
  const { part, addJoint } = session;
  const like = openJointOf(session);
  const name = newName(
    kind,
    part.joints.map((joint) => joint.name),
  );
  addJoint(make(name, like), SAID.added(name));
}
