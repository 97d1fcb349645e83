import type { Box } from './frame.ts';

/** What keeps curves on the paper of a figure. */
export function PlotClip({ id, box: { left, right, top, bottom } }: { readonly id: string; readonly box: Box }) {
  return (
    <clipPath id={id}>
      <rect x={left} y={top} width={right - left} height={bottom - top} />
    </clipPath>
  );
}
