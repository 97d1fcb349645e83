import { Paper } from './Paper.tsx';

interface Props {
  readonly count: number;
  readonly length: number;
  /** Across the plane in which they bend: what is seen of each. */
  readonly depth: number;
  readonly label: string;
}

/** Of the bars, and between one leaf and the next [mm]. */
const BAR = 9;
const GAP = 1.5;
const BESIDE = 0.5;

/** Leaves side by side between two bars, seen flat and life size; each is two long lines of its own length. */
export function Row({ count, length, depth, label }: Props) {
  const high = count * (depth + GAP) + GAP;
  const wide = 2 * BAR + length;
  return (
    <Paper wide={wide + 2 * BESIDE} high={high + 2 * BESIDE} left={-BESIDE} top={-BESIDE} label={label}>
      <path className="solid" d={`M0 0h${BAR}v${high}h${-BAR}ZM${BAR + length} 0h${BAR}v${high}h${-BAR}Z`} />
      {Array.from({ length: count }, (_, at) => {
        const top = GAP + at * (depth + GAP);
        return (
          <g key={top}>
            <path className="leaf" d={`M${BAR} ${top}h${length}v${depth}h${-length}Z`} />
            <path className="edge" d={`M${BAR} ${top}h${length}M${BAR} ${top + depth}h${length}`} />
          </g>
        );
      })}
    </Paper>
  );
}
