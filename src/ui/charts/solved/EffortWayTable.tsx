import { memo } from 'react';
import { effortText } from '../../text/amountText.ts';
import type { LengthUnit } from '../../text/numbers.ts';
import { markText, signedAmount, solvedTables } from '../../text/solvedChartText.ts';
import { fromAxis } from '../amountAxis.ts';
import type { Span } from '../frame.ts';
import { PointTable } from '../PointTable.tsx';
import type { WayMark } from './marks.ts';
import { amountMarks } from './spans.ts';
import { readWay, type Answered, type Way } from './way.ts';

interface EffortWayTableProps {
  readonly a: Answered;
  readonly way: Way;
  readonly marks: readonly WayMark[];
  readonly span: Span;
  readonly unit: LengthUnit;
}

/** The figure as a table: the wanted amount first, then what is marked, then what is figured on the axis. */
export const EffortWayTable = memo(function EffortWayTable({ a, way, marks, span, unit }: EffortWayTableProps) {
  const { measure } = a.drive;
  const wanted = a.joint.movement.amount;
  const say = (amount: number) => signedAmount(amount, measure, unit);
  const cells = (amount: number) => {
    const { typical, low, high, holds } = readWay(way, amount);
    return [...[typical, low, high].map((effort) => effortText(effort, measure)), solvedTables.holds(holds)];
  };
  const marked = marks
    .filter(({ amount }) => amount !== 0)
    .map(({ kind, amount, effort }) => [
      kind === 'rests' || kind === 'balanced'
        ? markText(kind, amount, effort, measure, unit)
        : `${markText(kind, amount, effort, measure, unit)}, ${say(amount)}`,
      ...cells(amount),
    ]);
  const figured = amountMarks(span, measure, unit, false)
    .map(({ at }) => fromAxis(at, measure))
    .filter((at) => Math.abs(at - wanted) > 1e-9);
  const rows = [[say(wanted), ...cells(wanted)], ...marked, ...figured.map((at) => [say(at), ...cells(at)])];
  // Two amounts may be said alike.
  const byName = new Map(rows.toReversed().map((row) => [row[0], row] as const));
  return (
    <PointTable
      caption={solvedTables.effort}
      heads={solvedTables.effortHeads(measure)}
      rows={[...byName.values()].toReversed()}
    />
  );
});
