import type { Box, Px } from './frame.ts';
import { offChart } from './spots.ts';

/** Where the joint stands with all its wear: the ring of its mark, without the cross that says where the curve is. */
export function WornMark({ at, box }: { readonly at: Px; readonly box: Box }) {
  const off = offChart(at, box);
  const { x, y } = off?.at ?? at;
  return (
    <g className="chart-joint" transform={`translate(${x} ${y})`}>
      {off ? (
        <path className="chart-head" transform={`rotate(${off.turnDeg})`} d="M7 0L-5 -6V6Z" />
      ) : (
        <>
          <circle className="chart-ring" r="6.5" />
          <circle className="chart-dot" r="2" />
        </>
      )}
    </g>
  );
}
