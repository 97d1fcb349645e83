import type { Assessment } from '../../../core/design/assessment.ts';
import { LETTERS } from '../../../core/lesson/demos/demo.ts';
import { levelMarks, levelsOver } from '../../charts/levels.ts';
import { marksOf } from '../../charts/solved/marks.ts';
import { isAnswered, runsOf, wayOf, type Answered, type Way } from '../../charts/solved/way.ts';
import { effortText } from '../../text/amountText.ts';
import { length, type LengthUnit } from '../../text/numbers.ts';
import { heightAt, type PlacedPoint, type PlotPlan } from './plot.ts';
import { acrossAxis } from './plotAxes.ts';

/** The paper goes on a little past where the joints are pushed to. */
const PAST = 1.08;

const onPlot = ({ forward }: Way): readonly PlacedPoint[] =>
  forward.map(({ amount, typical }) => ({ x: amount, y: typical }));

/** Effort all along the way of joints that the solver has answered, and where they rest; nothing before it has. */
export function wayPlan(answers: readonly Assessment[], share: number, unit: LengthUnit): PlotPlan | undefined {
  const solved = answers.filter(isAnswered);
  if (solved.length < answers.length || solved.length === 0) return undefined;
  const end = PAST * Math.max(...solved.map((a) => a.joint.movement.amount));
  const ways = solved.map((a) => {
    const way = wayOf(a);
    return { a, way: { ...way, forward: way.forward.filter(({ amount }) => amount <= end) } };
  });
  const efforts = ways.flatMap(({ way }) => way.forward.map(({ typical }) => typical));
  const level = levelsOver(Math.min(...efforts) * 1.05, Math.max(...efforts) * 1.05);
  const [first] = ways;
  const line = first ? onPlot(first.way) : [];
  return {
    x: acrossAxis('mm', [0, end], unit),
    y: { span: level.span, ticks: levelMarks(level) },
    curves: ways.flatMap(({ way }, i) => curvesOf(way, i)),
    bands: [],
    points: ways.flatMap((one, i) => pointOf(one, i, share)),
    balls: ways.flatMap(({ way }) => restsOf(way)),
    read: (x) => {
      const height = heightAt(line, x);
      const words = height === undefined || !first ? '' : `: ${effortText(height, first.a.effort.measure)}`;
      return { text: `${length(x, unit, 1)}${words}`, ...(height === undefined ? {} : { height }) };
    },
    grid: { step: end / 24, fine: end / 240 },
  };
}

/** The way of one joint, cut where a push alone would not hold it. */
function curvesOf(way: Way, at: number): PlotPlan['curves'] {
  return runsOf(way.forward).map(({ holds, points }, k) => ({
    key: `${LETTERS[at]}${k}`,
    isOwn: at === 0,
    isGuided: !holds,
    points: points.map(({ amount, typical }) => ({ x: amount, y: typical })),
  }));
}

/** Where a joint stands that is pushed by a share of its amount. */
function pointOf(
  { a, way }: { readonly a: Answered; readonly way: Way },
  at: number,
  share: number,
): PlotPlan['points'] {
  const x = a.joint.movement.amount * share;
  const y = heightAt(onPlot(way), x);
  const letter = LETTERS[at];
  return y === undefined || !letter ? [] : [{ letter, x, y, text: effortText(y, a.effort.measure) }];
}

/** Where it comes to rest away from the start. */
function restsOf(way: Way): PlotPlan['balls'] {
  return marksOf(way)
    .filter(({ kind, amount }) => kind === 'rests' && amount > 0)
    .map(({ kind, amount, effort }) => ({ kind, x: amount, y: effort }));
}
