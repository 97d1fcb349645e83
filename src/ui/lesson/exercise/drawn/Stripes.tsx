import type { LinesAcross } from '../../../../core/lesson/exercises/grids.ts';
import { ENLARGED } from '../../../../core/lesson/exercises/question.ts';
import { Paper } from './Paper.tsx';

const WIDE = 60;
const LETTER = 7;
const APART = 14;
const BESIDE = 0.5;

/** Leaves cut through, ten times as large: a stripe for each line. */
export function Stripes({
  leaves,
  label,
}: {
  readonly leaves: readonly (LinesAcross & { readonly letter: string })[];
  readonly label: string;
}) {
  const high = Math.max(...leaves.map(({ thickness }) => thickness * ENLARGED));
  const wide = leaves.length * (LETTER + WIDE + APART) - APART;
  return (
    <Paper wide={wide + 2 * BESIDE} high={high + 2 * BESIDE} left={-BESIDE} top={-BESIDE} label={label}>
      {leaves.map(({ letter, lines, lineWidth, thickness }, at) => {
        const tall = thickness * ENLARGED;
        const between = Array.from({ length: lines - 1 }, (_, i) => `M0 ${(i + 1) * lineWidth * ENLARGED}h${WIDE}`);
        return (
          <g key={letter} transform={`translate(${at * (LETTER + WIDE + APART)} ${high - tall})`}>
            <text className="letter" x={0} y={tall / 2 + 1.3}>
              {letter}
            </text>
            <g transform={`translate(${LETTER} 0)`}>
              <path className="pad-fill" d={`M0 0h${WIDE}v${tall}h${-WIDE}Z`} />
              <path className="edge" d={`M0 0H${WIDE}M0 ${tall}H${WIDE}M0 0V${tall}M${WIDE} 0V${tall}`} />
              <path className="thin" d={between.join('')} />
            </g>
          </g>
        );
      })}
    </Paper>
  );
}
