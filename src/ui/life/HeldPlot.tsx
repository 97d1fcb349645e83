import { useMemo } from 'react';
import type { Assessment } from '../../core/design/assessment.ts';
import type { HoldAnswer } from '../../core/design/hold.ts';
import '../charts/charts.css';
import { Crosshair } from '../charts/Crosshair.tsx';
import { frameOf, type Px, type Span } from '../charts/frame.ts';
import { PointTable } from '../charts/PointTable.tsx';
import { snapped } from '../charts/stops.ts';
import { Surface } from '../charts/Surface.tsx';
import { useReading } from '../charts/useReading.ts';
import { useSize } from '../charts/useSize.ts';
import { HELD_AID, HELD_HEADS, HELD_HOW, HELD_PLOT, HELD_TABLE, pushReading } from '../text/heldText.ts';
import { share, type LengthUnit } from '../text/numbers.ts';
import { leftText } from '../text/setText.ts';
import { spanText } from '../text/countText.ts';
import { HeldCurves } from './HeldCurves.tsx';

interface HeldPlotProps {
  readonly a: Assessment;
  readonly hold: HoldAnswer;
  readonly unit: LengthUnit;
}

const A_YEAR = 8760;
/** What is marked on the axis of time, and what keys step to [h]. */
const STOPS: readonly number[] = [1 / 60, 1 / 6, 1, 6, 24, 168, 720, A_YEAR];
/** For what is held longer than a year. */
const LONG_STOPS: readonly number[] = [...STOPS, 10 * A_YEAR];
/** To this a pointer reads, in decades. */
const FINE = 0.02;
/** Room right of the paper for half of “1 year” [px]. */
const LAST_FIGURE = 24;

/** Push left and what stays bent, against time held on a logarithmic axis, with a reading cursor. */
export function HeldPlot({ a, hold, unit }: HeldPlotProps) {
  const { held, at: heldFor } = hold;
  const [svg, size] = useSize<SVGSVGElement>();
  const stops = held.hours > A_YEAR ? LONG_STOPS : STOPS;
  const span = useMemo<Span>(() => [Math.log10(stops[0] ?? 1), Math.log10(stops.at(-1) ?? 1)], [stops]);
  const frame = useMemo(
    () => size && frameOf(size, { span, kind: 'linear' }, { span: [0, 1], kind: 'linear' }, LAST_FIGURE),
    [size, span],
  );
  const reading = useReading(span, Math.log10(held.hours), () => stops.map(Math.log10));
  const { now, active } = reading;
  const read = heldFor(10 ** now);
  const text = pushReading(read, a, unit);
  const point = ({ x }: Px) => frame && reading.read(snapped(frame.x.invert(x), FINE, span));
  return (
    <div className="chart">
      <p className={`held-reading${active ? ' read' : ''}`}>{active ? text : HELD_AID}</p>
      <Surface
        svg={svg}
        size={size}
        spoken={{ label: HELD_PLOT, how: HELD_HOW, min: span[0], max: span[1], now, text }}
        onPoint={point}
        onLeave={reading.leave}
        onRelease={() => undefined}
        onKey={reading.key}
      >
        {frame && size && (
          <>
            <HeldCurves {...{ a, hold, frame, stops }} width={size.width} />
            {active && <Crosshair at={{ x: frame.x(now), y: frame.y(read.left.typical) }} box={frame.box} />}
          </>
        )}
      </Surface>
      <PointTable
        caption={HELD_TABLE}
        heads={HELD_HEADS}
        rows={stops.map((stop) => {
          const { left, stays } = heldFor(stop);
          const bent = leftText(stays.typical, a.drive, unit);
          return [spanText(stop), share(left.typical), share(left.low), share(left.high), bent];
        })}
      />
    </div>
  );
}
