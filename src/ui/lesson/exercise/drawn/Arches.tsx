import { ARCH_SCALE } from '../../../../core/lesson/exercises/archSpringsBack.ts';
import { LEAF_LETTERS } from '../../../../core/lesson/exercises/threeLengths.ts';
import { Paper } from './Paper.tsx';

interface Props {
  readonly span: number;
  readonly rises: readonly number[];
  readonly label: string;
}

const LETTER = 8;
const WALL = 5;
const OVER = 3;
const UNDER = 4;
/** Of a cosine arch; so many that no chord lies off it by more than a line is wide. */
const STEPS = 72;

/** An arch as printed over the straight line between its walls, twice as large: y = h/2·(1 − cos 2πx/L). */
function archPath(span: number, rise: number, foot: number): string {
  const points = Array.from({ length: STEPS + 1 }, (_, at) => {
    const y = foot - (rise / 2) * (1 - Math.cos((2 * Math.PI * at) / STEPS));
    return `${((span * at) / STEPS).toFixed(4)} ${y.toFixed(4)}`;
  });
  return `M${points.join('L')}`;
}

/** Arches between their walls under each other; under the last there is room to draw its second place. */
export function Arches({ span, rises, label }: Props) {
  const wide = span * ARCH_SCALE;
  const tall = rises.map((rise, at) => {
    const high = rise * ARCH_SCALE;
    return { high, room: at === rises.length - 1 ? 2 * high + UNDER : high + UNDER };
  });
  const tops = tall.map((_, at) => tall.slice(0, at).reduce((sum, { room }) => sum + room + OVER, 0));
  const all = tall.reduce((sum, { room }) => sum + room + OVER, 0);
  return (
    <Paper wide={LETTER + 2 * WALL + wide + 1} high={all} label={label}>
      {tall.map(({ high, room }, at) => {
        const foot = OVER + high;
        const letter = LEAF_LETTERS[at] ?? '';
        return (
          <g key={letter} transform={`translate(${LETTER + WALL} ${tops[at] ?? 0})`}>
            <text className="letter" x={-LETTER - WALL} y={foot}>
              {letter}
            </text>
            <path className="thin" d={`M0 ${foot}h${wide}`} />
            <path
              className="solid"
              d={`M0 ${OVER - 2}v${room}h${-WALL}v${-room}ZM${wide} ${OVER - 2}v${room}h${WALL}v${-room}Z`}
            />
            <path className="edge" d={archPath(wide, high, foot)} />
          </g>
        );
      })}
    </Paper>
  );
}
