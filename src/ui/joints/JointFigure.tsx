import { lazy, memo } from 'react';
import { useChoices } from '../../store/choices.ts';
import { useSession } from '../../store/session.ts';
import { Late } from '../app/Late.tsx';
import { WORKING } from '../text/solverText.ts';
import { drawingFile } from './firstScreen.ts';
import { sizeTo } from './sizeTo.ts';
import { SolverTrouble } from './SolverTrouble.tsx';
import type { SolvedJoint } from './useSolved.ts';

const JointDrawing = lazy(async () => ({ default: (await drawingFile).JointDrawing }));
const SolvedDrawing = memo(
  lazy(async () => ({ default: (await import('../drawing/solved/SolvedDrawing.tsx')).SolvedDrawing })),
);

/** Fig. 1: as an arc where the joint rolls to one, else as the solver says; its place while there is nothing to draw. */
export function JointFigure({ drawn, isWorking, trouble, tryAgain }: Omit<SolvedJoint, 'assessed' | 'charted'>) {
  const unit = useChoices((state) => state.unit);
  const bent = useSession((state) => state.bent);
  const bend = useSession((state) => state.bend);
  const showScale = useSession((state) => state.showScale);
  const common = { unit, onSize: sizeTo, onScale: showScale };
  return (
    <section className="draw" aria-label="Drawing">
      {trouble !== undefined && <SolverTrouble message={trouble} onTryAgain={tryAgain} />}
      {trouble === undefined && drawn === undefined && <div className="coming" />}
      {drawn !== undefined && (
        <div className="busy" aria-busy={isWorking}>
          <Late fallback={<div className="coming" />}>
            {drawn.travel ? (
              <JointDrawing assessment={drawn} bent={bent} onBent={bend} {...common} />
            ) : (
              <SolvedDrawing assessment={drawn} bent={bent} onBent={bend} {...common} />
            )}
          </Late>
        </div>
      )}
      {isWorking && <span className="working">{WORKING}</span>}
    </section>
  );
}
