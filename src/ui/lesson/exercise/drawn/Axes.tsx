import { Paper } from './Paper.tsx';

/** One axis of a blank frame, or of one with a curve. */
export interface Axis {
  readonly from: number;
  readonly to: number;
  readonly isLog?: boolean;
  /** Lines of the grid, and those of them that bear a figure. */
  readonly lines: readonly number[];
  readonly figures: readonly { readonly at: number; readonly text: string }[];
  readonly name: string;
}

interface Props {
  readonly x: Axis;
  readonly y: Axis;
  readonly wide: number;
  readonly high: number;
  readonly label: string;
  readonly curve?: readonly { readonly x: number; readonly y: number }[];
}

/** Kept free round the frame for figures and names [mm]. */
const ROOM = { left: 11, right: 8, top: 5, bottom: 8.5 } as const;

const placeOf = ({ from, to, isLog = false }: Axis, size: number) => {
  const scaled = isLog ? Math.log : (value: number) => value;
  return (value: number) => (size * (scaled(value) - scaled(from))) / (scaled(to) - scaled(from));
};

const f = (value: number) => value.toFixed(3);

/** Axes with a grid to draw on. */
export function Axes({ x, y, wide, high, label, curve }: Props) {
  const [w, h] = [wide - ROOM.left - ROOM.right, high - ROOM.top - ROOM.bottom];
  const [across, up] = [placeOf(x, w), placeOf(y, h)];
  const grid = [...x.lines.map((at) => `M${f(across(at))} 0V${h}`), ...y.lines.map((at) => `M0 ${f(h - up(at))}H${w}`)];
  const inside = curve?.filter((point) => point.x >= x.from && point.x <= x.to && point.y >= y.from && point.y <= y.to);
  return (
    <Paper wide={wide} high={high} left={-ROOM.left} top={-ROOM.top} label={label}>
      <path className="hair" d={grid.join('')} />
      <path className="wide" d={`M0 0V${h}H${w}`} />
      {x.figures.map(({ at, text }) => (
        <text key={text} x={across(at)} y={h + 3.6} textAnchor="middle">
          {text}
        </text>
      ))}
      {y.figures.map(({ at, text }) => (
        <text key={text} x={-1.2} y={h - up(at) + 1} textAnchor="end">
          {text}
        </text>
      ))}
      <text x={w} y={h + 7.4} textAnchor="end">
        {x.name}
      </text>
      <text x={-ROOM.left + 0.5} y={-2}>
        {y.name}
      </text>
      {inside && (
        <path
          className="curve"
          d={`M${inside.map((point) => `${f(across(point.x))} ${f(h - up(point.y))}`).join('L')}`}
        />
      )}
    </Paper>
  );
}
