import type { Frame } from './frame.ts';

interface HatchProps {
  readonly id: string;
  readonly frame: Frame;
  /** Where it begins on the axis across; it runs to the end of the paper. */
  readonly from: number;
}

/** Past here the figure knows less or the joint does not come back: hatched to the right edge. */
export function Hatch({ id, frame: { box, x }, from }: HatchProps) {
  const left = Math.max(x(from), box.left);
  if (!(left < box.right)) return null;
  return (
    <g className="chart-hatch">
      <pattern id={id} width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(-45)">
        <path d="M0 0V7" />
      </pattern>
      <rect x={left} y={box.top} width={box.right - left} height={box.bottom - box.top} fill={`url(#${id})`} />
      <path className="chart-bound" d={`M${left} ${box.top}V${box.bottom}`} />
    </g>
  );
}
