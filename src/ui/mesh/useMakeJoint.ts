/** A thin section becomes a joint of the part that is being designed, which opens on it. */
import type { Judged } from '../../core/inspect/judged.ts';
import { cleanName } from '../../files/names.ts';
import { isFull } from '../../store/edits.ts';
import { useSession } from '../../store/session.ts';
import { JOINT_SAID } from '../text/meshText.ts';
import { newName, partFull } from '../text/shellText.ts';
import { useChecked } from './checked.ts';

export function useMakeJoint() {
  const { name: file } = useChecked();
  const full = useSession(isFull);
  const count = useSession((state) => state.part.joints.length);
  const make = ({ joint }: Judged) => {
    const { part, addJoint } = useSession.getState();
    const taken = part.joints.map(({ name }) => name);
    const name = newName(cleanName(joint.name), taken);
    addJoint({ ...joint, name }, JOINT_SAID(name, file));
    location.hash = 'joints';
  };
  return { make, cannot: full ? partFull(count) : undefined };
}
