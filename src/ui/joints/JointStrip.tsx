import { isFull } from '../../store/edits.ts';
import { useSession } from '../../store/session.ts';
import { partFull } from '../text/shellText.ts';
import { JointStripCell } from './JointStripCell.tsx';
import { add, ADDITIONS } from './newJoints.ts';
import './JointStrip.css';

/** The joints of the part, life size side by side, and at the end what can be added. */
export function JointStrip() {
  const joints = useSession((state) => state.part.joints);
  const current = useSession((state) => state.current);
  const selectJoint = useSession((state) => state.selectJoint);
  const full = useSession(isFull) && partFull(joints.length);
  return (
    <nav className="strip" aria-label="Joints of this part, drawn life size">
      <ol>
        {joints.map((joint, index) => (
          <li key={joint.id}>
            <JointStripCell joint={joint} place={index + 1} isCurrent={joint.id === current} onSelect={selectJoint} />
          </li>
        ))}
      </ol>
      <fieldset className="adds">
        <legend>Add a joint</legend>
        <div>
          {ADDITIONS.map((addition) => (
            <button
              key={addition.id}
              className="b"
              type="button"
              aria-disabled={full ? true : undefined}
              title={full || undefined}
              onClick={full ? undefined : () => add(addition)}
            >
              {addition.words}
            </button>
          ))}
        </div>
      </fieldset>
    </nav>
  );
}
