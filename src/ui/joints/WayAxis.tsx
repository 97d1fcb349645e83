import { useSize } from '../charts/useSize.ts';
import { AXIS, planAxis, type AxisOf, type AxisPlan } from './axisPlan.ts';

interface Props {
  readonly axis: AxisOf;
  /** The first axis says what its ticks mean. */
  readonly inWords: boolean;
}

function Arrow({ from, to }: { readonly from: number; readonly to: number }) {
  const back = to > from ? -7 : 7;
  return (
    <>
      <path className="L" d={`M${from} ${AXIS.line}H${to}`} />
      <path className="I" d={`M${to} ${AXIS.line}l${back} -2.6v5.2Z`} />
    </>
  );
}

/** Past the last tick is the strongest tint, whether there is one tick or two. */
function Tints({ ticks, end }: AxisPlan) {
  return ticks.map((x, at) => (
    <path
      key={x}
      className={at === ticks.length - 1 ? 'tint2' : 'tint1'}
      d={`M${x} ${AXIS.line}H${ticks[at + 1] ?? end}`}
    />
  ));
}

function Plan({ plan }: { readonly plan: AxisPlan }) {
  const { line } = AXIS;
  return (
    <>
      <Tints {...plan} />
      <path className="Lh" d={`M0 ${line}H${plan.end}`} />
      {plan.ticks.map((x) => (
        <path key={x} className="L" d={`M${x} ${line - 6}V${line + 6}`} />
      ))}
      {plan.limits.map(({ x, text }) => (
        <text key={text} className="t2 s12" x={x} y={AXIS.above} textAnchor="middle">
          {text}
        </text>
      ))}
      {plan.arrow && <Arrow {...plan.arrow} />}
      {!plan.same && <circle className="was" cx={plan.before} cy={line} r="4.5" />}
      <circle className="now" cx={plan.after} cy={line} r="4.5" />
      {plan.figures.map(({ x, text }) => (
        <text key={text} className={text === plan.now ? 'ta' : 't2'} x={x} y={AXIS.below} textAnchor="middle">
          {text}
        </text>
      ))}
    </>
  );
}

/** What a quantity is before (ring) and after (dot) of one way out, on an axis with its limits. */
export function WayAxis({ axis, inWords }: Props) {
  const [ref, size] = useSize<SVGSVGElement>();
  return (
    <svg ref={ref} className="axis" role="img" aria-label={axis.label} height={AXIS.height}>
      {size && size.width > 0 && <Plan plan={planAxis(axis, size.width, inWords)} />}
    </svg>
  );
}
