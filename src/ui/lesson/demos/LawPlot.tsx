import { useId } from 'react';
import { Axes, Grid } from '../../charts/Axes.tsx';
import { AxisFigure } from '../../charts/AxisFigure.tsx';
import type { Letter } from '../../../core/lesson/demos/demo.ts';
import type { Frame } from '../../charts/frame.ts';
import { LINE_WEIGHT, placeLabels, type LabelWish, type Spot } from '../../charts/labels.ts';
import { pathOf } from '../../charts/paths.ts';
import { PlacedLabels } from '../../charts/PlacedLabels.tsx';
import { PlotClip } from '../../charts/PlotClip.tsx';
import { PointTable } from '../../charts/PointTable.tsx';
import { BallMarks } from '../../charts/solved/BallMarks.tsx';
import { inkOf, markBox } from '../../charts/spots.ts';
import { LIMIT_WORDS, READING_KEYS } from '../../text/chartText.ts';
import type { PlacedPoint, PlotPlan } from './plot.ts';

interface Props {
  /** Of the figure. */
  readonly number: number;
  readonly plan: PlotPlan;
  /** The joint that is drawn in pencil, where there is one. */
  readonly own?: Letter | undefined;
  readonly name: string;
  readonly aid: string;
  readonly across: string;
  /** What the upright axis counts in, where its figures do not say it. */
  readonly counts: string;
  readonly tableHeads: readonly string[];
}

const BAND_WORDS = { few: LIMIT_WORDS.single, set: LIMIT_WORDS.yield } as const;

/** The law of a demonstration, with its joints as lettered points. */
export function LawPlot({ number, plan, own, name, aid, across, counts, tableHeads }: Props) {
  const { x, y, read, grid, points } = plan;
  return (
    <AxisFigure
      number={number}
      name={name}
      aid={aid}
      how={READING_KEYS}
      x={x.span}
      y={y.span}
      grid={grid}
      start={points.at(-1)?.x ?? x.span[0]}
      read={read}
      renderPlot={(frame) => <Plot {...{ plan, own, frame, across, counts }} />}
    >
      <PointTable
        caption={name}
        heads={tableHeads}
        rows={points.map((point) => [point.letter, read(point.x).text, point.text])}
      />
    </AxisFigure>
  );
}

/** Pencil for what the handles move; dashed where a push alone would not hold it. */
function lookOf(isOwn: boolean, isGuided: boolean): string {
  if (isOwn) return isGuided ? 'chart-own guided' : 'chart-own';
  return isGuided ? 'chart-guided' : 'chart-median';
}

/** A point of the plot on the paper [px]. */
type Placed<T> = T & { readonly x: number; readonly y: number };
type PlanPoint = PlotPlan['points'][number];

/** Places beside a point, best first. */
function besidePoint({ x, y }: PlacedPoint): readonly Spot[] {
  return [
    { x: x + 10, y: y - 8, anchor: 'start' },
    { x: x - 10, y: y - 8, anchor: 'end' },
    { x: x + 10, y: y + 18, anchor: 'start' },
    { x: x - 10, y: y + 18, anchor: 'end' },
    { x, y: y - 14, anchor: 'middle' },
    { x, y: y + 24, anchor: 'middle' },
  ];
}

/** Words of the points, of what the upright axis counts in, and of the bands, in the order of what matters. */
function wishesOf(
  { bands, names = [] }: PlotPlan,
  { box, x, y }: Frame,
  points: readonly Placed<PlanPoint>[],
  counts: string,
): readonly LabelWish[] {
  const ends = (height: number): readonly Spot[] => [
    { x: box.right - 6, y: height, anchor: 'end' },
    { x: box.left + 8, y: height, anchor: 'start' },
  ];
  const unit: LabelWish = { key: 'unit', text: counts, look: 'quiet', spots: ends(box.top + 12).toReversed() };
  return [
    ...points.map((point): LabelWish => ({
      key: point.letter,
      text: `${point.letter}, ${point.text}`,
      look: 'bold',
      spots: besidePoint(point),
    })),
    ...(counts === '' ? [] : [unit]),
    ...names.map((name): LabelWish => ({
      key: `name ${name.key}`,
      text: name.text,
      look: 'quiet',
      spare: true,
      spots: besidePoint({ x: x(name.x), y: y(name.y) }),
    })),
    ...bands.map(({ name, from, to }): LabelWish => ({
      key: name,
      text: BAND_WORDS[name],
      look: 'quiet',
      spare: true,
      spots: ends((y(from) + y(to)) / 2 + 4),
    })),
  ];
}

/** What each strain means, behind everything else. */
function Bands({ plan: { bands }, frame: { box, y } }: Pick<PlotProps, 'plan' | 'frame'>) {
  return bands.map(({ name, from, to }) => (
    <g key={name} className={`chart-band ${name}`}>
      <rect x={box.left} y={y(to)} width={box.right - box.left} height={y(from) - y(to)} />
      <path d={`M${box.left} ${y(from)}H${box.right}`} />
    </g>
  ));
}

interface PlotProps extends Pick<Props, 'plan' | 'own' | 'across' | 'counts'> {
  readonly frame: Frame;
}

function Plot({ plan, own, frame, across, counts }: PlotProps) {
  const id = useId();
  const { box } = frame;
  const place = <T extends { readonly x: number; readonly y: number }>(point: T): Placed<T> => ({
    ...point,
    x: frame.x(point.x),
    y: frame.y(point.y),
  });
  const ticks = { x: plan.x.ticks, y: plan.y.ticks };
  const lines = plan.curves.map((curve) => ({ ...curve, drawn: curve.points.map(place) }));
  const [points, balls] = [plan.points.map(place), plan.balls.map(place)];
  const inks = lines.flatMap(({ drawn }) => inkOf(drawn, box, LINE_WEIGHT));
  const marks = [...points, ...balls].map((point) => markBox(point, 7));
  return (
    <>
      <PlotClip id={id} box={box} />
      <Grid frame={frame} {...ticks} />
      <Bands plan={plan} frame={frame} />
      {plan.y.span[0] < 0 && <path className="chart-limit" d={`M${box.left} ${frame.y(0)}H${box.right}`} />}
      <g clipPath={`url(#${id})`}>
        {lines.map(({ key, isOwn, isGuided, drawn }) => (
          <path key={key} className={lookOf(isOwn, isGuided === true)} d={pathOf(drawn)} />
        ))}
      </g>
      {own !== undefined && (
        <path className="law-drops" d={points.map(({ x, y }) => `M${x} ${box.bottom}V${y}H${box.left}`).join('')} />
      )}
      <Axes frame={frame} {...ticks} name={across} />
      <BallMarks marks={balls} />
      {points.map(({ letter, x, y }) => (
        <circle key={letter} className={letter === own ? 'law-point own' : 'law-point'} cx={x} cy={y} r="5" />
      ))}
      <PlacedLabels labels={placeLabels(wishesOf(plan, frame, points, counts), { inks, marks }, box)} />
    </>
  );
}
