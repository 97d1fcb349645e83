import { useMemo, useState } from 'react';
import type { Assessment } from '../../../core/design/assessment.ts';
import type { LengthUnit } from '../../text/numbers.ts';
import { NO_COMPASS, NO_LENGTHS, STILL_SOLVING } from '../../text/solvedChartText.ts';
import '../charts.css';
import type { LifeDomain } from '../domains.ts';
import { Effort } from '../Effort.tsx';
import { dragged, type LengthDomain } from '../lengthCurves.ts';
import { StrainLength } from '../StrainLength.tsx';
import { StrainLife } from '../StrainLife.tsx';
import type { Phase } from '../useSizing.ts';
import { CompassOfGive } from './CompassOfGive.tsx';
import { papersOf } from './papers.ts';
import { SideBySide } from './SideBySide.tsx';
import { sideBySideOf } from './sideBySide.ts';
import './solved.css';
import { WayFigures } from './WayFigures.tsx';
import { compassOf } from './compass.ts';
import { isAnswered } from './way.ts';

interface SolvedCurvesProps {
  readonly assessment: Assessment;
  /** How far the scrubber holds it, as a share of the wanted amount. */
  readonly bent: number;
  readonly unit: LengthUnit;
  /** A size is changed on a curve. Two sizes may change one after the other before the next render. */
  readonly onSize: (parameter: string, value: number, phase: Phase) => void;
}

interface Held {
  readonly life?: LifeDomain;
  readonly length?: LengthDomain;
}

/** Every figure that there is something to tell in, of a joint that the solver answers. */
export function SolvedCurves({ assessment: a, bent, unit, onSize }: SolvedCurvesProps) {
  const [held, setHeld] = useState<Held>({});
  const usual = useMemo(() => papersOf(a, unit), [a, unit]);
  const life = held.life ?? usual.life;
  const length = usual.length && (held.length ?? usual.length);
  const names = dragged(a);
  const side = useMemo(() => sideBySideOf(a), [a]);
  const compass = useMemo(() => (isAnswered(a) ? compassOf(a) : undefined), [a]);
  const next = length ? 4 : 3;
  const hold = (paper: Held) => (isHeld: boolean) => setHeld(isHeld ? paper : {});
  return (
    <section className="curves" aria-label="Curves">
      <StrainLife assessment={a} unit={unit} domain={life} sizing={{ names, onSize, onHold: hold({ life }) }} />
      {length && (
        <StrainLength assessment={a} unit={unit} domain={length} sizing={{ names, onSize, onHold: hold({ length }) }} />
      )}
      {isAnswered(a) ? (
        <WayFigures a={a} first={next} bent={bent} unit={unit}>
          {(last) => (
            <>
              {side && <SideBySide number={last + 1} a={a} side={side} />}
              {compass && (
                <CompassOfGive
                  number={last + (side ? 2 : 1)}
                  compass={compass}
                  unit={unit}
                  kind={a.provenance.effort}
                />
              )}
            </>
          )}
        </WayFigures>
      ) : (
        <>
          <Effort assessment={a} bent={bent} unit={unit} />
          <p className="chart-left-out waiting">{STILL_SOLVING}</p>
        </>
      )}
      {!length && <p className="chart-left-out">{NO_LENGTHS}</p>}
      {isAnswered(a) && !compass && <p className="chart-left-out">{NO_COMPASS}</p>}
    </section>
  );
}
