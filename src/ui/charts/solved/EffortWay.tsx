import { useMemo } from 'react';
import { amountText } from '../../text/amountText.ts';
import type { LengthUnit } from '../../text/numbers.ts';
import {
  EFFORT_NOTE,
  formNote,
  SOLVED_AIDS,
  SOLVED_HOW,
  SOLVED_NAMES,
  wayReading,
} from '../../text/solvedChartText.ts';
import { fromAxis, GRIDS, onAxis } from '../amountAxis.ts';
import { AxisFigure } from '../AxisFigure.tsx';
import type { Span } from '../frame.ts';
import { formCurve, formEffort } from './byForm.ts';
import { ChartNote } from './ChartNote.tsx';
import { EffortWayPlot } from './EffortWayPlot.tsx';
import { EffortWayTable } from './EffortWayTable.tsx';
import type { WayMark } from './marks.ts';
import { amountSpan, effortLevel } from './spans.ts';
import { readWay, staysBentPast, type Answered, type Way } from './way.ts';

interface EffortWayProps {
  readonly number: number;
  readonly a: Answered;
  readonly way: Way;
  readonly marks: readonly WayMark[];
  /** Amounts between which it touches. */
  readonly touching: readonly Span[];
  /** The amount at which the joint is shown. */
  readonly shown: number;
  readonly unit: LengthUnit;
}

/** How hard it pushes back all along the way, and where it rests, snaps and comes back. */
export function EffortWay({ number, a, way, marks, touching, shown, unit }: EffortWayProps) {
  const { measure } = a.drive;
  const wanted = a.joint.movement.amount;
  const span = useMemo(() => amountSpan(way, measure), [way, measure]);
  const byForm = useMemo(() => formCurve(a, fromAxis(span[1], measure)), [a, span, measure]);
  const level = useMemo(() => effortLevel(a, way, marks), [a, way, marks]);
  const bentPast = useMemo(() => staysBentPast(a), [a]);
  const read = (at: number) => {
    const state = readWay(way, fromAxis(at, measure));
    const staysBent = state.amount > bentPast.ahead || state.amount < -bentPast.behind;
    return { text: wayReading(state, measure, unit, staysBent), height: state.typical };
  };
  const byFormula = byForm.length > 0 ? formEffort(a, wanted) : undefined;
  const note = formNote(byFormula, readWay(way, wanted).typical, amountText(wanted, measure, unit));
  return (
    <AxisFigure
      number={number}
      name={SOLVED_NAMES.effort}
      aid={marks.length > 1 ? SOLVED_AIDS.marked : SOLVED_AIDS.effort(measure)}
      how={SOLVED_HOW.way}
      x={span}
      y={level.span}
      grid={GRIDS[measure]}
      start={onAxis(shown, measure)}
      read={read}
      renderPlot={(frame, narrow) => (
        <EffortWayPlot {...{ a, way, marks, touching, shown, byForm, level, span, frame, narrow, unit }} />
      )}
    >
      <ChartNote says={EFFORT_NOTE} kind={a.provenance.effort}>
        {note}
      </ChartNote>
      <EffortWayTable {...{ a, way, marks, span, unit }} />
    </AxisFigure>
  );
}
