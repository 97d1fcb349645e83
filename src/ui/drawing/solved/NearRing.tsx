import { nearText } from '../../text/solvedDrawingText.ts';
import { through } from '../sheet.ts';
import { keptApart, nearMarks } from './nearest.ts';
import type { SolvedLayout } from './solvedLayout.ts';
import type { StateNow } from './state.ts';

const RADIUS = 13;

/** A ring round each place where two parts come nearer than they should, with how near and how near they may. */
export function NearRing({ layout, state }: { readonly layout: SolvedLayout; readonly state: StateNow }) {
  const { scene, sheet, placed, unit } = layout;
  const corner = placed.near;
  const marks = nearMarks(scene, sheet, state);
  const [least] = marks;
  if (!least || !corner) return null;
  const { gap, at } = least;
  const words = nearText(gap, keptApart(scene), marks.length, unit);
  const from = { x: at.x >= corner.x + 65 ? corner.x + 126 : corner.x, y: corner.y + 8 };
  const far = Math.hypot(at.x - from.x, at.y - from.y);
  const edge = { x: at.x + ((from.x - at.x) * RADIUS) / far, y: at.y + ((from.y - at.y) * RADIUS) / far };
  return (
    <g className={`near ${toneOf(gap)}`}>
      <path d={through([from, edge])} />
      {marks.map((mark) => (
        <circle
          key={`${mark.at.x} ${mark.at.y}`}
          className={toneOf(mark.gap)}
          cx={mark.at.x}
          cy={mark.at.y}
          r={RADIUS}
        />
      ))}
      {words.map((text, i) => (
        <text
          key={text}
          className={i === 0 ? 'halo' : 's12 t2 halo'}
          x={corner.x + 122}
          y={corner.y + 12 + (i === 0 ? 0 : 2 + 14 * i)}
          textAnchor="end"
        >
          {text}
        </text>
      ))}
    </g>
  );
}

const toneOf = (gap: number) => (gap <= 0 ? 'fail' : 'caution');
