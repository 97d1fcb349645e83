import { lazy, useEffect, useRef } from 'react';
import type { Joint } from '../../core/design/joint.ts';
import { useSession } from '../../store/session.ts';
import { Late } from '../app/Late.tsx';
import { useChoosing } from './choosing.ts';
import { JointSheet } from './JointSheet.tsx';
import { JointStrip } from './JointStrip.tsx';
import { KindComing } from './KindComing.tsx';
import { useKindCome } from './kindsCome.ts';
import { useCurrentJoint } from './useCurrentJoint.ts';
import { useKindsLater } from './useKindsLater.ts';

const EmptyPart = lazy(async () => ({ default: (await import('./EmptyPart.tsx')).EmptyPart }));
const Choosing = lazy(async () => ({ default: (await import('./Choosing.tsx')).Choosing }));

/**
 * Focus must not fall off the page when what had it is gone: it goes back to what opened the catalogue, or to the sheet.
 */
function useFocusKept(scene: string) {
  const main = useRef<HTMLElement>(null);
  const before = useRef(scene);
  useEffect(() => {
    if (before.current === scene) return;
    before.current = scene;
    if (document.activeElement !== document.body) return;
    const { from, choosing } = useChoosing.getState();
    const opener = choosing === undefined && from !== undefined ? document.getElementById(from) : null;
    (opener ?? main.current)?.focus();
  }, [scene]);
  return main;
}

const coming = <div className="whole" aria-busy="true" />;

function OpenJoint({ joint }: { readonly joint: Joint }) {
  return useKindCome(joint.family) ? <JointSheet key={joint.id} joint={joint} /> : <KindComing />;
}

/** The place where joints are designed: the strip of them, and the sheet of the one that is open; or the catalogue, or the finder. */
export function JointsPlace() {
  const joint = useCurrentJoint();
  const partName = useSession((state) => state.part.name);
  const choosing = useChoosing((state) => state.choosing);
  const isEmpty = joint === undefined;
  useKindsLater();
  const main = useFocusKept(choosing ?? (isEmpty ? 'empty' : 'sheet'));

  if (choosing) {
    return (
      <main className="main" ref={main} tabIndex={-1}>
        <Late fallback={coming}>
          <Choosing what={choosing} joint={joint} />
        </Late>
      </main>
    );
  }
  return (
    <>
      {!isEmpty && <JointStrip current={joint} />}
      <main className="main" ref={main} tabIndex={-1}>
        {isEmpty ? (
          <Late fallback={coming}>
            <EmptyPart partName={partName} />
          </Late>
        ) : (
          <OpenJoint joint={joint} />
        )}
      </main>
    </>
  );
}
