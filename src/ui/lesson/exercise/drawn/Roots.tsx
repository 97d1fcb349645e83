import { ENLARGED } from '../../../../core/lesson/exercises/question.ts';
import { Paper } from './Paper.tsx';

interface DrawnRoot {
  readonly letter: string;
  /** 0 for one that is drawn sharp [mm]. */
  readonly fillet: number;
}

/** Of each root [mm on paper]: pad at the left, leaf to the right, cut off at both. */
const PAD = 16;
const LEAF = 30;
const LETTER = 7;
const APART = 6;
const OVER = 5;
const BESIDE = 0.5;
const CROSS = 1.6;

interface Props {
  readonly roots: readonly DrawnRoot[];
  readonly thickness: number;
  readonly label: string;
}

/** Upper halves of roots over the middle line of their leaves, ten times as large. */
export function Roots({ roots, thickness, label }: Props) {
  const half = (thickness * ENLARGED) / 2;
  const most = Math.max(...roots.map(({ fillet }) => fillet * ENLARGED));
  const high = half + most + OVER;
  const each = LETTER + PAD + LEAF + APART;
  return (
    <Paper wide={roots.length * each + 2 * BESIDE} high={high + 3} left={-BESIDE} top={-BESIDE} label={label}>
      {roots.map(({ letter, fillet }, at) => {
        const radius = fillet * ENLARGED;
        const [surface, start] = [high - half, high - half - radius];
        const edge = `M${PAD} 0V${start}${radius > 0 ? `A${radius} ${radius} 0 0 0 ${PAD + radius} ${surface}` : ''}H${PAD + LEAF - 2}`;
        const cross = `M${PAD + radius - CROSS} ${start}h${2 * CROSS}M${PAD + radius} ${start - CROSS}v${2 * CROSS}`;
        return (
          <g key={letter} transform={`translate(${at * each} 0)`}>
            <text className="letter" x={0} y={high / 2}>
              {letter}
            </text>
            <g transform={`translate(${LETTER} 0)`}>
              <path className="pad-fill" d={`${edge}V${high}H0V0Z`} />
              <path className="edge" d={edge} />
              <path className="middle-line" d={`M-2 ${high}H${PAD + LEAF}`} />
              {radius > 0 && <path className="thin" d={cross} />}
            </g>
          </g>
        );
      })}
    </Paper>
  );
}
