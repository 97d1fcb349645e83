import { lazy, Suspense } from 'react';
import type { Joint } from '../../core/design/joint.ts';
import { useChoices } from '../../store/choices.ts';
import { useSession } from '../../store/session.ts';
import { JointDrawing } from '../drawing/JointDrawing.tsx';
import { Answer } from './Answer.tsx';
import { assessOnce } from './assessOnce.ts';
import { Brief } from './Brief.tsx';
import { Foot } from './Foot.tsx';
import { sizeTo } from './sizeTo.ts';

// Asked for at once but in a file of its own: the brief and the answer must not wait for the charts.
const charts = import('../charts/Curves.tsx');
const Curves = lazy(async () => ({ default: (await charts).Curves }));

/** One joint on the sheet: what is wanted, the answer, the drawing, the curves, and what to carry away. */
export function JointSheet({ joint }: { joint: Joint }) {
  const unit = useChoices((state) => state.unit);
  const bent = useSession((state) => state.bent);
  const bend = useSession((state) => state.bend);
  const showScale = useSession((state) => state.showScale);
  const changeJoint = useSession((state) => state.changeJoint);
  const assessed = assessOnce(joint);
  return (
    <>
      <Brief joint={joint} assessment={assessed} unit={unit} onChange={changeJoint} />
      <Answer assessment={assessed} unit={unit} onUse={changeJoint} />
      {assessed.ok && (
        <>
          <section className="draw" aria-label="Drawing">
            <JointDrawing
              assessment={assessed.value}
              bent={bent}
              unit={unit}
              onBent={bend}
              onSize={sizeTo}
              onScale={showScale}
            />
          </section>
          <Suspense fallback={<section className="curves" aria-busy="true" />}>
            <Curves assessment={assessed.value} bent={bent} unit={unit} onSize={sizeTo} />
          </Suspense>
          <Foot assessment={assessed.value} unit={unit} />
        </>
      )}
    </>
  );
}
