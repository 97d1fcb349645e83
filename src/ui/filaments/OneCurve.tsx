import { useMemo, useState } from 'react';
import type { Standing } from '../../core/design/acrossFilaments.ts';
import { drawnCurve, peakSpreadAt, severityAt } from '../../core/life/curveOf.ts';
import type { Anchor } from '../../core/material/evidence.ts';
import type { WholeFilament } from '../../core/material/types.ts';
import { PointTable } from '../charts/PointTable.tsx';
import { cycleStops, twoFigures } from '../charts/stops.ts';
import { curveReading, FIGURE_ONE, POINTS, SENSITIVITY } from '../text/filamentCurveText.ts';
import { grouped, percent } from '../text/numbers.ts';
import { LogFigure } from './LogFigure.tsx';
import { OneCurvePlot } from './OneCurvePlot.tsx';
import { sharedPaper } from './papers.ts';

interface Props {
  readonly row: WholeFilament;
  /** What its curve stands on. */
  readonly anchors: readonly Anchor[];
  /** How it bears the open joint, and the peak strain there. */
  readonly joint: { readonly standing: Standing; readonly strain: number } | undefined;
}

/** R of each way that it can be drawn for. */
const RATIOS = { oneWay: 0, bothWays: -1 } as const;
type Way = keyof typeof RATIOS;

/** Fig. 1: the curve of one filament, its two kinds of spread, and what it stands on. */
export function OneCurve({ row, anchors, joint }: Props) {
  const ratioOfJoint = joint?.standing.life.wear[0].ratio ?? 0;
  const [way, setWay] = useState<Way>(ratioOfJoint === RATIOS.bothWays ? 'bothWays' : 'oneWay');
  const { life } = row;
  const severity = severityAt(RATIOS[way], life.gamma);
  const drawn = useMemo(() => drawnCurve(life, severity), [life, severity]);
  const paper = useMemo(() => sharedPaper(joint?.strain), [joint?.strain]);
  const spread = (cycles: number) =>
    cycles <= life.maxReportableCycles ? peakSpreadAt(cycles, life, severity) : undefined;
  const read = (at: number) => {
    const found = spread(at);
    return { text: curveReading(at, found), heights: found ? [found.half] : [] };
  };
  const told = cycleStops([1, life.maxReportableCycles]).filter((at) => Number.isInteger(Math.log10(at)));
  return (
    <section className="one-curve" aria-label="Fig. 1">
      <fieldset className="names" aria-label={FIGURE_ONE.ways}>
        {(Object.keys(RATIOS) as Way[]).map((one) => (
          <button
            key={one}
            type="button"
            className="name-toggle"
            aria-pressed={way === one}
            onClick={() => setWay(one)}
          >
            {FIGURE_ONE[one]}
          </button>
        ))}
      </fieldset>
      <LogFigure
        number={1}
        name={FIGURE_ONE.name}
        aid={FIGURE_ONE.aid}
        how={FIGURE_ONE.keys}
        x={paper.cycles}
        y={paper.strain}
        up="log"
        right={() => 14}
        stops={cycleStops(paper.cycles)}
        start={1000}
        snap={twoFigures}
        read={read}
        renderPlot={(frame, narrow) => (
          <OneCurvePlot
            {...{ row, drawn, severity, joint, frame, narrow, paper }}
            ratio={RATIOS[way]}
            anchors={anchors}
          />
        )}
      >
        <PointTable
          caption={FIGURE_ONE.table}
          heads={FIGURE_ONE.heads}
          rows={told.flatMap((at) => {
            const found = spread(at);
            return found ? [[grouped(at), percent(found.low), percent(found.half), percent(found.high)]] : [];
          })}
        />
      </LogFigure>
      <p className="small">{way === 'bothWays' ? SENSITIVITY : POINTS}</p>
    </section>
  );
}
