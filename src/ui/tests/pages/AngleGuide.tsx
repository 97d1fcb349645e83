import type { Strip } from '../../../core/coupons/piece.ts';
import type { Lying } from '../../../core/print/profile.ts';
import type { Rad } from '../../../core/units.ts';
import { angle } from '../../text/numbers.ts';
import { PAGE } from '../../text/pieceStepsText.ts';
import { GRIP, guideStrips, type GuideStrip } from './rounds.ts';

/** As large as a guide may be on a page [mm]. */
const MOST = { x: 184, y: 110 } as const;
const SPINE = 6;

/** What it takes up [mm]: strips at rest and turned, and the spine under them. */
function frameOf(strips: readonly GuideStrip[], turn: Rad) {
  // Past a quarter turn an arc reaches higher, past half a turn farther out than its end.
  const points = strips.flatMap(({ root, free, radius, end, tip }) => [
    end,
    tip,
    { x: root.x, y: -free - GRIP },
    { x: root.x + (turn > Math.PI ? 2 * radius : 0), y: turn > Math.PI / 2 ? -radius : 0 },
  ]);
  const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
  const left = Math.min(...xs) - 8;
  const top = Math.min(...ys) - 4;
  return { left, top, width: Math.max(...xs) + 6 - left, height: Math.max(SPINE, ...ys) + 1 - top };
}

function Turned({ strip, turn }: { readonly strip: GuideStrip; readonly turn: Rad }) {
  const { number, root, free, radius, end, tip } = strip;
  const beyond = 2.4;
  return (
    <g>
      <path className="hair" d={`M${root.x} 0v${-free - GRIP}`} strokeDasharray="1.6 1" />
      <path className="thin" d={`M${root.x} 0A${radius} ${radius} 0 ${turn > Math.PI ? 1 : 0} 1 ${end.x} ${end.y}`} />
      <path className="wide" d={`M${end.x} ${end.y}L${tip.x} ${tip.y}`} />
      <text x={tip.x + beyond * Math.sin(turn)} y={tip.y - beyond * Math.cos(turn) + 1} textAnchor="middle">
        {number}
      </text>
    </g>
  );
}

interface Props {
  readonly strips: readonly Strip[];
  readonly lying: Lying;
  readonly turn: Rad;
}

/** The comb at rest and with its strips turned, life size: each on the arc that it follows when it bends evenly. */
export function AngleGuide({ strips, lying, turn }: Props) {
  const turned = guideStrips(strips, lying, turn);
  const { left, top, width, height } = frameOf(turned, turn);
  if (width > MOST.x || height > MOST.y) return null;
  const right = left + width;
  return (
    <figure className="angle-guide">
      <figcaption>
        <b>{PAGE.guide}</b> {PAGE.guideSays(angle(turn))}
      </figcaption>
      <svg
        width={`${width}mm`}
        height={`${height}mm`}
        viewBox={`${left} ${top} ${width} ${height}`}
        role="img"
        aria-label={PAGE.guideLabel(angle(turn))}
      >
        <path className="thin" d={`M${left + 1} 0H${right - 1}M${left + 1} ${SPINE}H${right - 1}`} />
        <text x={left + 2} y={SPINE / 2 + 1}>
          {PAGE.spine}
        </text>
        {turned.map((strip) => (
          <Turned key={strip.number} strip={strip} turn={turn} />
        ))}
      </svg>
    </figure>
  );
}
