import type { Box, Px } from './frame.ts';
import { MarkAtEdge } from './MarkAtEdge.tsx';

const RING = (
  <>
    <circle className="chart-ring" r="6.5" />
    <circle className="chart-dot" r="2" />
  </>
);

/** Where the joint stands with all its wear: the ring of its mark, without the cross that says where the curve is. */
export function WornMark({ at, box }: { readonly at: Px; readonly box: Box }) {
  return <MarkAtEdge at={at} box={box} mark={RING} />;
}
