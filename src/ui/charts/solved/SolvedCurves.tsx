import { useMemo } from 'react';
import { within } from '../../drawing/reach.ts';
import { amountShown, travelledOf } from '../../drawing/solved/travelled.ts';
import type { LengthUnit } from '../../text/numbers.ts';
import { NO_LENGTHS, STILL_SOLVING } from '../../text/solvedChartText.ts';
import type { CurvesProps } from '../Curves.tsx';
import { Effort } from '../Effort.tsx';
import { StrainFigures } from '../StrainFigures.tsx';
import { CompassOfGive } from './CompassOfGive.tsx';
import { papersOf } from './papers.ts';
import { SideBySide } from './SideBySide.tsx';
import { sideBySideOf } from './sideBySide.ts';
import './solved.css';
import { WayFigures } from './WayFigures.tsx';
import { compassOf } from './compass.ts';
import { isAnswered, type Answered } from './way.ts';

/** Every figure that there is something to tell in, of a joint that the solver answers. */
export function SolvedCurves({ assessment: a, bent, unit, onSize }: CurvesProps) {
  const { life, length } = useMemo(() => papersOf(a, unit), [a, unit]);
  return (
    <section className="curves" aria-label="Curves">
      <StrainFigures assessment={a} {...{ unit, life, length, onSize }} />
      {isAnswered(a) ? (
        <AnsweredFigures a={a} first={length ? 4 : 3} bent={bent} unit={unit} />
      ) : (
        <>
          <Effort assessment={a} bent={within({ from: 0, to: 1 }, bent)} unit={unit} />
          <p className="chart-left-out waiting">{STILL_SOLVING}</p>
        </>
      )}
      {!length && <p className="chart-left-out">{NO_LENGTHS}</p>}
    </section>
  );
}

interface AnsweredProps {
  readonly a: Answered;
  readonly first: number;
  readonly bent: number;
  readonly unit: LengthUnit;
}

/** What the solver's answer tells: along the way, side by side, and how far the pad gives. */
function AnsweredFigures({ a, first, bent, unit }: AnsweredProps) {
  const side = useMemo(() => sideBySideOf(a), [a]);
  const compass = useMemo(() => compassOf(a), [a]);
  // Where its drawing shows it, however far is asked for.
  const shown = useMemo(() => amountShown(travelledOf(a, a.solved), bent), [a, bent]);
  return (
    <WayFigures {...{ a, first, shown, unit }}>
      {(last) => (
        <>
          {side && <SideBySide number={last + 1} a={a} side={side} />}
          <CompassOfGive number={last + (side ? 2 : 1)} compass={compass} unit={unit} kind={a.provenance.effort} />
        </>
      )}
    </WayFigures>
  );
}
