import { memo, useId, useMemo } from 'react';
import type { Wanted } from '../../core/find/wanted.ts';
import { lettersWidth } from '../charts/letters.ts';
import { PlacedLabels } from '../charts/PlacedLabels.tsx';
import type { LengthUnit } from '../text/numbers.ts';
import { heightOf, keyEfforts, keyText, ringRadius, type TradeFrame } from './tradeFrame.ts';
import { pathOf, stairOf, tradeLabels, type Mark } from './tradeMarks.ts';

interface Props {
  readonly frame: TradeFrame;
  readonly marks: readonly Mark[];
  readonly wanted: Wanted;
  readonly unit: LengthUnit;
  readonly picked: string | undefined;
}

/** What lies outside the brief: hatched, behind the pencil dashes of what is wanted. */
function Outside({ frame, wanted }: Pick<Props, 'frame' | 'wanted'>) {
  const id = useId();
  const { box, x, room, isRoomFar } = frame;
  const level = heightOf(frame, wanted.movement.chance);
  const right = isRoomFar ? box.right : Math.min(x(room), box.right);
  const areas = `M${box.left} ${level}H${right}V${box.top}H${box.right}V${box.bottom}H${box.left}Z`;
  return (
    <g className="chart-hatch">
      <pattern id={id} width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(-45)">
        <path d="M0 0V7" />
      </pattern>
      <path d={areas} fill={`url(#${id})`} />
      <path className="chart-wanted" d={`M${box.left} ${level}H${box.right}`} />
      {!isRoomFar && <path className="chart-wanted" d={`M${right} ${box.top}V${box.bottom}`} />}
    </g>
  );
}

function Ring({ mark: { x, y, radius, isBest, isTick, isThrough, rank } }: { readonly mark: Mark }) {
  const looks = ['trade-mark', isBest ? 'best' : '', isThrough ? '' : 'out'].filter((look) => look !== '').join(' ');
  if (isTick) return <path className={looks} d={`M${x.toFixed(1)} ${y}v7`} />;
  return (
    <>
      <circle className={looks} cx={x} cy={y} r={radius} />
      {rank !== undefined && isThrough && <circle className="trade-first" cx={x} cy={y} r={1.7} />}
    </>
  );
}

/** Three rings with their efforts, in the corner that is outside the brief. */
function RingKey({ frame: { box }, marks, wanted }: Pick<Props, 'frame' | 'marks' | 'wanted'>) {
  const designs = marks.map(({ design }) => design);
  const radiusOf = ringRadius(designs);
  const efforts = keyEfforts(designs);
  const words = efforts.map((effort, at) => keyText(effort, wanted.measure, at === efforts.length - 1));
  const widths = efforts.map((effort, at) => 2 * radiusOf(effort) + lettersWidth(words[at] ?? '', 12) + 18);
  const place = (at: number) => widths.slice(0, at).reduce((sum, width) => sum + width, radiusOf(efforts[at] ?? 0));
  return (
    <g className="trade-key" transform={`translate(${box.left + 10} ${box.bottom - 16})`}>
      {efforts.map((effort, at) => (
        <g key={effort} transform={`translate(${place(at)} 0)`}>
          <circle className="trade-mark" r={radiusOf(effort)} />
          <text className="s12 halo" x={radiusOf(effort) + 4} y={4}>
            {words[at]}
          </text>
        </g>
      ))}
    </g>
  );
}

/** The drawing of Fig. 1 within its axes. */
export const TradePlot = memo(function TradePlot({ frame, marks, wanted, unit, picked }: Props) {
  const stair = useMemo(() => stairOf(marks), [marks]);
  const { chance } = wanted.movement;
  const labels = useMemo(
    () => tradeLabels(marks, stair, frame, { wantedChance: chance, unit }),
    [marks, stair, frame, chance, unit],
  );
  // Light rings first, so that a heavy one is never hidden.
  const order = useMemo(() => marks.toSorted((a, b) => Number(a.isBest) - Number(b.isBest)), [marks]);
  const at = marks.find(({ key }) => key === picked);
  return (
    <>
      <Outside frame={frame} wanted={wanted} />
      <path className="trade-stair" d={pathOf(stair)} />
      {order.map((mark) => (
        <Ring key={mark.key} mark={mark} />
      ))}
      {marks.length > 0 && <RingKey frame={frame} marks={marks} wanted={wanted} />}
      <PlacedLabels labels={labels} />
      {at && (
        <g className="trade-picked" transform={`translate(${at.x.toFixed(1)} ${at.y.toFixed(1)})`}>
          <circle r={at.radius + 3} />
          <path d="M-15 0H15M0 -15V15" />
        </g>
      )}
    </>
  );
});
