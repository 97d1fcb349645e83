import type { Point } from '../../../core/geometry/outline.ts';
import { isTouching } from '../../../core/geometry/touching.ts';
import type { Mm } from '../../../core/units.ts';
import { nearText } from '../../text/solvedDrawingText.ts';
import { letteringWidth } from '../lettering.ts';
import { through } from '../sheet.ts';
import { keptApart, nearMarks } from './nearest.ts';
import type { SolvedLayout } from './solvedLayout.ts';
import type { StateNow } from './state.ts';

const RADIUS = 13;
/** Words end so far from their corner, their lines are so far apart, and a leader keeps so far off them [px]. */
const RIGHT = 122;
const LINE = 14;
const OFF = 4;

/** A ring round each place where two parts come nearer than they should, with how near and how near they may. */
export function NearRing({ layout, state }: { readonly layout: SolvedLayout; readonly state: StateNow }) {
  const { scene, sheet, placed, unit } = layout;
  const corner = placed.near;
  const marks = nearMarks(scene, sheet, state);
  const [least] = marks;
  if (!least || !corner) return null;
  const { gap } = least;
  const words = nearText(gap, keptApart(scene), marks.length, unit);
  const [first = ''] = words;
  // Of places as near as the least the one beside the words is pointed at.
  const alike = marks.filter((mark) => nearText(mark.gap, keptApart(scene), marks.length, unit)[0] === first);
  const lead = shortest(alike.map(({ at }) => ({ at, from: besideWords(corner, words, at) })));
  return (
    <g className={`near ${toneOf(gap)}`}>
      {lead && <path d={through([lead.from, toRing(lead)])} />}
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
          x={corner.x + RIGHT}
          y={corner.y + 12 + (i === 0 ? 0 : 2 + LINE * i)}
          textAnchor="end"
        >
          {text}
        </text>
      ))}
    </g>
  );
}

const toneOf = (gap: Mm) => (isTouching(gap) ? 'fail' : 'caution');

/** A leader from the words to the middle of a ring [px]. */
interface Lead {
  readonly from: Point;
  readonly at: Point;
}

const lengthOf = ({ from, at }: Lead) => Math.hypot(at.x - from.x, at.y - from.y);

function shortest(leads: readonly Lead[]): Lead | undefined {
  return leads.toSorted((p, q) => lengthOf(p) - lengthOf(q))[0];
}

/** The place beside the words that is nearest to another, so that no leader crosses them. */
function besideWords(corner: Point, words: readonly string[], to: Point): Point {
  const wide = Math.max(...words.map((text, i) => letteringWidth(text, i === 0 ? 13 : 12)));
  const [left, right] = [corner.x + RIGHT - wide - OFF, corner.x + RIGHT + OFF];
  const [top, bottom] = [corner.y - OFF, corner.y + 4 + LINE * words.length + OFF];
  return { x: Math.min(right, Math.max(left, to.x)), y: Math.min(bottom, Math.max(top, to.y)) };
}

/** Where a leader meets its ring. */
function toRing(lead: Lead): Point {
  const { from, at } = lead;
  const share = RADIUS / lengthOf(lead);
  return { x: at.x + (from.x - at.x) * share, y: at.y + (from.y - at.y) * share };
}
