import type { DrawnCurve } from '../../core/life/curveOf.ts';
import { levelBand, pathOf } from '../charts/paths.ts';
import type { Span } from '../charts/frame.ts';
import { pct } from './axes.ts';

interface Props {
  readonly curve: DrawnCurve;
  readonly others: readonly DrawnCurve[];
  readonly cycles: Span;
  readonly strain: Span;
  /** Where the joint meets it; absent past the end of counting. */
  readonly joint: { readonly strain: number; readonly cycles: number | undefined } | undefined;
  readonly label: string;
}

const [WIDTH, HEIGHT] = [100, 100];

const share = (value: number, [low, high]: Span) => Math.log(value / low) / Math.log(high / low);

/** One curve with its band in front of the others as hairlines; the same axes in every row. */
export function SmallCurve({ curve, others, cycles, strain, joint, label }: Props) {
  const x = (value: number) => WIDTH * share(value, cycles);
  const y = (value: number) => HEIGHT * (1 - share(value, strain));
  const line = (points: DrawnCurve['median']) => pathOf(points.map((one) => ({ x: x(one.cycles), y: y(one.strain) })));
  const end = curve.median.at(-1);
  const band = levelBand(
    curve.total.map(({ strain: at, low, high }) => ({
      y: y(at),
      low: x(low),
      high: x(Math.min(high, end?.cycles ?? high)),
    })),
  );
  return (
    <svg className="small-curve" role="img" aria-label={label}>
      <svg viewBox={`0 0 ${WIDTH} ${HEIGHT}`} preserveAspectRatio="none" width="100%" height="100%">
        <path className="small-axes" d={`M0 0V${HEIGHT}H${WIDTH}`} />
        {others.map((other, at) => (
          <path key={at} className="small-other" d={line(other.median)} />
        ))}
        <path className="small-band" d={band} />
        <path className="small-own" d={line(curve.median)} />
      </svg>
      {joint && (
        <line
          className="range-joint"
          x1="0"
          x2="100%"
          y1={pct(y(joint.strain) / HEIGHT)}
          y2={pct(y(joint.strain) / HEIGHT)}
        />
      )}
      {joint?.cycles !== undefined && (
        <circle className="Ia" cx={pct(x(joint.cycles) / WIDTH)} cy={pct(y(joint.strain) / HEIGHT)} r="3.2" />
      )}
    </svg>
  );
}
