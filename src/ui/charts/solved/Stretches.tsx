import { useId } from 'react';
import { clamp, type Frame, type Span } from '../frame.ts';

interface StretchesProps {
  readonly frame: Frame;
  /** From and to on the axis across. */
  readonly spans: readonly Span[];
}

/** Stretches of the axis across that are hatched: where it touches, or does not come back. */
export function Stretches({ frame: { box, x }, spans }: StretchesProps) {
  const id = useId();
  const edges: Span = [box.left, box.right];
  return (
    <g className="chart-hatch">
      <pattern id={id} width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(-45)">
        <path d="M0 0V7" />
      </pattern>
      {spans.map(([from, to]) => {
        const [left, right] = [clamp(x(from), edges), clamp(x(to), edges)];
        return (
          <g key={from}>
            <rect x={left} y={box.top} width={right - left} height={box.bottom - box.top} fill={`url(#${id})`} />
            {[left, right].map(
              (at) =>
                at > box.left + 0.5 &&
                at < box.right - 0.5 && <path key={at} className="chart-bound" d={`M${at} ${box.top}V${box.bottom}`} />,
            )}
          </g>
        );
      })}
    </g>
  );
}
