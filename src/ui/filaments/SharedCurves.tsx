import { useMemo } from 'react';
import { drawnCurve, peakStrainAt } from '../../core/life/curveOf.ts';
import { LogFigure } from './LogFigure.tsx';
import { clamp } from '../charts/frame.ts';
import { PointTable } from '../charts/PointTable.tsx';
import { cycleStops, twoFigures } from '../charts/stops.ts';
import { countedStrain, FIGURE_2, rowName, sharedReading } from '../text/filamentsText.ts';
import { grouped } from '../text/numbers.ts';
import type { Compared } from './CompareTable.tsx';
import { useMarked } from './comparing.ts';
import type { Papers } from './papers.ts';
import { SharedPlot, type SharedCurve, type SharedJoint } from './SharedPlot.tsx';

interface Props {
  readonly rows: readonly Compared[];
  readonly paper: Papers;
  readonly joint: SharedJoint | undefined;
}

/** Strain at which half have broken; nothing where nobody has counted so far. */
function strainAt({ row, severity }: SharedCurve, cycles: number): number | undefined {
  return cycles <= row.life.maxReportableCycles ? peakStrainAt(cycles, row.life, severity) : undefined;
}

const DECADES: readonly number[] = [1, 10, 100, 1000, 10_000, 100_000, 1_000_000];

function CurveTable({ curves }: { readonly curves: readonly SharedCurve[] }) {
  const rows = curves.map((curve) => [
    rowName(curve.row),
    ...DECADES.map((cycles) => countedStrain(strainAt(curve, cycles))),
  ]);
  return <PointTable caption={FIGURE_2.table} heads={['filament', ...DECADES.map(grouped)]} rows={rows} />;
}

/** Fig. 2: the curves of all filaments, with the spread of those that are marked. */
export function SharedCurves({ rows, paper, joint }: Props) {
  const marked = useMarked();
  const curves = useMemo(
    () =>
      rows.map(({ row, standing }): SharedCurve => {
        const severity = standing?.severity ?? 1;
        return { row, severity, drawn: drawnCurve(row.life, severity) };
      }),
    [rows],
  );
  const read = (at: number) => {
    const of = curves
      .filter(({ row }) => marked.includes(row.id))
      .map((curve) => [rowName(curve.row), strainAt(curve, at)] as const);
    return { text: sharedReading(at, of), heights: of.flatMap(([, strain]) => strain ?? []) };
  };
  return (
    <div className="shared">
      <LogFigure
        number={2}
        name={FIGURE_2.name}
        aid={FIGURE_2.aid}
        how={FIGURE_2.keys}
        x={paper.cycles}
        y={paper.strain}
        up="log"
        right={(width) => (width < 420 ? 76 : 104)}
        stops={cycleStops(paper.cycles)}
        start={clamp(twoFigures(joint?.cycles ?? 1000), paper.cycles)}
        snap={twoFigures}
        read={read}
        renderPlot={(frame, narrow) => <SharedPlot {...{ curves, marked, paper, joint, frame, narrow }} />}
      >
        <CurveTable curves={curves} />
      </LogFigure>
      <p className="small">{FIGURE_2.note}</p>
    </div>
  );
}
