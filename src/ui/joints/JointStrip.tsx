import type { Joint } from '../../core/design/joint.ts';
import { useSession } from '../../store/session.ts';
import { AddJoint } from './AddJoint.tsx';
import { JointStripActions } from './JointStripActions.tsx';
import { JointStripCell } from './JointStripCell.tsx';
import './JointStrip.css';
import { useStripVerdicts } from './useStripVerdicts.ts';

/** The joints of the part side by side, life size where they have an outline, and beside them what can be done. */
export function JointStrip({ current }: { current: Joint }) {
  const joints = useSession((state) => state.part.joints);
  const selectJoint = useSession((state) => state.selectJoint);
  useStripVerdicts(joints, current);
  return (
    <nav className="strip" aria-label="Joints of this part">
      <ol>
        {joints.map((joint, index) => (
          <JointStripCell
            key={joint.id}
            joint={joint}
            place={index + 1}
            isCurrent={joint === current}
            onSelect={selectJoint}
          />
        ))}
      </ol>
      <div className="ends">
        <AddJoint />
        <JointStripActions joint={current} />
      </div>
    </nav>
  );
}
