import { lazy, memo, useDeferredValue } from 'react';
import type { Joint } from '../../core/design/joint.ts';
import { useChoices } from '../../store/choices.ts';
import { useSession } from '../../store/session.ts';
import { Late } from '../app/Late.tsx';
import { Answer } from './Answer.tsx';
import { Brief } from './Brief.tsx';
import { JointFigure } from './JointFigure.tsx';
import { sizeTo } from './sizeTo.ts';
import { useHeldAbove } from './useHeldAbove.ts';
import { useSolved } from './useSolved.ts';
import { useSoon } from './useSoon.ts';

// Only a section that was measured has one.
const ScalingTable = lazy(async () => ({ default: (await import('./ScalingTable.tsx')).ScalingTable }));
// Remembered, so that a change first redraws what is being looked at and these follow in a moment of their own.
const Curves = memo(lazy(async () => ({ default: (await import('../charts/Curves.tsx')).Curves })));
const SolvedCurves = memo(
  lazy(async () => ({ default: (await import('../charts/solved/SolvedCurves.tsx')).SolvedCurves })),
);
const UnderCurves = memo(lazy(async () => ({ default: (await import('./match/UnderCurves.tsx')).UnderCurves })));
const Foot = memo(lazy(async () => ({ default: (await import('./Foot.tsx')).Foot })));

/** One joint on the sheet: what is wanted, the answer, the drawing, the curves, and what to carry away. */
export function JointSheet({ joint }: { joint: Joint }) {
  const unit = useChoices((state) => state.unit);
  const bent = useSession((state) => state.bent);
  const changeJoint = useSession((state) => state.changeJoint);
  const [soon, place] = useSoon();
  useHeldAbove();
  const { assessed, charted, ...figure } = useSolved(joint);
  const later = useDeferredValue(assessed);
  const chartedLater = useDeferredValue(charted);
  // An arc follows the hand; a solved shape may come a frame later than the figures.
  const drawnLater = useDeferredValue(figure.drawn);
  const drawn = figure.drawn?.travel ? figure.drawn : drawnLater;
  const waiting = <section className="curves" aria-busy={figure.trouble === undefined} ref={place} />;
  return (
    <>
      <Brief joint={joint} assessment={assessed} unit={unit} onChange={changeJoint} />
      <Answer assessment={assessed} isWorking={figure.isWorking} unit={unit} onUse={changeJoint} />
      {assessed.ok && (
        <>
          <JointFigure {...figure} drawn={drawn} isWorking={figure.isWorking || drawn !== figure.drawn} />
          {joint.measuredThickness !== undefined && (
            <Late>
              <ScalingTable assessment={assessed.value} unit={unit} />
            </Late>
          )}
          {!(soon && chartedLater) && waiting}
          {soon && later.ok && (
            <Late fallback={chartedLater && waiting}>
              {chartedLater?.travel && <Curves assessment={chartedLater} bent={bent} unit={unit} onSize={sizeTo} />}
              {chartedLater && !chartedLater.travel && (
                <div className="busy" aria-busy={figure.isWorking}>
                  <SolvedCurves assessment={chartedLater} bent={bent} unit={unit} onSize={sizeTo} />
                </div>
              )}
              <UnderCurves
                joint={joint}
                assessment={later.value}
                charted={chartedLater}
                isWorking={figure.isWorking || chartedLater !== charted}
                unit={unit}
                onChange={changeJoint}
              />
              <Foot assessment={later.value} unit={unit} />
            </Late>
          )}
        </>
      )}
    </>
  );
}
