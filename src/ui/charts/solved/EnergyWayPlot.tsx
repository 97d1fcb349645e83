import { memo, useId } from 'react';
import { AXES } from '../../text/chartText.ts';
import type { LengthUnit } from '../../text/numbers.ts';
import { ENERGY_UNIT, ENERGY_WORDS } from '../../text/solvedChartText.ts';
import { Axes, Grid } from '../Axes.tsx';
import { onAxis } from '../effortCurve.ts';
import type { Frame, Px, Span } from '../frame.ts';
import { JointMark } from '../JointMark.tsx';
import { LINE_WEIGHT, placeLabels, type LabelWish } from '../labels.ts';
import { pathOf } from '../paths.ts';
import { PlacedLabels } from '../PlacedLabels.tsx';
import { around, clearPaper, inkOf, markBox } from '../spots.ts';
import { BallMarks } from './BallMarks.tsx';
import type { Hollow } from './marks.ts';
import { amountMarks, levelMarks, type Level } from './spans.ts';
import { readWay, runsOf, whole, type Answered, type Way } from './way.ts';

interface EnergyWayPlotProps {
  readonly a: Answered;
  readonly way: Way;
  readonly hollows: readonly Hollow[];
  readonly bent: number;
  readonly level: Level;
  readonly span: Span;
  readonly frame: Frame;
  readonly narrow: boolean;
  readonly unit: LengthUnit;
}

/** A ball lies on the curve, not in it [px]. */
const ON_TOP = 5;

export const EnergyWayPlot = memo(function EnergyWayPlot(props: EnergyWayPlotProps) {
  const { a, way, hollows, bent, level, span, frame, narrow, unit } = props;
  const { box, y } = frame;
  const { measure } = a.drive;
  const id = useId();
  const place = ({ amount, energy }: { readonly amount: number; readonly energy: number }): Px => ({
    x: frame.x(onAxis(amount, measure)),
    y: y(energy),
  });
  const ticks = { x: amountMarks(span, measure, unit, narrow), y: levelMarks(level) };
  const at = place(readWay(way, bent * a.joint.movement.amount));
  const onTop = (mark: Hollow['rest']) => ({ ...mark, ...place(mark), y: place(mark).y - ON_TOP });
  const balls = hollows.flatMap(({ hill, rest }) => [onTop(hill), onTop(rest)]);
  return (
    <>
      <Grid frame={frame} {...ticks} />
      <clipPath id={id}>
        <rect x={box.left} y={box.top} width={box.right - box.left} height={box.bottom - box.top} />
      </clipPath>
      <g clipPath={`url(#${id})`}>
        {[...runsOf(way.back), ...runsOf(way.forward)].map(({ holds, points }, i) => (
          // Runs come anew with each answer and are known by their order on the way.
          <path key={i} className={holds ? 'chart-median' : 'chart-guided'} d={pathOf(points.map(place))} />
        ))}
      </g>
      {hollows.map(({ hill, rest }) => (
        <ComeBack key={rest.amount} hill={place(hill)} rest={place(rest)} />
      ))}
      <Axes frame={frame} {...ticks} name={AXES.amount(measure, unit)} />
      <BallMarks marks={balls} />
      <PlacedLabels labels={labelsOf(props, place, at, balls)} />
      <JointMark at={at} box={box} />
    </>
  );
});

/** The level of the hill carried over to the rest, and the height between them. */
function ComeBack({ hill, rest }: { readonly hill: Px; readonly rest: Px }) {
  const tall = rest.y - hill.y > 18;
  return (
    <path
      className="chart-comeback"
      d={`M${hill.x} ${hill.y}H${rest.x + 14}M${rest.x + 9} ${hill.y}V${rest.y}${
        tall ? `M${rest.x + 6} ${rest.y - 7}l3 7l3 -7M${rest.x + 6} ${hill.y + 7}l3 -7l3 7` : ''
      }M${rest.x} ${rest.y}h14`}
    />
  );
}

function labelsOf(
  { way, hollows, frame: { box } }: EnergyWayPlotProps,
  place: (mark: { readonly amount: number; readonly energy: number }) => Px,
  at: Px,
  balls: readonly Px[],
) {
  const unit: LabelWish = {
    key: 'unit',
    text: ENERGY_UNIT,
    look: 'quiet',
    spots: [{ x: box.left + 8, y: box.top + 12, anchor: 'start' }],
  };
  const wishes = hollows.flatMap(({ hill, rest, kept, toComeBack }, i): LabelWish[] => {
    const [top, foot] = [place(hill), place(rest)];
    const middle = { x: foot.x + 9, y: (top.y + foot.y) / 2 };
    return [
      {
        key: `hill${i}`,
        text: ENERGY_WORDS.hill(hill.energy),
        look: 'ink',
        spots: [{ x: top.x, y: top.y - 14, anchor: 'middle' }, ...around(top, 14)],
      },
      {
        key: `kept${i}`,
        text: ENERGY_WORDS.kept(kept),
        look: 'ink',
        spots: [{ x: foot.x, y: foot.y + 16, anchor: 'middle' }, ...around(foot, 12)],
        far: () => clearPaper(foot, 8, box),
      },
      {
        key: `back${i}`,
        text: ENERGY_WORDS.comeBack(toComeBack),
        look: 'ink',
        spots: [
          { x: middle.x - 16, y: middle.y + 34, anchor: 'end', leader: middle },
          { x: middle.x - 8, y: middle.y + 4, anchor: 'end' },
          { x: middle.x + 5, y: middle.y + 4, anchor: 'start' },
        ],
        far: () => clearPaper(middle, 4, box),
      },
    ];
  });
  const inks = inkOf(whole(way).map(place), box, LINE_WEIGHT);
  return placeLabels(
    [unit, ...wishes],
    { inks, marks: [markBox(at, 10), ...balls.map((ball) => markBox(ball, 6))] },
    box,
  );
}
