import { useMemo, useState } from 'react';
import type { Assessment } from '../../core/design/assessment.ts';
import type { HoldAnswer } from '../../core/design/hold.ts';
import '../charts/charts.css';
import { Crosshair } from '../charts/Crosshair.tsx';
import { clamp, frameOf, type Px, type Span } from '../charts/frame.ts';
import { PointTable } from '../charts/PointTable.tsx';
import { movedTo, moveOf, snapped } from '../charts/stops.ts';
import { Surface } from '../charts/Surface.tsx';
import { useSize } from '../charts/useSize.ts';
import { HELD_AID, HELD_HEADS, HELD_HOW, HELD_PLOT, HELD_TABLE, pushReading } from '../text/heldText.ts';
import { share, type LengthUnit } from '../text/numbers.ts';
import { leftText } from '../text/setText.ts';
import { spanText } from '../text/spanText.ts';
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
  const [at, setAt] = useState<number>();
  const stops = held.hours > A_YEAR ? LONG_STOPS : STOPS;
  const span = useMemo<Span>(() => [Math.log10(stops[0] ?? 1), Math.log10(stops.at(-1) ?? 1)], [stops]);
  const frame = useMemo(
    () => size && frameOf(size, { span, kind: 'linear' }, { span: [0, 1], kind: 'linear' }, LAST_FIGURE),
    [size, span],
  );
  const now = clamp(at ?? Math.log10(held.hours), span);
  const read = heldFor(10 ** now);
  const text = pushReading(read, a, unit);
  const point = ({ x }: Px) => frame && setAt(snapped(frame.x.invert(x), FINE, span));
  const key = (pressed: string, shift: boolean): boolean => {
    const move = moveOf(pressed, shift);
    if (pressed === 'Escape') setAt(undefined);
    else if (move !== undefined) setAt(movedTo(stops.map(Math.log10), now, move));
    return pressed === 'Escape' || move !== undefined;
  };
  return (
    <div className="chart">
      <p className={`held-reading${at === undefined ? '' : ' read'}`}>{at === undefined ? HELD_AID : text}</p>
      <Surface
        svg={svg}
        size={size}
        spoken={{ label: HELD_PLOT, how: HELD_HOW, min: span[0], max: span[1], now, text }}
        onPoint={point}
        onLeave={() => setAt(undefined)}
        onRelease={() => undefined}
        onKey={key}
      >
        {frame && size && (
          <>
            <HeldCurves {...{ a, hold, frame, stops }} width={size.width} />
            {at !== undefined && <Crosshair at={{ x: frame.x(now), y: frame.y(read.left.typical) }} box={frame.box} />}
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
