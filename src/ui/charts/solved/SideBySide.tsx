import type { Assessment } from '../../../core/design/assessment.ts';
import { effortText } from '../../text/amountText.ts';
import {
  RISE_NOTE,
  sideNote,
  sideReading,
  SOLVED_AIDS,
  SOLVED_HOW,
  SOLVED_NAMES,
  solvedTables,
} from '../../text/solvedChartText.ts';
import { AxisFigure } from '../AxisFigure.tsx';
import { levelsOver } from '../levels.ts';
import { PointTable } from '../PointTable.tsx';
import { ChartNote } from './ChartNote.tsx';
import type { SideBySide as Side } from './sideBySide.ts';
import { SideBySidePlot } from './SideBySidePlot.tsx';

interface SideBySideProps {
  readonly number: number;
  readonly a: Assessment;
  readonly side: Side;
}

/** The paper ends here, as a multiple of what is wanted: what is far off shows as off. */
const TOP = 3;

/** What one to twelve alike side by side push back, against what is wanted at most. */
export function SideBySide({ number, a, side }: SideBySideProps) {
  const { points, now, atMost, keeps } = side;
  const { measure } = a.drive;
  const last = points.at(-1) ?? now;
  const level = levelsOver(0, Math.min(TOP * atMost, Math.max(last.effort, atMost * 1.2)));
  const each = now.effort / now.count;
  const read = (at: number) => {
    const count = Math.round(at);
    return { text: sideReading(count, each * count, atMost, measure), height: each * count };
  };
  return (
    <AxisFigure
      number={number}
      name={SOLVED_NAMES.sideBySide}
      aid={SOLVED_AIDS.sideBySide}
      how={SOLVED_HOW.sideBySide}
      x={[points[0]?.count ?? 1, last.count]}
      paper={[0, last.count]}
      y={level.span}
      grid={{ step: 1, fine: 1 }}
      start={now.count}
      read={read}
      renderPlot={(frame) => <SideBySidePlot {...{ a, side, level, frame }} />}
    >
      <ChartNote says={RISE_NOTE} kind={a.provenance.effort}>
        {sideNote(keeps, last.count)}
      </ChartNote>
      <PointTable
        caption={solvedTables.sideBySide}
        heads={solvedTables.sideHeads}
        rows={points.map(({ count, effort }) => [
          String(count),
          effortText(effort, measure),
          solvedTables.within(effort <= atMost),
        ])}
      />
    </AxisFigure>
  );
}
