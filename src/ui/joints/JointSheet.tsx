import { lazy, memo, Suspense, useDeferredValue } from 'react';
import type { Joint } from '../../core/design/joint.ts';
import { useChoices } from '../../store/choices.ts';
import { useSession } from '../../store/session.ts';
import { Answer } from './Answer.tsx';
import { assessOnce } from './assessOnce.ts';
import { Brief } from './Brief.tsx';
import { ScalingTable } from './ScalingTable.tsx';
import { sizeTo } from './sizeTo.ts';
import { useSoon } from './useSoon.ts';

// The drawing is asked for at once, but in a file of its own: the brief and the answer must not wait for it.
const drawing = import('../drawing/JointDrawing.tsx');
const JointDrawing = lazy(async () => ({ default: (await drawing).JointDrawing }));
// Remembered, so that a change first redraws what is being looked at and these follow in a moment of their own.
const Curves = memo(lazy(async () => ({ default: (await import('../charts/Curves.tsx')).Curves })));
const Foot = memo(lazy(async () => ({ default: (await import('./Foot.tsx')).Foot })));

/** One joint on the sheet: what is wanted, the answer, the drawing, the curves, and what to carry away. */
export function JointSheet({ joint }: { joint: Joint }) {
  const unit = useChoices((state) => state.unit);
  const bent = useSession((state) => state.bent);
  const bend = useSession((state) => state.bend);
  const showScale = useSession((state) => state.showScale);
  const changeJoint = useSession((state) => state.changeJoint);
  const [soon, place] = useSoon();
  const assessed = assessOnce(joint);
  const later = useDeferredValue(assessed);
  const waiting = <section className="curves" aria-busy="true" ref={place} />;
  return (
    <>
      <Brief joint={joint} assessment={assessed} unit={unit} onChange={changeJoint} />
      <Answer assessment={assessed} unit={unit} onUse={changeJoint} />
      {assessed.ok && (
        <>
          <section className="draw" aria-label="Drawing">
            <Suspense fallback={<div className="coming" />}>
              <JointDrawing
                assessment={assessed.value}
                bent={bent}
                unit={unit}
                onBent={bend}
                onSize={sizeTo}
                onScale={showScale}
              />
            </Suspense>
          </section>
          {joint.measuredThickness !== undefined && <ScalingTable assessment={assessed.value} unit={unit} />}
          {!soon && waiting}
          {soon && later.ok && (
            <Suspense fallback={waiting}>
              <Curves assessment={later.value} bent={later.value.travel ? bent : 1} unit={unit} onSize={sizeTo} />
              <Foot assessment={later.value} unit={unit} />
            </Suspense>
          )}
        </>
      )}
    </>
  );
}
