import { useId } from 'react';
import { Axes, Grid } from '../../charts/Axes.tsx';
import { AxisFigure } from '../../charts/AxisFigure.tsx';
import type { Frame } from '../../charts/frame.ts';
import { LINE_WEIGHT, placeLabels, type LabelWish } from '../../charts/labels.ts';
import { pathOf } from '../../charts/paths.ts';
import { PlacedLabels } from '../../charts/PlacedLabels.tsx';
import { PlotClip } from '../../charts/PlotClip.tsx';
import { PointTable } from '../../charts/PointTable.tsx';
import { BallMarks } from '../../charts/solved/BallMarks.tsx';
import { inkOf, markBox } from '../../charts/spots.ts';
import { LIMIT_WORDS, READING_KEYS } from '../../text/chartText.ts';
import type { PlotPlan } from './lawPlan.ts';

interface Props {
  readonly plan: PlotPlan;
  readonly name: string;
  readonly aid: string;
  readonly across: string;
  /** What the upright axis counts in, where its figures do not say it. */
  readonly counts: string;
  readonly tableHeads: readonly string[];
}

const BAND_WORDS = { few: LIMIT_WORDS.single, set: LIMIT_WORDS.yield } as const;

/** The law of a demonstration, with its joints as lettered points. */
export function LawPlot({ plan, name, aid, across, counts, tableHeads }: Props) {
  const { x, y, read, grid, points } = plan;
  return (
    <AxisFigure
      number={2}
      name={name}
      aid={aid}
      how={READING_KEYS}
      x={x.span}
      y={y.span}
      grid={grid}
      start={points.at(-1)?.x ?? x.span[0]}
      read={read}
      renderPlot={(frame) => <Plot plan={plan} frame={frame} across={across} counts={counts} />}
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

function Plot({ plan, frame, across, counts }: Pick<Props, 'plan' | 'across' | 'counts'> & { readonly frame: Frame }) {
  const id = useId();
  const { box } = frame;
  const place = (point: { readonly x: number; readonly y: number }) => ({ x: frame.x(point.x), y: frame.y(point.y) });
  const ticks = { x: plan.x.ticks, y: plan.y.ticks };
  const lines = plan.curves.map((curve) => ({ ...curve, drawn: curve.points.map(place) }));
  const points = plan.points.map((point) => ({ ...point, ...place(point) }));
  const balls = plan.balls.map((ball) => ({ ...ball, ...place(ball) }));
  const wishes: readonly LabelWish[] = [
    ...points.map(({ letter, text, x, y }): LabelWish => ({
      key: letter,
      text: `${letter}, ${text}`,
      look: 'bold',
      spots: [
        { x: x + 10, y: y - 8, anchor: 'start' },
        { x: x - 10, y: y - 8, anchor: 'end' },
        { x: x + 10, y: y + 18, anchor: 'start' },
        { x: x - 10, y: y + 18, anchor: 'end' },
        { x, y: y - 14, anchor: 'middle' },
        { x, y: y + 24, anchor: 'middle' },
      ],
    })),
    ...(counts === ''
      ? []
      : [
          {
            key: 'unit',
            text: counts,
            look: 'quiet' as const,
            spots: [
              { x: box.left + 8, y: box.top + 12, anchor: 'start' as const },
              { x: box.right - 6, y: box.top + 12, anchor: 'end' as const },
            ],
          },
        ]),
    ...plan.bands.map(({ name, from, to }): LabelWish => ({
      key: name,
      text: BAND_WORDS[name],
      look: 'quiet',
      spare: true,
      spots: [
        { x: box.right - 6, y: (frame.y(from) + frame.y(to)) / 2 + 4, anchor: 'end' },
        { x: box.left + 8, y: (frame.y(from) + frame.y(to)) / 2 + 4, anchor: 'start' },
      ],
    })),
  ];
  const labels = placeLabels(
    wishes,
    {
      inks: lines.flatMap(({ drawn }) => inkOf(drawn, box, LINE_WEIGHT)),
      marks: [...points, ...balls].map((point) => markBox(point, 7)),
    },
    box,
  );
  return (
    <>
      <PlotClip id={id} box={box} />
      <Grid frame={frame} {...ticks} />
      {plan.bands.map(({ name, from, to }) => (
        <g key={name} className={`chart-band ${name}`}>
          <rect x={box.left} y={frame.y(to)} width={box.right - box.left} height={frame.y(from) - frame.y(to)} />
          <path d={`M${box.left} ${frame.y(from)}H${box.right}`} />
        </g>
      ))}
      {plan.y.span[0] < 0 && <path className="chart-limit" d={`M${box.left} ${frame.y(0)}H${box.right}`} />}
      <g clipPath={`url(#${id})`}>
        {lines.map(({ key, isOwn, isGuided, drawn }) => (
          <path key={key} className={lookOf(isOwn, isGuided === true)} d={pathOf(drawn)} />
        ))}
      </g>
      <path className="law-drops" d={points.map(({ x, y }) => `M${x} ${box.bottom}V${y}H${box.left}`).join('')} />
      <Axes frame={frame} {...ticks} name={across} />
      <BallMarks marks={balls} />
      {points.map(({ letter, x, y }) => (
        <circle key={letter} className={letter === 'B' ? 'law-point own' : 'law-point'} cx={x} cy={y} r="5" />
      ))}
      <PlacedLabels labels={labels} />
    </>
  );
}
