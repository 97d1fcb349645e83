/** What taking a kind from the catalogue makes: a new joint, or another kind of the one that is open. */
import type { Joint } from '../../core/design/joint.ts';
import type { Drive, FlexureFamily } from '../../core/flexures/family.ts';
import type { Lying } from '../../core/print/profile.ts';
import { newJoint, ofAnotherKind, USUAL_PROFILE } from '../../store/newJoint.ts';
import { useSession } from '../../store/session.ts';
import { kindText } from '../text/kindText.ts';
import { add } from './newJoints.ts';

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
