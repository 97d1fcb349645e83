import { useMemo } from 'react';
import type { Wanted } from '../../core/find/wanted.ts';
import { Caption } from '../charts/Caption.tsx';
import type { Size } from '../charts/frame.ts';
import { useSize } from '../charts/useSize.ts';
import { effortText, setAmount } from '../text/amountText.ts';
import { BARS, effortAxis, FIG } from '../text/foundText.ts';
import type { LengthUnit } from '../text/numbers.ts';
import { BarHandle } from './BarHandle.tsx';
import { effortStops, unlessEnd } from './brushBars.ts';
import { isThrough, type Brush, type Shown } from './designs.ts';
import { effortScale, effortSpan, effortTicks } from './tradeFrame.ts';

interface Props {
  readonly wanted: Wanted;
  readonly unit: LengthUnit;
  readonly all: readonly Shown[];
  readonly brush: Brush;
  readonly onBrush: (brush: Brush) => void;
  readonly picked: string | undefined;
}

/** Efforts of all that was found, one tick a design: the third of what is traded. */
export function EffortStrip(props: Props) {
  const [svg, size] = useSize<SVGSVGElement>();
  return (
    <figure className="chart effort-strip">
      <Caption number={2} name={FIG.effort} aid={FIG.effortAid} reading={undefined} />
      <svg className="strip-paper" ref={svg} viewBox={size && `0 0 ${size.width} ${size.height}`}>
        {size && props.all.length > 0 && <Paper {...props} size={size} />}
      </svg>
    </figure>
  );
}

const SIDE = 18;
/** Heights: of ticks that are shown, of those that are not, of the axis and of the bar [px]. */
const HIGH = [4, 26] as const;
const LOW = [30, 40] as const;
const AXIS = 44;
const BAR = 74;

function Paper({ wanted, unit, all, brush, onBrush, picked, size }: Props & { readonly size: Size }) {
  const designs = useMemo(() => all.map(({ design }) => design), [all]);
  const scale = useMemo(() => effortScale(designs, [SIDE, size.width - SIDE]), [designs, size]);
  const [low, high] = effortSpan(designs);
  const ticks = (isIn: boolean, [from, to]: readonly [number, number]) =>
    designs
      .filter(({ figures }) => isThrough(figures, brush) === isIn)
      .map(({ figures }) => `M${scale(figures.effort).toFixed(1)} ${from}V${to}`)
      .join('');
  const at = all.find(({ key }) => key === picked)?.design.figures.effort;
  const limits = [wanted.effortAtLeast, wanted.movement.effortAtMost].filter((limit) => limit !== undefined);
  return (
    <>
      <g aria-hidden="true">
        <path className="strip-out" d={ticks(false, LOW)} />
        <path className="strip-in" d={ticks(true, HIGH)} />
        {limits
          .filter((limit) => limit >= low && limit <= high)
          .map((limit) => (
            <path key={limit} className="chart-wanted" d={`M${scale(limit)} 0V${AXIS}`} />
          ))}
        {at !== undefined && <path className="strip-picked" d={`M${scale(at).toFixed(1)} 0V${AXIS}`} />}
        <path className="L" d={`M${SIDE} ${AXIS}H${size.width - SIDE}`} />
        {effortTicks([low, high]).map(({ at: effort, text }) => (
          <g key={effort}>
            <path className="L" d={`M${scale(effort)} ${AXIS}v5`} />
            <text className="s12" x={scale(effort)} y={AXIS + 17} textAnchor="middle">
              {text}
            </text>
          </g>
        ))}
        <text className="t2 s12" x={size.width - SIDE} y={BAR + 23} textAnchor="end">
          {effortAxis(wanted.measure, setAmount(wanted.movement.amount, wanted.measure, unit))}
        </text>
      </g>
      <EffortBar wanted={wanted} all={all} brush={brush} onBrush={onBrush} scale={scale} />
    </>
  );
}

type BarProps = Pick<Props, 'wanted' | 'all' | 'brush' | 'onBrush'> & {
  readonly scale: ReturnType<typeof effortScale>;
};

function EffortBar({ wanted, all, brush, onBrush, scale }: BarProps) {
  const designs = all.map(({ design }) => design);
  const [low, high] = effortSpan(designs);
  const stops = effortStops(designs);
  const inside = (value: number) => Math.min(high, Math.max(low, value));
  const [least, most] = [inside(brush.effortAtLeast ?? low), inside(brush.effortAtMost ?? high)];
  const said = (effort: number | undefined) => (effort === undefined ? BARS.open : effortText(effort, wanted.measure));
  const shared = { isUpright: false, stops, valueAt: (place: number) => scale.invert(place) };
  return (
    <>
      <path className="trade-bar" d={`M${scale(least)} ${BAR}H${scale(most)}`} />
      <BarHandle
        {...shared}
        label={BARS.effortAtLeast}
        at={{ x: scale(least), y: BAR }}
        value={least}
        text={said(brush.effortAtLeast)}
        onMove={(value) => onBrush({ ...brush, effortAtLeast: unlessEnd(Math.min(value, most), low) })}
      />
      <BarHandle
        {...shared}
        label={BARS.effortAtMost}
        at={{ x: scale(most), y: BAR }}
        value={most}
        text={said(brush.effortAtMost)}
        onMove={(value) => onBrush({ ...brush, effortAtMost: unlessEnd(Math.max(value, least), high) })}
      />
    </>
  );
}
