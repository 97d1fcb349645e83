import { memo, useId } from 'react';
import { AXES } from '../../text/chartText.ts';
import { length, type LengthUnit } from '../../text/numbers.ts';
import { oneLine, TOUCHES } from '../../text/solvedChartText.ts';
import { Axes, Grid } from '../Axes.tsx';
import { onAxis } from '../effortCurve.ts';
import type { Frame, Px, Span } from '../frame.ts';
import { JointMark } from '../JointMark.tsx';
import { LINE_WEIGHT, placeLabels, type LabelWish, type Spot } from '../labels.ts';
import { pathOf } from '../paths.ts';
import { PlacedLabels } from '../PlacedLabels.tsx';
import { alongLimit, around, clearPaper, inkOf, markBox } from '../spots.ts';
import { roomAt, type Room } from './room.ts';
import { amountMarks, levelMarks, type Level } from './spans.ts';
import { Stretches } from './Stretches.tsx';
import type { Answered } from './way.ts';

interface RoomWayPlotProps {
  readonly a: Answered;
  readonly room: Room;
  readonly bent: number;
  readonly level: Level;
  readonly span: Span;
  readonly frame: Frame;
  readonly narrow: boolean;
  readonly unit: LengthUnit;
}

export const RoomWayPlot = memo(function RoomWayPlot(props: RoomWayPlotProps) {
  const { a, room, level, span, frame, narrow, unit } = props;
  const { box, y } = frame;
  const { measure } = a.drive;
  const id = useId();
  const ticks = { x: amountMarks(span, measure, unit, narrow), y: levelMarks(level) };
  const lines = linesOf(props);
  const touching = room.touching.map(([from, to]): Span => [onAxis(from, measure), onAxis(to, measure)]);
  const { amount: wanted } = a.joint.movement;
  const marked = a.joint.movement.ways === 'both ways' ? [-wanted, wanted] : [wanted];
  const at = pointOf(props);
  const one = y(a.joint.profile.lineWidth);
  return (
    <>
      <clipPath id={id}>
        <rect x={box.left} y={box.top} width={box.right - box.left} height={box.bottom - box.top} />
      </clipPath>
      <Grid frame={frame} {...ticks} />
      <Stretches frame={frame} spans={touching} />
      <path className="chart-limit" d={`M${box.left} ${one}H${box.right}`} />
      <path
        className="chart-wanted"
        d={marked.map((amount) => `M${frame.x(onAxis(amount, measure))} ${box.top}V${box.bottom}`).join('')}
      />
      <g clipPath={`url(#${id})`}>
        {lines.map((line) => (
          <path key={line[0]?.x} className="chart-median" d={pathOf(line)} />
        ))}
      </g>
      <Axes frame={frame} {...ticks} name={AXES.amount(measure, unit)} />
      <PlacedLabels labels={labelsOf(props, lines, at, touching)} />
      {at && <JointMark at={at} box={box} />}
    </>
  );
});

function linesOf({ a, room, frame: { x, y } }: RoomWayPlotProps): readonly (readonly Px[])[] {
  return room.stretches.map((stretch) =>
    stretch.map(({ amount, gap }) => ({ x: x(onAxis(amount, a.drive.measure)), y: y(gap) })),
  );
}

/** Where the scrubber holds it; on the floor of the figure where it touches, nowhere where nothing faces anything. */
function pointOf({ a, room, bent, frame: { x, y } }: RoomWayPlotProps): Px | undefined {
  const amount = bent * a.joint.movement.amount;
  const gap = roomAt(room, amount);
  return gap === undefined ? undefined : { x: x(onAxis(amount, a.drive.measure)), y: y(Math.max(0, gap)) };
}

function labelsOf(
  { a, room, bent, unit, frame: { box, x, y } }: RoomWayPlotProps,
  lines: readonly (readonly Px[])[],
  at: Px | undefined,
  touching: readonly Span[],
) {
  const { lineWidth } = a.joint.profile;
  const gap = roomAt(room, bent * a.joint.movement.amount);
  const wishes: LabelWish[] = [
    {
      key: 'unit',
      text: unit === 'mm' ? 'mm' : 'in',
      look: 'quiet',
      spots: [
        { x: box.left + 8, y: box.top + 12, anchor: 'start' },
        { x: box.left + 8, y: box.top + 30, anchor: 'start' },
        { x: box.right - 6, y: box.top + 12, anchor: 'end' },
      ],
    },
  ];
  if (at && gap !== undefined) {
    const text = gap > 0 ? length(gap, unit) : TOUCHES;
    wishes.push({ key: 'now', text, look: 'pencil', spots: around(at, 15), far: () => clearPaper(at, 9, box) });
  }
  wishes.push({ key: 'line', text: oneLine(lineWidth, unit), look: 'quiet', spots: alongLimit(box, y(lineWidth)) });
  touching.forEach(([from, to], i) => {
    const [left, right] = [x(from), x(to)];
    const spots = [12, 27, 42].map((down): Spot => ({ x: (left + right) / 2, y: box.top + down, anchor: 'middle' }));
    wishes.push({ key: `touches${i}`, text: TOUCHES, look: 'quiet', spots, spare: true });
  });
  const inks = [
    ...lines.flatMap((line) => inkOf(line, box, LINE_WEIGHT)),
    ...inkOf(
      [
        { x: box.left, y: y(lineWidth) },
        { x: box.right, y: y(lineWidth) },
      ],
      box,
      LINE_WEIGHT,
    ),
  ];
  return placeLabels(wishes, { inks, marks: at ? [markBox(at, 10)] : [] }, box);
}
