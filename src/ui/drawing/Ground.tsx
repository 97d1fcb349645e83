import { memo, useMemo } from 'react';
import { gridOf } from './ground.ts';
import { FRAME, type Sheet } from './sheet.ts';

/** The millimetre grid and the frame that is its scale. */
export const Ground = memo(function Ground({ sheet }: { readonly sheet: Sheet }) {
  const grid = useMemo(() => gridOf(sheet), [sheet]);
  return (
    <g>
      <path className="G" d={grid.fine} />
      <path className="G5" d={grid.heavy} />
      <path className="I" d={grid.bars} />
      <path className="L" d={grid.frame} />
      {grid.figures.map(({ x, text }) => (
        <text key={text} className="t2 s12 halo" x={x} y={sheet.bottom - FRAME - 4}>
          {text}
        </text>
      ))}
    </g>
  );
});
