import { allowableNamed } from '../../core/design/allowables.ts';
import type { Assessment } from '../../core/design/assessment.ts';
import { useSize } from '../charts/useSize.ts';
import { axisFigure, axisText } from '../text/remedyText.ts';
import { AXIS, planAxis, type AxisPlan } from './axisPlan.ts';

interface Props {
  readonly before: Assessment;
  readonly after: Assessment;
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

function Plan({ plan, after }: { readonly plan: AxisPlan; readonly after: number }) {
  const { line } = AXIS;
  return (
    <>
      <path className="tint1" d={`M${plan.again} ${line}H${Math.min(plan.staysBent, plan.end)}`} />
      <path className="tint2" d={`M${plan.staysBent} ${line}H${plan.end}`} />
      <path className="Lh" d={`M0 ${line}H${plan.end}`} />
      {[plan.again, plan.staysBent].map((x) => (
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
      {plan.strains.map(({ x, text }) => (
        <text key={text} className={text === axisFigure(after) ? 'ta' : 't2'} x={x} y={AXIS.below} textAnchor="middle">
          {text}
        </text>
      ))}
    </>
  );
}

/** Strain before (ring) and after (dot) of one way out, on an axis with the limits of the filament it proposes. */
export function StrainAxis({ before, after, inWords }: Props) {
  const [ref, size] = useSize<SVGSVGElement>();
  const limit = (name: 'repeated' | 'yield') => allowableNamed(after.allowables, name).limit;
  const label = axisText(before.strain.peak, after.strain.peak, limit('repeated'), limit('yield'));
  return (
    <svg ref={ref} className="axis" role="img" aria-label={label} height={AXIS.height}>
      {size && size.width > 0 && <Plan plan={planAxis(before, after, size.width, inWords)} after={after.strain.peak} />}
    </svg>
  );
}
