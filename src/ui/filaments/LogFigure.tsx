import '../charts/charts.css';
import { useMemo, type ReactNode } from 'react';
import { Caption } from '../charts/Caption.tsx';
import { clamp, frameOf, isNarrow, type Frame, type Px, type Span } from '../charts/frame.ts';
import { Surface } from '../charts/Surface.tsx';
import { useReading } from '../charts/useReading.ts';
import { useSize } from '../charts/useSize.ts';

interface Props {
  readonly number: number;
  readonly name: string;
  readonly aid: string;
  readonly how: string;
  /** Across, in ratios; up, in ratios or evenly. */
  readonly x: Span;
  readonly y: Span;
  readonly up: 'log' | 'linear';
  /** Room for names at the ends of curves [px]. */
  readonly right: (width: number) => number;
  /** Where keys stop. */
  readonly stops: readonly number[];
  readonly start: number;
  /** The nearest value that can be said. */
  readonly snap: (at: number) => number;
  /** What is read at a place across, and the heights that it is read at. */
  readonly read: (at: number) => { readonly text: string; readonly heights: readonly number[] };
  readonly renderPlot: (frame: Frame, narrow: boolean) => ReactNode;
  readonly children: ReactNode;
}

/** A figure with a log axis across and one reading along it, by pointer or keys. */
export function LogFigure({ number, name, aid, how, x, y, up, right, stops, start, snap, read, ...rest }: Props) {
  const [svg, size] = useSize<SVGSVGElement>();
  const [[left, most], [low, high]] = [x, y];
  const room = size ? right(size.width) : 0;
  const frame = useMemo(
    () => size && frameOf(size, { span: [left, most], kind: 'log' }, { span: [low, high], kind: up }, room),
    [size, left, most, low, high, up, room],
  );
  const reading = useReading(x, start, () => stops);
  const { now } = reading;
  const { text, heights } = read(now);
  const point = ({ x: place }: Px) => {
    if (frame) reading.read(clamp(snap(frame.x.invert(clamp(place, [frame.box.left, frame.box.right]))), x));
  };
  return (
    <figure className="chart">
      <Caption number={number} name={name} aid={aid} reading={reading.active ? text : undefined} />
      <Surface
        svg={svg}
        size={size}
        spoken={{ label: name, how, min: x[0], max: x[1], now, text }}
        onPoint={point}
        onLeave={reading.leave}
        onRelease={() => undefined}
        onKey={reading.key}
      >
        {frame && (
          <>
            {rest.renderPlot(frame, isNarrow(size))}
            {reading.active && <Readings at={now} heights={heights} frame={frame} />}
          </>
        )}
      </Surface>
      {rest.children}
    </figure>
  );
}

/** A thin line where it is read, and a dot on every curve that is. */
function Readings({ at, heights, frame: { box, x, y } }: { at: number; heights: readonly number[]; frame: Frame }) {
  const seen = heights.filter((height) => y(height) >= box.top && y(height) <= box.bottom);
  return (
    <g className="chart-cross">
      <path d={`M${x(at)} ${box.top}V${box.bottom}`} />
      {seen.map((height) => (
        <circle key={height} cx={x(at)} cy={y(height)} r="3.2" />
      ))}
    </g>
  );
}
