import type { Frame } from './frame.ts';
import type { Tick } from './ticks.ts';

interface TickMarks {
  readonly frame: Frame;
  readonly x: readonly Tick[];
  readonly y: readonly Tick[];
}

/** One line at each mark of both axes, under everything else. */
export function Grid({ frame: { box, x, y }, x: acrossMarks, y: upMarks }: TickMarks) {
  const upright = acrossMarks.map(({ at }) => `M${x(at)} ${box.top}V${box.bottom}`);
  const level = upMarks.map(({ at }) => `M${box.left} ${y(at)}H${box.right}`);
  return <path className="chart-grid" d={[...upright, ...level].join('')} />;
}

const TICK = 5;

/** Two open axes with marks inward and figures outside; the axis across is named at its end. */
export function Axes({ frame: { box, x, y }, x: acrossMarks, y: upMarks, name }: TickMarks & { name: string }) {
  const marks = [
    `M${box.left} ${box.top}V${box.bottom}H${box.right}`,
    ...acrossMarks.map(({ at }) => `M${x(at)} ${box.bottom}v${-TICK}`),
    ...upMarks.map(({ at }) => `M${box.left} ${y(at)}h${TICK}`),
  ];
  return (
    <g className="chart-axes">
      <path d={marks.join('')} />
      {acrossMarks.map(({ at, text }) => (
        <text key={at} x={x(at)} y={box.bottom + 15} textAnchor="middle">
          {text}
        </text>
      ))}
      {upMarks.map(({ at, text }) => (
        <text key={at} x={box.left - 6} y={y(at) + 4} textAnchor="end">
          {text}
        </text>
      ))}
      <text className="t2" x={box.right} y={box.bottom + 32} textAnchor="end">
        {name}
      </text>
    </g>
  );
}
