import { scaleLinear } from 'd3';
import { useSize } from '../../charts/useSize.ts';
import type { LengthUnit } from '../../text/numbers.ts';
import { setLength, unitAfter } from '../../text/numbers.ts';
import { LADDER, ladderSpoken, offText } from '../../text/testsLearnedText.ts';
import type { TaughtThickness } from './figures.ts';

interface Props {
  readonly told: TaughtThickness;
  readonly unit: LengthUnit;
}

const HEIGHT = 132;
const BOX = { left: 52, right: 14, top: 12, bottom: 30 } as const;
/** Half the height of the paper at least [mm]. */
const LEAST = 0.04;
/** Nine in ten lie within so many standard deviations. */
const NINE_IN_TEN = 1.645;

/** How much thicker than set each rung is, and the line through them with what is likely of the next. */
export function LadderPlot({ told: { countOf, line, rungs, odd }, unit }: Props) {
  const [svg, size] = useSize<SVGSVGElement>();
  const width = size?.width ?? 320;
  const most = Math.max(...rungs.map(({ set }) => set)) * 1.12;
  const off = (set: number) => line.offset + (line.factor - 1) * set;
  const spread = NINE_IN_TEN * line.sigma;
  const ends = [0, most].flatMap((set) => [off(set) - spread, off(set) + spread]);
  const far = 1.15 * Math.max(LEAST, ...[...ends, ...rungs.map(({ set, measured }) => measured - set)].map(Math.abs));
  const x = scaleLinear([0, most], [BOX.left, width - BOX.right]);
  const y = scaleLinear([-far, far], [HEIGHT - BOX.bottom, BOX.top]);
  const along = (by: number) => `${x(0)} ${y(off(0) + by)}L${x(most)} ${y(off(most) + by)}`;
  const band = `M${along(spread)}L${x(most)} ${y(off(most) - spread)}L${x(0)} ${y(off(0) - spread)}Z`;
  const steps = y.ticks(4);
  const sets = [...new Set(rungs.map(({ set }) => set))].toSorted((a, b) => a - b);
  return (
    <svg
      ref={svg}
      className="ladder-plot"
      role="img"
      aria-label={ladderSpoken(rungs.length, countOf)}
      width="100%"
      height={HEIGHT}
    >
      <path className="after-band" d={band} />
      {steps.map((step) => (
        <g key={step}>
          <path className={step === 0 ? 'ladder-even' : 'G'} d={`M${x(0)} ${y(step)}H${x(most)}`} />
          <text className="ladder-figure end" x={x(0) - 6} y={y(step) + 4}>
            {offText(step, unit)}
          </text>
        </g>
      ))}
      <path className="I-line" d={`M${x(0)} ${BOX.top}V${y(-far)}H${x(most)}`} />
      <path className="chart-median" d={`M${along(0)}`} />
      {rungs.map(({ id, set, measured }) => (
        <g key={id}>
          <circle className="ladder-rung" cx={x(set)} cy={y(measured - set)} r="3.4" />
          {odd.includes(id) && <circle className="odd-ring" cx={x(set)} cy={y(measured - set)} r="7.5" />}
        </g>
      ))}
      {sets.map((set, at) =>
        at > 0 && x(set) - x(sets[at - 1] ?? 0) < 30 ? null : (
          <text key={set} className="ladder-figure middle" x={x(set)} y={HEIGHT - BOX.bottom + 15}>
            {setLength(set, unit)}
          </text>
        ),
      )}
      <text className="ladder-figure end" x={x(most)} y={HEIGHT - 2}>
        {LADDER.x(unit)}
      </text>
      <text className="ladder-figure" x={x(0) + 6} y={BOX.top}>
        {unitAfter(unit).trim()}
      </text>
    </svg>
  );
}
