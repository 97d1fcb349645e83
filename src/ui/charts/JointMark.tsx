import type { Box, Px } from './frame.ts';
import { MarkAtEdge } from './MarkAtEdge.tsx';

interface JointMarkProps {
  readonly at: Px;
  readonly box: Box;
  /** Whether it can be dragged. */
  readonly grip?: boolean;
}

/** The class of what can be taken hold of: larger than the mark, larger still for a finger. */
export const GRIP = 'chart-grip';

const CROSS = (
  <>
    <circle className="chart-ring" r="8.5" />
    <path d="M-13 0H13M0 -13V13" />
    <circle className="chart-dot" r="3" />
  </>
);

/** Where the joint stands, the same in every figure: ring, cross and dot, or an arrowhead at the edge it left by. */
export function JointMark({ at, box, grip = false }: JointMarkProps) {
  return (
    <MarkAtEdge at={at} box={box} mark={CROSS}>
      {grip && <circle className={GRIP} />}
    </MarkAtEdge>
  );
}
