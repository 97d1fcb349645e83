import type { Known } from './figures.ts';

interface Props {
  readonly before: Known;
  readonly after: Known;
  /** Said instead of the drawing. */
  readonly label: string;
}

/** Beside the farthest ends, as a share of what lies between them. */
const BESIDE = 0.08;

const pct = (share: number) => `${(100 * share).toFixed(2)}%`;

function Range({ of, at, y, name }: { of: Known; at: (value: number) => number; y: number; name: string }) {
  const [left, right] = [at(of.low), at(of.high)];
  return (
    <>
      <rect className={name} x={pct(left)} y={y} width={pct(Math.max(right - left, 0.004))} height="9" />
      <line className="learned-usual" x1={pct(at(of.typical))} x2={pct(at(of.typical))} y1={y - 3} y2={y + 12} />
    </>
  );
}

/** A figure before and after on one axis: low to high as a box, the usual value upright. */
export function BeforeAfterBar({ before, after, label }: Props) {
  const all = [before.low, before.high, after.low, after.high];
  const [low, high] = [Math.min(...all), Math.max(...all)];
  const room = (high - low || Math.abs(high) || 1) * BESIDE;
  const at = (value: number) => (value - low + room) / (high - low + 2 * room);
  return (
    <svg className="learned-bar" role="img" aria-label={label}>
      <Range of={before} at={at} y={4} name="learned-before" />
      <Range of={after} at={at} y={21} name="learned-after" />
    </svg>
  );
}
