import type { Joint } from '../../core/design/joint.ts';
import { isFull } from '../../store/edits.ts';
import { useSession } from '../../store/session.ts';
import { NameField } from '../app/NameField.tsx';
import { QuietButton } from '../app/QuietButton.tsx';
import { copyName, partFull, SAID } from '../text/shellText.ts';

/** What can be done with the open joint: its name, its place in the strip, a copy, and taking it out. */
export function JointStripActions({ joint }: { joint: Joint }) {
  const joints = useSession((state) => state.part.joints);
  const duplicateJoint = useSession((state) => state.duplicateJoint);
  const renameJoint = useSession((state) => state.renameJoint);
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
    <fieldset>
      <legend className="vh">This joint</legend>
      <NameField
        key={id}
        label="Name of this joint"
        name={name}
        onRename={(next) => renameJoint(id, next, SAID.renamed(next, name))}
      />
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
