import { memo } from 'react';
import type { Assessment } from '../../../core/design/assessment.ts';
import { EFFORT_UNIT } from '../../text/amountText.ts';
import { OFF_THE_CHART } from '../../text/chartText.ts';
import { sideNow, SOLVED_AXES, wantedAtMost } from '../../text/solvedChartText.ts';
import { Axes, Grid } from '../Axes.tsx';
import { isInside, type Frame } from '../frame.ts';
import { JointMark } from '../JointMark.tsx';
import { LINE_WEIGHT, placeLabels, type LabelWish } from '../labels.ts';
import { levelMarks, type Level } from '../levels.ts';
import { pathOf } from '../paths.ts';
import { PlacedLabels } from '../PlacedLabels.tsx';
import { alongLimit, around, besideEdge, clearPaper, inkAcross, inkOf, markBox, offChart } from '../spots.ts';
import type { SideBySide } from './sideBySide.ts';

interface SideBySidePlotProps {
  readonly a: Assessment;
  readonly side: SideBySide;
  readonly level: Level;
  readonly frame: Frame;
}

export const SideBySidePlot = memo(function SideBySidePlot({ a, side, level, frame }: SideBySidePlotProps) {
  const { points, now, atMost } = side;
  const { box, x, y } = frame;
  const { measure } = a.drive;
  const ticks = { x: points.map(({ count }) => ({ at: count, text: String(count) })), y: levelMarks(level) };
  const places = points.map(({ count, effort }) => ({ x: x(count), y: y(effort) }));
  const shown = places.filter((place) => isInside(place, box));
  const off = places[shown.length];
  const last = shown.at(-1);
  // The line runs on to the edge of the paper, so that what is off it is seen to be.
  const edge =
    off && last ? [{ x: last.x + ((off.x - last.x) * (last.y - box.top)) / (last.y - off.y), y: box.top }] : [];
  const at = { x: x(now.count), y: y(now.effort) };
  const out = offChart(at, box);
  const stands = out?.at ?? at;
  const wanted = y(atMost);
  const text = sideNow(now.count, now.effort, measure);
  const wishes: LabelWish[] = [
    {
      key: 'unit',
      text: EFFORT_UNIT[measure],
      look: 'quiet',
      spots: [
        { x: box.left + 8, y: box.top + 12, anchor: 'start' },
        { x: box.right - 6, y: box.top + 12, anchor: 'end' },
      ],
    },
    out
      ? { key: 'now', text: `${text}, ${OFF_THE_CHART}`, look: 'pencil', spots: besideEdge(stands) }
      : { key: 'now', text, look: 'pencil', spots: around(stands, 15), far: () => clearPaper(stands, 9, box) },
    { key: 'wanted', text: wantedAtMost(atMost, measure), look: 'pencil', spots: alongLimit(box, wanted) },
  ];
  const inks = [...inkOf([...shown, ...edge], box, LINE_WEIGHT), ...inkAcross(wanted, box, LINE_WEIGHT)];
  const labels = placeLabels(wishes, { inks, marks: [markBox(stands, 10)] }, box);
  return (
    <>
      <Grid frame={frame} {...ticks} />
      <path className="chart-other" d={pathOf([...shown, ...edge])} />
      <path className="chart-wanted" d={`M${box.left} ${wanted}H${box.right}`} />
      {shown.map((place) => (
        <circle key={place.x} className="chart-count" cx={place.x} cy={place.y} r="3.4" />
      ))}
      <Axes frame={frame} {...ticks} name={SOLVED_AXES.sideBySide} />
      <PlacedLabels labels={labels} />
      <JointMark at={at} box={box} />
    </>
  );
});
