import type { ReactNode } from 'react';
import type { Box, Px } from './frame.ts';
import { offChart } from './spots.ts';

interface Props {
  readonly at: Px;
  readonly box: Box;
  /** The mark, drawn about 0, 0. */
  readonly mark: ReactNode;
  /** Drawn in any case. */
  readonly children?: ReactNode;
}

/** A mark of the joint, or an arrowhead at the edge of the paper that it left by. */
export function MarkAtEdge({ at, box, mark, children }: Props) {
  const off = offChart(at, box);
  const { x, y } = off?.at ?? at;
  return (
    <g className="chart-joint" transform={`translate(${x} ${y})`}>
      {off ? <path className="chart-head" transform={`rotate(${off.turnDeg})`} d="M7 0L-5 -6V6Z" /> : mark}
      {children}
    </g>
  );
}
