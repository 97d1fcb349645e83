import { memo } from 'react';
import type { LaidBead, LaidStroke } from './laidBeads.ts';

/** Beads narrower than this on the screen are one stroke of ink [px]. */
const FINEST = 2.2;
/** Wide enough to show an edge of full weight, and a ridge [px]. */
const WIDE = 10;
const RIDGED = 6;
const RIDGE = 0.36;

function strokesOf(strokes: readonly LaidStroke[], className: string, widthOf: (width: number) => number) {
  return strokes.map(({ d, width }) => {
    const drawn = widthOf(width);
    return drawn > 0 && <path key={d} className={className} d={d} style={{ strokeWidth: `${drawn.toFixed(2)}px` }} />;
  });
}

/** How much of a bead's width is its edges [px]. */
function edgeOf(width: number, isAcross: boolean): number {
  if (width < FINEST) return width;
  return isAcross && width > WIDE ? 1.8 : 1.3;
}

/** Each bead at its true width: an inked edge, the plastic, and its ridge where there is room to show it. */
export const LaidBeadsView = memo(function LaidBeadsView({ beads }: { readonly beads: readonly LaidBead[] }) {
  return beads.map(({ path, strokes, isAcross }) => (
    <g key={`${path} ${strokes[0]?.d}`} className={isAcross ? 'laid-bead' : 'laid-bead on-pad'}>
      {strokesOf(strokes, 'edge', (width) => width)}
      {strokesOf(strokes, 'body', (width) => width - edgeOf(width, isAcross))}
      {isAcross && strokesOf(strokes, 'ridge', (width) => (width > RIDGED ? width * RIDGE : 0))}
    </g>
  ));
});
