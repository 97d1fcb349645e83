import { memo } from 'react';
import { lengthFigure } from '../../text/numbers.ts';
import { FROM_THE_SIDE, planesText } from '../../text/solvedDrawingText.ts';
import { scaleText } from '../sheet.ts';
import type { SolvedLayout } from './solvedLayout.ts';

/** A width has its figure where it is at least so wide [px]. */
const ROOM = 34;

/** A joint in several planes seen from the side: pads hatched, what flexes between them, and what is left open. */
export const PlanesView = memo(function PlanesView({
  layout,
  id,
}: {
  readonly layout: SolvedLayout;
  readonly id: string;
}) {
  const { planes, placed, sheet, unit } = layout;
  const corner = placed.planes;
  if (!planes || !corner) return null;
  const s = (planes.scale * sheet.pxPerMm) / sheet.scale;
  const left = corner.x + 10;
  const top = corner.y + 20;
  const y = (height: number) => top + (planes.top - height) * s;
  const starts = planes.widths.map(
    (_, i) => left + s * (planes.widths.slice(0, i).reduce((sum, w) => sum + w, 0) + i * planes.between),
  );
  const { pads, widths, total } = planes;
  const inner = { from: Math.min(...pads.map(({ to }) => to)), to: Math.max(...pads.map(({ from }) => from)) };
  return (
    <g>
      {widths.map((width, i) => (
        <g key={starts[i]}>
          <rect
            className="bead-ends"
            x={starts[i]}
            y={y(inner.to)}
            width={width * s}
            height={(inner.to - inner.from) * s}
          />
          <path className="L" d={`M${starts[i]} ${top - 4}v-8M${(starts[i] ?? 0) + width * s} ${top - 4}v-8`} />
          {width * s > ROOM && (
            <text className="s12 halo" x={(starts[i] ?? 0) + (width * s) / 2} y={top - 5} textAnchor="middle">
              {lengthFigure(width, unit)}
            </text>
          )}
        </g>
      ))}
      {pads.map(({ from, to }) => (
        <g key={from}>
          <rect x={left} y={y(to)} width={total * s} height={(to - from) * s} fill={`url(#${id}-fill)`} />
          <rect className="W" x={left} y={y(to)} width={total * s} height={(to - from) * s} />
        </g>
      ))}
      <text className="s12 halo" x={corner.x} y={y(planes.bottom) + 16}>
        {FROM_THE_SIDE}, {scaleText(planes.scale)}
      </text>
      {planesText(widths, planes.between, unit).map((words, i) => (
        <text key={words} className="s12 t2 halo" x={corner.x} y={y(planes.bottom) + 30 + 14 * i}>
          {words}
        </text>
      ))}
    </g>
  );
});
