/** Joints that are reckoned by tests from now on: one step to undo, whichever they are. */
import type { Joint } from '../../core/design/joint.ts';
import type { Filament } from '../../core/material/types.ts';
import { findFilament } from '../../core/material/shelf.ts';
import { useSession } from '../../store/session.ts';
import { TESTS_SAID } from '../text/testsText.ts';

/** A joint in another filament. */
export const inRow = (joint: Joint, { id }: Filament): Joint => ({
  ...joint,
  profile: { ...joint.profile, filament: id },
});

/** Joints of the part in the same filament that are not reckoned by the tests of it. */
export function alikeJoints(joints: readonly Joint[], prior: Filament): readonly Joint[] {
  return joints.filter(({ profile }) => profile.filament === prior.id);
}

export function reckonBy(which: readonly Joint[], row: Filament): void {
  const { part, current, replacePart, selectJoint, changeJoint } = useSession.getState();
  const [first] = which;
  if (!first) return;
  const was = findFilament(first.profile.filament)?.name ?? first.profile.filament;
  const said = TESTS_SAID.reckoned(
    which.map(({ name }) => name),
    row.name,
    was,
  );
  if (which.length === 1) {
    changeJoint(inRow(first, row), said);
    return;
  }
  const joints = part.joints.map((joint) => (which.includes(joint) ? inRow(joint, row) : joint));
  replacePart({ ...part, joints }, said);
  if (current !== undefined) selectJoint(current);
}
