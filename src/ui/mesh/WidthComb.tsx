import { useMemo } from 'react';
import { widthChart, type ChartRow, type WidthChart } from '../../core/inspect/scaleChart.ts';
import { useWidth } from '../drawing/useWidth.ts';
import { lengthFigure, type LengthUnit } from '../text/numbers.ts';
import { COMB, MESH_FIGURES } from '../text/meshFigureText.ts';
import { Mark } from '../app/Mark.tsx';
import { numbersText } from './numbersText.ts';
import { Balloon, balloonReach } from './Balloon.tsx';
import { isChosen, useChecked } from './checked.ts';
import { linear, type Linear } from './linear.ts';

const ROW = 44;
const TOP = 52;
const FOOT = 58;
/** Of more thicknesses than this only the first are drawn, with the one that is looked at. */
const MOST = 8;

interface CombPlan {
  readonly rows: readonly ChartRow[];
  readonly width: number;
  readonly bottom: number;
  readonly reach: number;
  readonly left: number;
  readonly right: number;
  readonly low: number;
  readonly high: number;
  readonly x: Linear;
}

function combPlan({ span, well, now }: WidthChart, rows: readonly ChartRow[], width: number): CombPlan {
  const reach = Math.max(...rows.map(({ numbers }) => balloonReach(numbersText(numbers))));
  const [left, right] = [2 * reach + 10, width - 14];
  const [low, high] = [Math.max(span.min, 0.6 * well.min), Math.max(1.4 * well.max, Math.min(span.max, now + 0.05))];
  return {
    rows,
    width,
    bottom: TOP + ROW * rows.length,
    reach,
    left,
    right,
    low,
    high,
    x: linear([low, high], [left, right]),
  };
}

/** One thickness: a tall bar for an even count, a pin for an odd one. */
function Teeth({ row, at, plan }: { readonly row: ChartRow; readonly at: number; readonly plan: CombPlan }) {
  const { left, right, low, high, reach, x } = plan;
  const checked = useChecked();
  const y = TOP + ROW * at + 26;
  return (
    <g>
      <path className="Lh" d={`M${left} ${y}H${right}`} />
      <Balloon x={reach} y={y} text={numbersText(row.numbers)} isOn={isChosen(row, checked)} />
      {row.marks
        .filter((mark) => mark.at >= low && mark.at <= high)
        .map(({ at: width, count, isEven }) => (
          <g key={count}>
            <path className={isEven ? 'tooth' : 'pin'} d={`M${x(width)} ${y - 13}V${y}`} />
            {!isEven && <circle className="odd-dot" cx={x(width)} cy={y - 15} r="2.6" />}
            <text className="s12 halo" x={x(width) + 6} y={y - 5}>
              {count}
            </text>
          </g>
        ))}
    </g>
  );
}

function Axis({ plan: { left, right, low, high, x, bottom } }: { readonly plan: CombPlan }) {
  const marks = Array.from({ length: 40 }, (_, i) => i * 0.05).filter((at) => at >= low && at <= high);
  return (
    <>
      <path className="L" d={`M${left} ${bottom}H${right}${marks.map((at) => `M${x(at)} ${bottom}v5`).join('')}`} />
      {marks
        .filter((at) => Math.round(at * 100) % 10 === 0)
        .map((at) => (
          <text key={at} className="s12" x={x(at)} y={bottom + 19} textAnchor="middle">
            {at.toFixed(1)}
          </text>
        ))}
      <text className="s12 t2" x={right} y={bottom + FOOT - 4} textAnchor="end">
        {COMB.axis}
      </text>
    </>
  );
}

/** Where all are whole at once, and the width that is set. */
function Widths({
  chart,
  plan,
  unit,
}: {
  readonly chart: WidthChart;
  readonly plan: CombPlan;
  readonly unit: LengthUnit;
}) {
  const { x, left, right, bottom } = plan;
  const { well, now } = chart;
  const places = chart.allWhole.filter(({ at }) => at >= well.min && at <= well.max);
  const [best] = places.toSorted((a, b) => Number(b.isEven) - Number(a.isEven));
  const clamp = (at: number, room: number) => Math.min(Math.max(at, left + room), right - room);
  return (
    <>
      <path className="all-whole" d={places.map(({ at }) => `M${x(at)} ${TOP - 20}V${bottom}`).join('')} />
      {best && (
        <text className="tb s12 halo" x={clamp(x(best.at), 34)} y={bottom + 36} textAnchor="middle">
          {COMB.all(lengthFigure(best.at, unit))}
        </text>
      )}
      <path className="now-line" d={`M${x(now)} ${TOP - 20}V${bottom}`} />
      <text className="ta s12 halo" x={clamp(x(now), 26)} y={TOP - 26} textAnchor="middle">
        {COMB.set(lengthFigure(now, unit))}
      </text>
    </>
  );
}

/** The same in words: which widths that the nozzle lays well make each thickness whole. */
function InWords({ chart: { rows, well }, unit }: { readonly chart: WidthChart; readonly unit: LengthUnit }) {
  return (
    <ul className="vh">
      {rows.map(({ numbers, marks }) => (
        <li key={numbers[0]}>
          {COMB.row(
            numbersText(numbers),
            marks
              .filter(({ at }) => at >= well.min && at <= well.max)
              .map(({ at, count }) => `${count} at ${lengthFigure(at, unit)}`),
          )}
        </li>
      ))}
    </ul>
  );
}

/** Fig. 5: at which line widths each thickness would be whole. */
export function WidthComb() {
  const checked = useChecked();
  const [ref, width] = useWidth<HTMLElement>();
  const { part, values, unit } = checked;
  const { as } = values;
  const { flexures } = part.findings;
  const chart = useMemo(() => widthChart(flexures, part.facts.box, as), [flexures, part, as]);
  const rows = chart.rows.filter((row, i) => i < MOST || isChosen(row, checked));
  if (rows.length === 0) return null;
  const plan = combPlan(chart, rows, width);
  const { x, bottom } = plan;
  const { well } = chart;
  const isSome = rows.length < chart.rows.length;
  return (
    <figure className="chart comb" ref={ref}>
      <figcaption className="cap">
        <span>
          <b>Fig. 5</b> {MESH_FIGURES.widths}
        </span>
        <span>
          {COMB.span(lengthFigure(as.profile.nozzle, unit, unit === 'mm' ? 1 : undefined))}
          <Mark kind="memory" about="printer" />
        </span>
      </figcaption>
      <InWords chart={chart} unit={unit} />
      {width > 0 && (
        <svg
          width={width}
          height={bottom + FOOT}
          viewBox={`0 0 ${width} ${bottom + FOOT}`}
          role="img"
          aria-label={MESH_FIGURES.widths}
        >
          <rect
            className="span"
            x={x(well.min)}
            y={TOP - 16}
            width={x(well.max) - x(well.min)}
            height={bottom - TOP + 16}
          />
          {rows.map((row, i) => (
            <Teeth key={row.numbers[0]} row={row} at={i} plan={plan} />
          ))}
          <Axis plan={plan} />
          <Widths chart={chart} plan={plan} unit={unit} />
        </svg>
      )}
      {isSome && <p className="small">{COMB.someShown(rows.length, chart.rows.length)}</p>}
    </figure>
  );
}
