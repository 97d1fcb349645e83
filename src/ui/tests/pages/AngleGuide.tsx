import type { Rad } from '../../../core/units.ts';
import { GRIP, type GuideStrip } from './rounds.ts';

/** Between a grip and its number [mm]. */
const BEYOND = 2.2;

/** What a guide takes up [mm], y down. */
export interface GuideFrame {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** Strips at rest and turned, and what is lettered past their ends. */
export function guideFrame(strips: readonly GuideStrip[], turn: Rad): GuideFrame {
  // Past a quarter turn an arc reaches higher than its end, past half a turn farther out.
  const points = strips.flatMap(({ root, free, radius, end, tip }) => [
    end,
    tip,
    { x: root.x, y: root.y - free - GRIP },
    { x: root.x + (turn > Math.PI ? 2 * radius : 0), y: root.y - (turn > Math.PI / 2 ? radius : 0) },
  ]);
  const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
  return {
    left: Math.min(...xs),
    top: Math.min(...ys) - 1,
    right: Math.max(...xs) + 2 * BEYOND,
    bottom: Math.max(...ys),
  };
}

interface Props {
  readonly strips: readonly GuideStrip[];
  readonly turn: Rad;
}

/** Strips turned along the arcs that they follow when they bend evenly, to be drawn at so many px to the millimetre. */
export function AngleGuide({ strips, turn }: Props) {
  return strips.map(({ number, root, free, radius, end, tip }) => (
    <g key={number}>
      <path className="hair" d={`M${root.x} ${root.y}v${-free - GRIP}`} strokeDasharray="1.6 1" />
      <path
        className="turned"
        d={`M${root.x} ${root.y}A${radius} ${radius} 0 ${turn > Math.PI ? 1 : 0} 1 ${end.x} ${end.y}L${tip.x} ${tip.y}`}
      />
      <text
        className="guide-number"
        x={tip.x + BEYOND * Math.sin(turn)}
        y={tip.y - BEYOND * Math.cos(turn) + 1.1}
        textAnchor="middle"
      >
        {number}
      </text>
    </g>
  ));
}
