import type { DrawnCurve } from '../../core/life/curveOf.ts';
import { levelBand, pathOf } from '../charts/paths.ts';
import type { Span } from '../charts/frame.ts';
import { pct } from './axes.ts';

/** The axes of every small curve. */
interface SmallPaper {
  readonly cycles: Span;
  readonly strain: Span;
}

interface Props extends SmallPaper {
  readonly curve: DrawnCurve;
  /** All curves that it is beside, as one path. */
  readonly others: string;
  /** Where the joint meets it; absent past the end of counting. */
  readonly joint: { readonly strain: number; readonly cycles: number | undefined } | undefined;
  readonly label: string;
}

const [WIDTH, HEIGHT] = [100, 100];

const share = (value: number, [low, high]: Span) => Math.log(value / low) / Math.log(high / low);

const x = (value: number, cycles: Span) => WIDTH * share(value, cycles);
const y = (value: number, strain: Span) => HEIGHT * (1 - share(value, strain));

function line({ median }: DrawnCurve, { cycles, strain }: SmallPaper): string {
  return pathOf(median.map((one) => ({ x: x(one.cycles, cycles), y: y(one.strain, strain) })));
}

/** Curves as one path, which is the same behind each of them. */
export function pathBehind(curves: readonly DrawnCurve[], paper: SmallPaper): string {
  return curves.map((curve) => line(curve, paper)).join('');
}

/** One curve with its band in front of the others as hairlines; the same axes in every row. */
export function SmallCurve({ curve, others, cycles, strain, joint, label }: Props) {
  const end = curve.median.at(-1);
  const band = levelBand(
    curve.total.map(({ strain: at, low, high }) => ({
      y: y(at, strain),
      low: x(low, cycles),
      high: x(Math.min(high, end?.cycles ?? high), cycles),
    })),
  );
  return (
    <svg className="small-curve" role="img" aria-label={label}>
      <svg viewBox={`0 0 ${WIDTH} ${HEIGHT}`} preserveAspectRatio="none" width="100%" height="100%">
        <path className="small-axes" d={`M0 0V${HEIGHT}H${WIDTH}`} />
        <path className="small-other" d={others} />
        <path className="small-band" d={band} />
        <path className="small-own" d={line(curve, { cycles, strain })} />
      </svg>
      {joint && (
        <line
          className="range-joint"
          x1="0"
          x2="100%"
          y1={pct(y(joint.strain, strain) / HEIGHT)}
          y2={pct(y(joint.strain, strain) / HEIGHT)}
        />
      )}
      {joint?.cycles !== undefined && (
        <circle
          className="Ia"
          cx={pct(x(joint.cycles, cycles) / WIDTH)}
          cy={pct(y(joint.strain, strain) / HEIGHT)}
          r="3.2"
        />
      )}
    </svg>
  );
}
