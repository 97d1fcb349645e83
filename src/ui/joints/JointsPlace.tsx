import { useSession } from '../../store/session.ts';
import { PartBar } from '../app/PartBar.tsx';
import { EmptyPart } from './EmptyPart.tsx';
import { JointSheet } from './JointSheet.tsx';
import { JointStrip } from './JointStrip.tsx';
import { JointStripActions } from './JointStripActions.tsx';
import { useCurrentJoint } from './useCurrentJoint.ts';

/** The place where joints are designed: the strip, what can be done, and the sheet of the open joint. */
export function JointsPlace() {
  const joint = useCurrentJoint();
  const partName = useSession((state) => state.part.name);
  return (
    <>
      {joint !== undefined && <JointStrip />}
      <div className="acts">
        {joint !== undefined && <JointStripActions joint={joint} />}
        <PartBar />
      </div>
      <main className="main">
        {joint === undefined ? <EmptyPart partName={partName} /> : <JointSheet key={joint.id} joint={joint} />}
      </main>
    </>
  );
}
