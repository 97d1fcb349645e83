import { useSession } from '../../store/session.ts';
import { EmptyPart } from './EmptyPart.tsx';
import { JointSheet } from './JointSheet.tsx';
import { JointStrip } from './JointStrip.tsx';
import { useCurrentJoint } from './useCurrentJoint.ts';

/** The place where joints are designed: the strip of them, and the sheet of the one that is open. */
export function JointsPlace() {
  const joint = useCurrentJoint();
  const partName = useSession((state) => state.part.name);
  if (joint === undefined) {
    return (
      <main className="main">
        <EmptyPart partName={partName} />
      </main>
    );
  }
  return (
    <>
      <JointStrip current={joint} />
      <main className="main">
        <JointSheet key={joint.id} joint={joint} />
      </main>
    </>
  );
}
