import { useEffect, useRef } from 'react';
import { useSession } from '../../store/session.ts';
import { EmptyPart } from './EmptyPart.tsx';
import { JointSheet } from './JointSheet.tsx';
import { JointStrip } from './JointStrip.tsx';
import { useCurrentJoint } from './useCurrentJoint.ts';

/** The place where joints are designed: the strip of them, and the sheet of the one that is open. */
export function JointsPlace() {
  const joint = useCurrentJoint();
  const partName = useSession((state) => state.part.name);
  const isEmpty = joint === undefined;
  const main = useRef<HTMLElement>(null);
  const wasEmpty = useRef(isEmpty);

  // The first joint and the last take the button that was pressed away with them; focus must not fall off the page.
  useEffect(() => {
    if (wasEmpty.current !== isEmpty && document.activeElement === document.body) main.current?.focus();
    wasEmpty.current = isEmpty;
  }, [isEmpty]);

  return (
    <>
      {!isEmpty && <JointStrip current={joint} />}
      <main className="main" ref={main} tabIndex={-1}>
        {isEmpty ? <EmptyPart partName={partName} /> : <JointSheet key={joint.id} joint={joint} />}
      </main>
    </>
  );
}
