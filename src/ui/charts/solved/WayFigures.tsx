import { useMemo, type ReactNode } from 'react';
import type { LengthUnit } from '../../text/numbers.ts';
import type { Span } from '../frame.ts';
import { EffortWay } from './EffortWay.tsx';
import { EnergyWay } from './EnergyWay.tsx';
import { hollowsOf, marksOf } from './marks.ts';
import { roomOf } from './room.ts';
import { RoomWay } from './RoomWay.tsx';
import { wayOf, type Answered } from './way.ts';

const NOWHERE: readonly Span[] = [];

interface WayFiguresProps {
  readonly a: Answered;
  /** Number of the first of these figures. */
  readonly first: number;
  readonly bent: number;
  readonly unit: LengthUnit;
  /** Figures that follow, told the number of the last of these. */
  readonly children: (last: number) => ReactNode;
}

/** The figures that lie along the way: effort, and energy and room where they have something to tell. */
export function WayFigures({ a, first, bent, unit, children }: WayFiguresProps) {
  const way = useMemo(() => wayOf(a), [a]);
  const marks = useMemo(() => marksOf(way), [way]);
  const hollows = useMemo(() => hollowsOf(marks), [marks]);
  const room = useMemo(() => roomOf(a), [a]);
  const hasHollows = hollows.length > 0;
  const afterEnergy = hasHollows ? first + 2 : first + 1;
  return (
    <>
      <EffortWay number={first} touching={room?.touching ?? NOWHERE} {...{ a, way, marks, bent, unit }} />
      {hasHollows && <EnergyWay number={first + 1} {...{ a, way, hollows, bent, unit }} />}
      {room && <RoomWay number={afterEnergy} {...{ a, way, room, bent, unit }} />}
      {children(room ? afterEnergy : afterEnergy - 1)}
    </>
  );
}
