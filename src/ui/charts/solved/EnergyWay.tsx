import { useMemo } from 'react';
import type { LengthUnit } from '../../text/numbers.ts';
import {
  ENERGY_NOTE,
  energyReading,
  ENERGY_WORDS,
  signedAmount,
  SOLVED_AIDS,
  SOLVED_HOW,
  SOLVED_NAMES,
  solvedTables,
} from '../../text/solvedChartText.ts';
import { fromAxis, onAxis } from '../effortCurve.ts';
import { PointTable } from '../PointTable.tsx';
import { AxisFigure } from './AxisFigure.tsx';
import { ChartNote } from './ChartNote.tsx';
import { EnergyWayPlot } from './EnergyWayPlot.tsx';
import type { Hollow } from './marks.ts';
import { amountMarks, energyLevel, GRIDS, amountSpan } from './spans.ts';
import { readWay, type Answered, type Way } from './way.ts';

interface EnergyWayProps {
  readonly number: number;
  readonly a: Answered;
  readonly way: Way;
  readonly hollows: readonly Hollow[];
  readonly bent: number;
  readonly unit: LengthUnit;
}

/** What is kept in the joint along the way: hollows are rests, and hills part them. */
export function EnergyWay({ number, a, way, hollows, bent, unit }: EnergyWayProps) {
  const { measure } = a.drive;
  const span = useMemo(() => amountSpan(way, measure), [way, measure]);
  const level = useMemo(() => energyLevel(way, hollows), [way, hollows]);
  const read = (at: number) => {
    const { amount, energy } = readWay(way, fromAxis(at, measure));
    return { text: energyReading(amount, energy, measure, unit), height: energy };
  };
  const say = (amount: number) => signedAmount(amount, measure, unit);
  const rows = [
    ...hollows.flatMap(({ hill, rest, kept, toComeBack }) => [
      [`${ENERGY_WORDS.hill(hill.energy)}, ${say(hill.amount)}`, solvedTables.energyCell(hill.energy)],
      [
        `${ENERGY_WORDS.kept(kept)}, ${ENERGY_WORDS.comeBack(toComeBack)}, ${say(rest.amount)}`,
        solvedTables.energyCell(kept),
      ],
    ]),
    ...amountMarks(span, measure, unit, false).map(({ at }) => {
      const amount = fromAxis(at, measure);
      return [say(amount), solvedTables.energyCell(readWay(way, amount).energy)];
    }),
  ];
  return (
    <AxisFigure
      number={number}
      name={SOLVED_NAMES.energy}
      aid={SOLVED_AIDS.energy}
      how={SOLVED_HOW.way}
      x={span}
      y={level.span}
      grid={GRIDS[measure]}
      start={onAxis(bent * a.joint.movement.amount, measure)}
      read={read}
      renderPlot={(frame, narrow) => <EnergyWayPlot {...{ a, way, hollows, bent, level, span, frame, narrow, unit }} />}
    >
      <ChartNote says={ENERGY_NOTE} kind={a.provenance.effort} />
      <PointTable caption={solvedTables.energy} heads={solvedTables.energyHeads} rows={rows} />
    </AxisFigure>
  );
}
