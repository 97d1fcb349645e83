import { offChart } from './spots.ts';
import type { Box, Px } from './frame.ts';

interface JointMarkProps {
  readonly at: Px;
  readonly box: Box;
  /** Whether it can be dragged. */
  readonly grip?: boolean;
}

/** The class of what can be taken hold of: larger than the mark, larger still for a finger. */
export const GRIP = 'chart-grip';

/** Where the joint stands, the same in every figure: ring, cross and dot, or an arrowhead at the edge it left by. */
export function JointMark({ at, box, grip = false }: JointMarkProps) {
  const off = offChart(at, box);
  const { x, y } = off?.at ?? at;
  return (
    <g className="chart-joint" transform={`translate(${x} ${y})`}>
      {off ? (
        <path className="chart-head" transform={`rotate(${off.turnDeg})`} d="M7 0L-5 -6V6Z" />
      ) : (
        <>
          <circle className="chart-ring" r="8.5" />
          <path d="M-13 0H13M0 -13V13" />
          <circle className="chart-dot" r="3" />
        </>
      )}
      {grip && <circle className={GRIP} />}
    </g>
  );
}
