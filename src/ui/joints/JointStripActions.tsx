import type { Joint } from '../../core/design/joint.ts';
import { isFull } from '../../store/edits.ts';
import { useSession } from '../../store/session.ts';
import { QuietButton } from '../app/QuietButton.tsx';
import { copyName, partFull, SAID } from '../text/shellText.ts';

/** What can be done with the open joint: a copy, its place in the strip, and taking it out. */
export function JointStripActions({ joint }: { joint: Joint }) {
  const joints = useSession((state) => state.part.joints);
  const duplicateJoint = useSession((state) => state.duplicateJoint);
  const removeJoint = useSession((state) => state.removeJoint);
  const moveJoint = useSession((state) => state.moveJoint);
  const { id, name } = joint;
  const place = joints.indexOf(joint) + 1;

  function duplicate(): void {
    const copy = copyName(
      name,
      joints.map((one) => one.name),
    );
    duplicateJoint(id, copy, SAID.duplicated(name));
  }

  return (
    <fieldset className="acts">
      <legend className="vh">This joint</legend>
      <QuietButton cannot={isFull({ part: { joints } }) && partFull(joints.length)} onClick={duplicate}>
        Duplicate
      </QuietButton>
      <QuietButton
        cannot={place === 1 && 'it is the first'}
        onClick={() => moveJoint(id, -1, SAID.moved(name, place - 1))}
      >
        Move left
      </QuietButton>
      <QuietButton
        cannot={place === joints.length && 'it is the last'}
        onClick={() => moveJoint(id, 1, SAID.moved(name, place + 1))}
      >
        Move right
      </QuietButton>
      <QuietButton onClick={() => removeJoint(id, SAID.removed(name))}>Delete</QuietButton>
    </fieldset>
  );
}
