import { useMemo, type ReactNode } from 'react';
import type { LengthUnit } from '../../text/numbers.ts';
import type { Span } from '../frame.ts';
import { EffortWay } from './EffortWay.tsx';
import { energyCurve } from './energyCurve.tsx';
import { hollowsOf, marksOf } from './marks.ts';
import { roomOf } from './room.ts';
import { roomCurve } from './roomCurve.tsx';
import { wayOf, type Answered } from './way.ts';
import { WayCurveFigure } from './WayCurveFigure.tsx';

const NOWHERE: readonly Span[] = [];

interface WayFiguresProps {
  readonly a: Answered;
  /** Number of the first of these figures. */
  readonly first: number;
  /** The amount at which the joint is shown. */
  readonly shown: number;
  readonly unit: LengthUnit;
  /** Figures that follow, told the number of the last of these. */
  readonly children: (last: number) => ReactNode;
}

/** The figures that lie along the way: effort, and energy and room where they have something to tell. */
export function WayFigures({ a, first, shown, unit, children }: WayFiguresProps) {
  const way = useMemo(() => wayOf(a), [a]);
  const marks = useMemo(() => marksOf(way), [way]);
  const room = useMemo(() => roomOf(a), [a]);
  const curves = useMemo(() => {
    const hollows = hollowsOf(marks);
    return [
      ...(hollows.length > 0 ? [energyCurve(a, way, hollows, unit)] : []),
      ...(room ? [roomCurve(a, room, unit)] : []),
    ];
  }, [a, way, marks, room, unit]);
  const common = { a, way, shown, unit };
  return (
    <>
      <EffortWay number={first} marks={marks} touching={room?.touching ?? NOWHERE} {...common} />
      {curves.map((curve, i) => (
        <WayCurveFigure key={curve.name} number={first + 1 + i} curve={curve} {...common} />
      ))}
      {children(first + curves.length)}
    </>
  );
}
