import { useMemo, type ReactNode } from 'react';
import { Caption } from './Caption.tsx';
import { Crosshair } from './Crosshair.tsx';
import { frameOf, isNarrow, type Frame, type Px, type Span } from './frame.ts';
import { evenStops, snapped } from './stops.ts';
import { Surface } from './Surface.tsx';
import { useReading } from './useReading.ts';
import { useSize } from './useSize.ts';

interface AxisFigureProps {
  readonly number: number;
  readonly name: string;
  readonly aid: string;
  readonly how: string;
  /** What can be read across. */
  readonly x: Span;
  /** What the paper shows across, where that is more. */
  readonly paper?: Span;
  readonly y: Span;
  /** What keys and what a pointer read to, on the axis across. */
  readonly grid: { readonly step: number; readonly fine: number };
  /** Where the reading begins. */
  readonly start: number;
  readonly read: (at: number) => { readonly text: string; readonly height?: number };
  readonly renderPlot: (frame: Frame, narrow: boolean) => ReactNode;
  /** Note and table under the paper. */
  readonly children: ReactNode;
}

/** A figure with one reading along its axis across. */
export function AxisFigure({
  number,
  name,
  aid,
  how,
  x,
  paper = x,
  y,
  grid,
  start,
  read,
  renderPlot,
  children,
}: AxisFigureProps) {
  const [svg, size] = useSize<SVGSVGElement>();
  const [[left, right], [low, high]] = [paper, y];
  const frame = useMemo(
    () => size && frameOf(size, { span: [left, right], kind: 'linear' }, { span: [low, high], kind: 'linear' }),
    [size, left, right, low, high],
  );
  const reading = useReading(x, start, () => stopsIn(x, grid.step));
  const { now } = reading;
  const { text, height } = read(now);
  const point = ({ x: place }: Px) => {
    if (frame) reading.read(snapped(frame.x.invert(place), grid.fine, x));
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
            {renderPlot(frame, isNarrow(size))}
            {reading.active && <Crosshair at={{ x: frame.x(now), y: frame.y(height ?? Number.NaN) }} box={frame.box} />}
          </>
        )}
      </Surface>
      {children}
    </figure>
  );
}

/** Round steps, and both ends of the way, which are seldom round. */
function stopsIn(span: Span, step: number): readonly number[] {
  return [...new Set([span[0], ...evenStops(span, step), span[1]])];
}
