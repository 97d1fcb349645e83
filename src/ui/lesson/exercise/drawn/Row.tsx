import { Paper } from './Paper.tsx';

interface Props {
  readonly count: number;
  readonly length: number;
  readonly thickness: number;
  readonly label: string;
}

/** Of the bars, and from one leaf to the next [mm]. */
const BAR = 9;
const PITCH = 4.5;
const BESIDE = 0.5;

/** Leaves side by side between two bars, life size. */
export function Row({ count, length, thickness, label }: Props) {
  const high = count * PITCH + 2;
  const wide = 2 * BAR + length;
  const first = 1 + PITCH / 2;
  return (
    <Paper wide={wide + 2 * BESIDE} high={high + 2 * BESIDE} left={-BESIDE} top={-BESIDE} label={label}>
      <path className="strip" d={`M0 0h${BAR}v${high}h${-BAR}ZM${BAR + length} 0h${BAR}v${high}h${-BAR}Z`} />
      {Array.from({ length: count }, (_, at) => {
        const middle = first + at * PITCH;
        return (
          <g key={middle}>
            <path className="bead" d={`M${BAR} ${middle - thickness / 2}h${length}v${thickness}h${-length}Z`} />
            <path
              className="outline"
              d={`M${BAR} ${middle - thickness / 2}h${length}M${BAR} ${middle + thickness / 2}h${length}`}
            />
          </g>
        );
      })}
    </Paper>
  );
}
