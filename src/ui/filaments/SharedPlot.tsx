import { memo, useId } from 'react';
import type { CurvePoint, DrawnCurve } from '../../core/life/curveOf.ts';
import type { WholeFilament } from '../../core/material/types.ts';
import { Axes, Grid } from '../charts/Axes.tsx';
import type { Frame } from '../charts/frame.ts';
import { Hatch } from '../charts/Hatch.tsx';
import { levelBand, pathOf } from '../charts/paths.ts';
import { PlotClip } from '../charts/PlotClip.tsx';
import { cycleTicks, logStrainTicks } from '../charts/ticks.ts';
import { AXES, BEYOND_THE_DATA, wantedCycles } from '../text/chartText.ts';
import { percent } from '../text/numbers.ts';
import { CurveNames } from './CurveNames.tsx';
import type { Papers } from './papers.ts';

export interface SharedCurve {
  readonly row: WholeFilament;
  /** Equivalent over peak strain. */
  readonly severity: number;
  readonly drawn: DrawnCurve;
}

export interface SharedJoint {
  readonly strain: number;
  readonly cycles: number;
}

interface Props {
  readonly curves: readonly SharedCurve[];
  readonly marked: readonly string[];
  readonly paper: Papers;
  readonly joint: SharedJoint | undefined;
  readonly frame: Frame;
  readonly narrow: boolean;
}

interface CurveProps extends Pick<Props, 'frame'> {
  readonly drawn: DrawnCurve;
}

/** The band of one filament, cut off where its counting ends. */
function Band({ drawn, frame: { x, y } }: CurveProps) {
  const end = drawn.median.at(-1)?.cycles ?? 1;
  const edges = drawn.total.map(({ strain, low, high }) => ({
    y: y(strain),
    low: x(Math.min(low, end)),
    high: x(Math.min(high, end)),
  }));
  return <path className="chart-total" d={levelBand(edges)} />;
}

function Median({ drawn, frame: { box, x, y }, isMarked }: CurveProps & { readonly isMarked: boolean }) {
  const px = ({ cycles, strain }: CurvePoint) => ({ x: x(cycles), y: y(strain) });
  const [head] = drawn.median;
  const top = head && px(head);
  return (
    <>
      <path className={isMarked ? 'curve-marked' : 'curve-other'} d={pathOf(drawn.median.map(px))} />
      {top && top.y > box.top && <circle className="I" cx={top.x} cy={top.y} r="2.6" />}
    </>
  );
}

/** Where the joint stands: its strain level, the cycles it should reach upright. */
function Wanted({ joint, frame: { box, x, y } }: { readonly joint: SharedJoint; readonly frame: Frame }) {
  const [level, upright] = [y(joint.strain), Math.min(x(joint.cycles), box.right)];
  const isLeft = upright < (box.left + box.right) / 2;
  return (
    <g className="shared-joint">
      <path className="chart-wanted" d={`M${box.left} ${level}H${box.right}M${upright} ${box.top}V${box.bottom}`} />
      <text className="halo ta s12" x={box.left + 6} y={level + 15}>
        your joint, {percent(joint.strain)}
      </text>
      <text
        className="halo ta s12"
        x={isLeft ? upright + 6 : upright - 6}
        y={box.bottom - 8}
        textAnchor={isLeft ? 'start' : 'end'}
      >
        {wantedCycles(joint.cycles)}
      </text>
    </g>
  );
}

export const SharedPlot = memo(function SharedPlot({ curves, marked, paper, joint, frame, narrow }: Props) {
  const id = useId();
  const ticks = { x: cycleTicks(paper.cycles, narrow), y: logStrainTicks(paper.strain) };
  const shown = curves.filter(({ row }) => marked.includes(row.id));
  // Hatched only where nobody has counted any of them.
  const last = Math.max(...curves.map(({ row }) => row.life.maxReportableCycles));
  return (
    <>
      <PlotClip id={`${id}c`} box={frame.box} />
      <Grid frame={frame} {...ticks} />
      <g clipPath={`url(#${id}c)`}>
        {shown.map(({ row, drawn }) => (
          <Band key={row.id} drawn={drawn} frame={frame} />
        ))}
      </g>
      <Hatch id={`${id}h`} frame={frame} from={last} />
      <g clipPath={`url(#${id}c)`}>
        {curves.map(({ row, drawn }) => (
          <Median key={row.id} drawn={drawn} frame={frame} isMarked={marked.includes(row.id)} />
        ))}
      </g>
      {joint && <Wanted joint={joint} frame={frame} />}
      <CurveNames {...{ curves, marked, frame }} />
      {!narrow && (
        <text className="halo s12 t2" x={frame.box.right - 6} y={frame.box.bottom - 8} textAnchor="end">
          {BEYOND_THE_DATA}
        </text>
      )}
      <Axes frame={frame} {...ticks} name={AXES.cycles} />
    </>
  );
});
