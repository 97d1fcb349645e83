import { useMemo } from 'react';
import { BentOutline } from './BentOutline.tsx';
import type { Layout } from './layout.ts';
import { sweptBox } from './motion.ts';
import { runsPath } from './paths.ts';
import type { Sheet } from './sheet.ts';

/** The same joint at 1 : 1, at rest in ink and as bent in pencil. */
export function LifeSize({ layout, fraction }: { readonly layout: Layout; readonly fraction: number }) {
  const { figure, sheet, placed, lifeSize } = layout;
  const life = useMemo((): Sheet => ({ ...sheet, scale: 1, pxPerMm: sheet.pxPerMm / sheet.scale, rootX: 0 }), [sheet]);
  const swept = useMemo(() => sweptBox(figure, 'oneWay'), [figure]);
  const rest = useMemo(() => runsPath(life, [figure.points], true), [life, figure]);
  if (!placed.lifeSize || !lifeSize) return null;
  const x = placed.lifeSize.x - swept.left * life.pxPerMm;
  const y = placed.lifeSize.y + swept.top * life.pxPerMm;
  return (
    <g>
      <g transform={`translate(${x.toFixed(1)} ${y.toFixed(1)})`}>
        <path className="I" d={rest} />
        <BentOutline figure={figure} sheet={life} fraction={fraction} className="La life" />
      </g>
      <text className="s12 t2 halo" x={placed.lifeSize.x} y={placed.lifeSize.y + lifeSize.height - 3}>
        1 : 1, life size
      </text>
    </g>
  );
}
