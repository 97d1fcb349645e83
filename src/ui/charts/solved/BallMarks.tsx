import type { Px } from '../frame.ts';
import type { WayMark } from './marks.ts';

/** What the figures draw a ball for: a full one in a cup rests, an open one on a hump is only balanced. */
export function BallMarks({ marks }: { readonly marks: readonly (Px & Pick<WayMark, 'kind'>)[] }) {
  return (
    <g className="chart-balls">
      {marks.map(({ kind, x, y }, i) => (
        // Marks come anew with each answer and are known by their order on the way.
        <g key={i} transform={`translate(${x} ${y})`}>
          {kind === 'rests' && (
            <>
              <path d="M-7 0A7 7 0 0 0 7 0" />
              <circle className="full" r="4" />
            </>
          )}
          {kind === 'balanced' && (
            <>
              <path d="M-8 10Q-5 4.6 0 4.6T8 10" />
              <circle className="open" r="4" />
            </>
          )}
          {(kind === 'snaps' || kind === 'returns' || kind === 'eases') && <circle className="full" r="2.6" />}
        </g>
      ))}
    </g>
  );
}
