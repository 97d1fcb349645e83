import type { Joint } from '../../core/design/joint.ts';
import type { Drive, FlexureFamily } from '../../core/flexures/family.ts';
import { FAMILIES } from '../../core/flexures/index.ts';
import type { Lying } from '../../core/print/profile.ts';
import { newJoint, newMeasuredJoint, ofAnotherKind, USUAL_PROFILE } from '../../store/newJoint.ts';
import { useSession } from '../../store/session.ts';
import { kindText } from '../text/kindText.ts';
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

/** Every kind of flexure, and a measured one. */
export const ADDITIONS: readonly Addition[] = [
  ...FAMILIES.map((family) => {
    const { name } = kindText(family.id);
    return {
      id: family.id,
      family: family.id,
      words: name,
      name,
      make: (given: string, like: Joint | undefined) => newJoint(family, given, like),
    };
  }),
  MEASURED,
];

/** Adds it at the end, with the open joint's printer and filament, and opens it. */
export function add({ name: kind, make }: Pick<Addition, 'name' | 'make'>): void {
  const { part, current, addJoint } = useSession.getState();
  const like = part.joints.find(({ id }) => id === current);
  const name = newName(
    kind,
    part.joints.map((joint) => joint.name),
  );
  addJoint(make(name, like), SAID.added(name));
}

/** What was asked of a kind in the catalogue, besides the kind. */
interface Taken {
  readonly family: FlexureFamily;
  readonly drive: Drive;
  readonly lying: Lying | undefined;
}

const laid = (joint: Joint | undefined, lying: Lying | undefined) => {
  const profile = joint?.profile ?? USUAL_PROFILE;
  return { profile: lying === undefined ? profile : { ...profile, lying } };
};

/** Adds a worked joint of a kind, moved and printed as was asked. */
export function addKind({ family, drive, lying }: Taken): void {
  const { name } = kindText(family.id);
  add({ name, make: (given, like) => newJoint(family, given, laid(like, lying), drive) });
}

/** Makes the joint another kind; nothing changes where it is of that kind already. */
export function changeKind(joint: Joint, { family, drive, lying }: Taken, said: string): void {
  if (family.id === joint.family) return;
  const next = ofAnotherKind({ ...joint, ...laid(joint, lying) }, family, drive);
  useSession.getState().changeJoint(next, said);
}
