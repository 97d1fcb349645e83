import { useMemo, type PointerEvent } from 'react';
import type { Wanted } from '../../core/find/wanted.ts';
import { normalCdf } from '../../core/numeric/normal.ts';
import { Axes, Grid } from '../charts/Axes.tsx';
import { Caption } from '../charts/Caption.tsx';
import type { Size } from '../charts/frame.ts';
import { useSize } from '../charts/useSize.ts';
import { BARS, chanceText, FIG, markText, plotLabel, reachText, sizeAxis, sizeText } from '../text/foundText.ts';
import type { LengthUnit } from '../text/numbers.ts';
import { BarHandle } from './BarHandle.tsx';
import { chanceStops, sizeStops, unlessEnd } from './brushBars.ts';
import { designName, filamentName, type Brush, type Group, type Shown } from './designs.ts';
import { BAR_OUT, chanceTicks, heightOf, ringRadius, sizeTicks, tradeFrame, type TradeFrame } from './tradeFrame.ts';
import { marksOf, nearestMark } from './tradeMarks.ts';
import { TradePlot } from './TradePlot.tsx';

interface Props {
  readonly wanted: Wanted;
  readonly unit: LengthUnit;
  readonly groups: readonly Group[];
  readonly all: readonly Shown[];
  readonly brush: Brush;
  readonly onBrush: (brush: Brush) => void;
  /** Key of the design that is pointed at, here or in the list. */
  readonly picked: string | undefined;
  readonly onPick: (key: string | undefined) => void;
  readonly onOpen: (key: string) => void;
}

/** Room against chance: than what nothing is both smaller and surer, and how hard it pushes. */
export function TradeOff(props: Props) {
  const { all, unit, wanted, picked } = props;
  const [svg, size] = useSize<SVGSVGElement>();
  const shown = all.find(({ key }) => key === picked)?.design;
  const reading =
    shown && markText(designName(shown.joint, unit), filamentName(shown.joint), shown.figures, wanted.measure, unit);
  return (
    <figure className="chart trade">
      <Caption number={1} name={FIG.room} aid={FIG.roomAid} reading={reading} />
      <svg className="trade-paper" ref={svg} viewBox={size && `0 0 ${size.width} ${size.height}`}>
        {size && <Paper {...props} size={size} />}
      </svg>
    </figure>
  );
}

function Paper({
  size,
  wanted,
  unit,
  groups,
  all,
  brush,
  onBrush,
  picked,
  onPick,
  onOpen,
}: Props & { readonly size: Size }) {
  const designs = useMemo(() => all.map(({ design }) => design), [all]);
  const frame = useMemo(() => tradeFrame(size, designs, wanted), [size, designs, wanted]);
  const marks = useMemo(
    () => marksOf(groups, all, frame, ringRadius(designs), brush),
    [groups, all, frame, designs, brush],
  );
  const best = designs.filter(({ isBest }) => isBest).length;
  const under = (event: PointerEvent<SVGElement>) => {
    const corner = event.currentTarget.getBoundingClientRect();
    const { left, top } = frame.box;
    return nearestMark(marks, { x: event.clientX - corner.left + left, y: event.clientY - corner.top + top });
  };
  const ticks = { frame, x: sizeTicks(frame, unit, size), y: chanceTicks(frame) };
  return (
    <>
      {/* oxlint-disable-next-line jsx-a11y/prefer-tag-over-role -- what is drawn stands beside the handles in one drawing */}
      <g role="img" aria-label={plotLabel(all.length, best)}>
        <Grid {...ticks} />
        <TradePlot frame={frame} marks={marks} wanted={wanted} unit={unit} picked={picked} />
        <Axes {...ticks} name="" />
        <text className="t2 s12" x={frame.box.left - 30} y={9}>
          {reachText(wanted.movement.cycles)}
        </text>
        {marks.some(({ isTick }) => isTick) && (
          <text className="t2 s12" x={frame.box.right} y={9} textAnchor="end">
            {FIG.over}
          </text>
        )}
        <text className="t2 s12" x={frame.box.right} y={frame.box.bottom + 56} textAnchor="end">
          {sizeAxis(unit)}
        </text>
      </g>
      <rect
        className="trade-glass"
        x={frame.box.left}
        y={frame.box.top}
        width={frame.box.right - frame.box.left}
        height={frame.box.bottom - frame.box.top}
        onPointerMove={(event) => onPick(under(event)?.key)}
        onPointerLeave={() => onPick(undefined)}
        onClick={(event) => {
          const mark = under(event as unknown as PointerEvent<SVGElement>);
          if (mark) onOpen(mark.key);
        }}
      />
      {all.length > 0 && <Bars frame={frame} brush={brush} onBrush={onBrush} unit={unit} />}
    </>
  );
}

interface BarsProps {
  readonly frame: TradeFrame;
  readonly brush: Brush;
  readonly onBrush: (brush: Brush) => void;
  readonly unit: LengthUnit;
}

/** The bars of the brush along both axes, each with the end that can be drawn in. */
function Bars({ frame, brush, onBrush, unit }: BarsProps) {
  const { box, x, y, lowChance } = frame;
  const [low = 0, high = 1] = x.domain();
  const size = Math.min(brush.size ?? high, high);
  const chance = Math.max(brush.chance ?? lowChance, lowChance);
  const [across, up] = [x(size), heightOf(frame, chance)];
  const [foot, side] = [box.bottom + BAR_OUT.bottom, box.left - BAR_OUT.left];
  return (
    <>
      <path className="trade-bar" d={`M${box.left} ${foot}H${across}M${side} ${up}V${box.top}`} />
      <BarHandle
        label={BARS.size}
        at={{ x: across, y: foot }}
        isUpright={false}
        value={size}
        text={brush.size === undefined ? BARS.open : sizeText(size, unit)}
        stops={sizeStops([low, high], unit)}
        valueAt={(place) => x.invert(place)}
        onMove={(value) => onBrush({ ...brush, size: unlessEnd(value, high) })}
      />
      <BarHandle
        label={BARS.chance}
        at={{ x: side, y: up }}
        isUpright
        value={chance}
        text={brush.chance === undefined ? BARS.open : chanceText(chance)}
        stops={chanceStops(lowChance)}
        valueAt={(place) => normalCdf(y.invert(place))}
        onMove={(value) => onBrush({ ...brush, chance: unlessEnd(value, lowChance) })}
      />
    </>
  );
}
