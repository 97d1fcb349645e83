import { memo } from 'react';
import { angleMarks, centreLines } from './angleDimension.ts';
import { BentOutline } from './BentOutline.tsx';
import type { Layout } from './layout.ts';
import { MarksView } from './MarksView.tsx';
import { radiusMarks } from './radiusLeader.ts';
import { NO_MARKS, together } from './marks.ts';

/** The pencil: the moved outline, its angle and its radius. */
export const MovingLayer = memo(function MovingLayer({
  layout,
  fraction,
}: {
  readonly layout: Layout;
  readonly fraction: number;
}) {
  const { figure, sheet, angle, radius, unit } = layout;
  const turned = angleMarks(figure, sheet, angle, fraction);
  const bend = radius ? radiusMarks(figure, sheet, radius, fraction, unit) : NO_MARKS;
  return (
    <g>
      {figure.otherEnd !== 0 && (
        <BentOutline figure={figure} sheet={sheet} fraction={figure.otherEnd} className="La ghost" />
      )}
      <BentOutline figure={figure} sheet={sheet} fraction={fraction} className="Wa" />
      <path className="Ca" d={centreLines(figure, sheet, angle, fraction)} />
      <MarksView marks={together(turned, bend)} />
    </g>
  );
});
