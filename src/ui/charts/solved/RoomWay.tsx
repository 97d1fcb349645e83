import { useMemo } from 'react';
import { length, MM_PER_INCH, type LengthUnit } from '../../text/numbers.ts';
import {
  roomNote,
  roomReading,
  signedAmount,
  SOLVED_AIDS,
  SOLVED_HOW,
  SOLVED_NAMES,
  solvedTables,
  TOUCHES,
} from '../../text/solvedChartText.ts';
import { fromAxis, onAxis } from '../effortCurve.ts';
import { PointTable } from '../PointTable.tsx';
import { AxisFigure } from './AxisFigure.tsx';
import { ChartNote } from './ChartNote.tsx';
import { roomAt, touchesPast, type Room } from './room.ts';
import { RoomWayPlot } from './RoomWayPlot.tsx';
import { amountMarks, GRIDS, levelsOver, amountSpan } from './spans.ts';
import type { Answered, Way } from './way.ts';

interface RoomWayProps {
  readonly number: number;
  readonly a: Answered;
  readonly way: Way;
  readonly room: Room;
  readonly bent: number;
  readonly unit: LengthUnit;
}

/** The least clear distance between what may touch, along the way. */
export function RoomWay({ number, a, way, room, bent, unit }: RoomWayProps) {
  const { measure } = a.drive;
  const span = useMemo(() => amountSpan(way, measure), [way, measure]);
  const level = useMemo(() => {
    const most = Math.max(...room.stretches.flat().map(({ gap }) => gap), 2 * a.joint.profile.lineWidth);
    return levelsOver(0, most * 1.05, unit === 'mm' ? 1 : MM_PER_INCH);
  }, [room, a, unit]);
  const read = (at: number) => {
    const amount = fromAxis(at, measure);
    const gap = roomAt(room, amount);
    return { text: roomReading(amount, gap, measure, unit), ...(gap !== undefined && gap > 0 ? { height: gap } : {}) };
  };
  const rows = amountMarks(span, measure, unit, false).map(({ at }) => {
    const amount = fromAxis(at, measure);
    const gap = roomAt(room, amount);
    return [signedAmount(amount, measure, unit), gap === undefined ? '–' : gap > 0 ? length(gap, unit) : TOUCHES];
  });
  return (
    <AxisFigure
      number={number}
      name={SOLVED_NAMES.room}
      aid={SOLVED_AIDS.room}
      how={SOLVED_HOW.way}
      x={span}
      y={level.span}
      grid={GRIDS[measure]}
      start={onAxis(bent * a.joint.movement.amount, measure)}
      read={read}
      renderPlot={(frame, narrow) => <RoomWayPlot {...{ a, room, bent, level, span, frame, narrow, unit }} />}
    >
      <ChartNote says={roomNote(room.least.gap, touchesPast(room), measure, unit)} kind="computed" />
      <PointTable caption={solvedTables.room} heads={solvedTables.roomHeads} rows={rows} />
    </AxisFigure>
  );
}
