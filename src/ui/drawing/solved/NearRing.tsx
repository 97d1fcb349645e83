import { nearText } from '../../text/solvedDrawingText.ts';
import { onSheet, through } from '../sheet.ts';
import { keptApart } from './nearest.ts';
import type { SolvedLayout } from './solvedLayout.ts';
import type { StateNow } from './state.ts';

const RADIUS = 13;

/** A ring round the place where two parts come nearer than they should, with how near and how near they may. */
export function NearRing({ layout, state }: { readonly layout: SolvedLayout; readonly state: StateNow }) {
  const { scene, sheet, placed, unit } = layout;
  const { gap } = state;
  const corner = placed.near;
  const words = gap && nearText(gap.gap, keptApart(scene), unit);
  if (!words || !corner) return null;
  const at = onSheet(sheet, { x: (gap.a.at.x + gap.b.at.x) / 2, y: (gap.a.at.y + gap.b.at.y) / 2 });
  const from = { x: at.x >= corner.x + 65 ? corner.x + 126 : corner.x, y: corner.y + 8 };
  const far = Math.hypot(at.x - from.x, at.y - from.y);
  const edge = { x: at.x + ((from.x - at.x) * RADIUS) / far, y: at.y + ((from.y - at.y) * RADIUS) / far };
  const tone = gap.gap <= 0 ? 'fail' : 'caution';
  return (
    <g className={`near ${tone}`}>
      <circle cx={at.x} cy={at.y} r={RADIUS} />
      <path d={through([from, edge])} />
      <text className="halo" x={corner.x + 122} y={corner.y + 12} textAnchor="end">
        {words[0]}
      </text>
      <text className="s12 t2 halo" x={corner.x + 122} y={corner.y + 28} textAnchor="end">
        {words[1]}
      </text>
    </g>
  );
}
