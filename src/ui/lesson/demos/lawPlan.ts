/** The plot of a demonstration as data: its axes, curves and lettered points, in what the paper counts in. */
import { format, ticks as evenTicks } from 'd3';
import { allowableNamed } from '../../../core/design/allowables.ts';
import type { Assessment } from '../../../core/design/assessment.ts';
import {
  LETTERS,
  type Demo,
  type Law,
  type LawFigure,
  type Letter,
  type Values,
} from '../../../core/lesson/demos/demo.ts';
import { lawCurve, lawFigure } from '../../../core/lesson/demos/lawCurve.ts';
import { asRad, degrees } from '../../../core/units.ts';
import type { Span } from '../../charts/frame.ts';
import { levelMarks, levelsOver } from '../../charts/levels.ts';
import { marksOf, type WayMark } from '../../charts/solved/marks.ts';
import { isAnswered, runsOf, wayOf } from '../../charts/solved/way.ts';
import type { Tick } from '../../charts/ticks.ts';
import { effortText, EFFORT_UNIT } from '../../text/amountText.ts';
import { manyCycles, spanFigure, spanText } from '../../text/countText.ts';
import { cycles, length, MM_PER_INCH, NO_BREAK, percent, share, type LengthUnit } from '../../text/numbers.ts';

interface PlacedPoint {
  readonly x: number;
  readonly y: number;
}

interface PlotAxis {
  readonly span: Span;
  readonly ticks: readonly Tick[];
}

export interface PlotPlan {
  readonly x: PlotAxis;
  readonly y: PlotAxis;
  readonly curves: readonly {
    readonly key: string;
    readonly points: readonly PlacedPoint[];
    readonly isOwn: boolean;
    readonly isGuided?: boolean;
  }[];
  readonly bands: readonly { readonly name: 'few' | 'set'; readonly from: number; readonly to: number }[];
  readonly points: readonly (PlacedPoint & { readonly letter: Letter; readonly text: string })[];
  readonly balls: readonly (PlacedPoint & Pick<WayMark, 'kind'>)[];
  /** What is read at a place across: its words, and its height. */
  readonly read: (x: number) => { readonly text: string; readonly height?: number };
  readonly grid: { readonly step: number; readonly fine: number };
}

const figure = format('~g');
/** Held times that are figured [h]. */
const HOURS: readonly number[] = [1 / 60, 1, 24, 168, 8760];

type Across = 'mm' | 'degrees' | 'whole' | 'times' | 'hours';

function acrossOf(demo: Demo, law: Law): Across {
  if (law.figure === 'push left') return 'hours';
  const kind = demo.handles.find(({ key }) => key === law.along)?.kind;
  if (kind === 'angle') return 'degrees';
  if (kind === 'count') return 'whole';
  return kind === 'scale' ? 'times' : 'mm';
}

/** What the paper counts in: degrees, decades of hours, and whatever else as it is. */
function onPaper(across: Across, x: number): number {
  if (across === 'degrees') return degrees(asRad(x));
  return across === 'hours' ? Math.log10(x) : x;
}

function acrossText(across: Across, x: number, unit: LengthUnit): string {
  if (across === 'mm') return length(x, unit, unit === 'mm' ? 1 : 2);
  if (across === 'degrees') return `${Number(x.toFixed(1))}°`;
  if (across === 'hours') return spanText(10 ** x);
  return across === 'whole' ? String(Math.round(x)) : `${x.toFixed(2)}${NO_BREAK}times`;
}

function acrossAxis(across: Across, span: Span, unit: LengthUnit): PlotAxis {
  if (across === 'hours')
    return { span, ticks: HOURS.map((hours) => ({ at: Math.log10(hours), text: spanFigure(hours) })) };
  const per = across === 'mm' && unit === 'inch' ? MM_PER_INCH : 1;
  const [low, high] = span;
  const marks = evenTicks(low / per, high / per, 7).filter((at) => across !== 'whole' || Number.isInteger(at));
  const last = marks.length - 1;
  const after = across === 'degrees' ? '°' : '';
  return { span, ticks: marks.map((at, i) => ({ at: at * per, text: `${figure(at)}${i === last ? after : ''}` })) };
}

function upText(what: LawFigure, y: number, a: Assessment): string {
  if (what === 'strain') return percent(y);
  if (what === 'effort') return effortText(y, a.effort.measure);
  return what === 'life' ? `${cycles(10 ** y)} cycles` : share(y);
}

function upAxis(what: LawFigure, most: number, least: number, limit: number): PlotAxis {
  if (what === 'life') {
    const span: Span = [Math.floor(least + 1e-9), Math.ceil(most - 1e-9)];
    const decades = Array.from({ length: span[1] - span[0] + 1 }, (_, i) => span[0] + i);
    return { span, ticks: decades.map((at) => ({ at, text: manyCycles(10 ** at) })) };
  }
  const per = what === 'effort' ? 1 : 0.01;
  const level = levelsOver(
    0,
    what === 'push left' ? 1 : Math.max(most * 1.05, what === 'strain' ? limit * 1.4 : 0),
    per,
  );
  const marks = levelMarks(level);
  return {
    span: level.span,
    ticks: marks.map((mark, i) =>
      i === marks.length - 1 && what !== 'effort' ? { ...mark, text: `${mark.text}${NO_BREAK}%` } : mark,
    ),
  };
}

/** Height of a line through points at a place between two of them. */
function heightAt(points: readonly PlacedPoint[], x: number): number | undefined {
  const next = points.findIndex((point) => point.x >= x - 1e-9);
  const [before, after] = [points[next - 1], points[next]];
  if (!after) return undefined;
  if (!before) return after.x - x < 1e-6 ? after.y : undefined;
  return before.y + ((x - before.x) / (after.x - before.x)) * (after.y - before.y);
}

function lawPlan(
  demo: Demo,
  law: Law,
  answers: readonly Assessment[],
  values: Values,
  unit: LengthUnit,
): PlotPlan | undefined {
  const [first] = answers;
  const own = answers[law.curves.at(-1) ?? 0];
  if (!first || !own) return undefined;
  const across = acrossOf(demo, law);
  const up = (y: number) => (law.figure === 'life' ? Math.log10(Math.max(1, y)) : y);
  const curves = law.curves.map((at) => ({
    key: LETTERS[at] ?? '',
    isOwn: at === law.curves.at(-1),
    points: lawCurve(demo, law, at, values).map(({ x, y }) => ({ x: onPaper(across, x), y: up(y) })),
  }));
  const points = law.places(values).flatMap((place, i) => {
    const a = answers[i];
    const y = a && lawFigure(law.figure, a);
    if (place === undefined || !a || y === undefined) return [];
    return [{ letter: LETTERS[i]!, x: onPaper(across, place), y: up(y), text: upText(law.figure, up(y), a) }];
  });
  const all = [...curves.flatMap((curve) => curve.points), ...points];
  const ys = all.map(({ y }) => y);
  const xs = all.map(({ x }) => x);
  const span: Span = [across === 'mm' || across === 'whole' ? 0 : Math.min(...xs), Math.max(...xs)];
  const [repeated, bent] = (['repeated', 'yield'] as const).map((name) => allowableNamed(own.allowables, name).limit);
  const y = upAxis(law.figure, Math.max(...ys), Math.min(...ys), repeated ?? 0);
  const line = curves.find(({ isOwn }) => isOwn)?.points ?? [];
  return {
    x: acrossAxis(across, span, unit),
    y,
    curves,
    bands: law.figure === 'strain' ? bandsOf(repeated ?? 0, bent ?? 0, y.span[1]) : [],
    points,
    balls: [],
    read: (x) => {
      const height = heightAt(line, x);
      const words = height === undefined ? '' : `: ${upText(law.figure, height, own)}`;
      return { text: `${acrossText(across, x, unit)}${words}`, ...(height === undefined ? {} : { height }) };
    },
    grid: {
      step: across === 'whole' ? 1 : (span[1] - span[0]) / 24,
      fine: across === 'whole' ? 1 : (span[1] - span[0]) / 240,
    },
  };
}

function bandsOf(repeated: number, bent: number, top: number): PlotPlan['bands'] {
  return (
    [
      { name: 'few', from: repeated, to: Math.min(bent, top) },
      { name: 'set', from: bent, to: top },
    ] as const
  ).filter(({ from, to }) => to > from);
}

/** Effort all along the way of joints that the solver has answered, and where they rest. */
function wayPlan(answers: readonly Assessment[], shownShare: number, unit: LengthUnit): PlotPlan | undefined {
  const solved = answers.filter(isAnswered);
  if (solved.length < answers.length || solved.length === 0) return undefined;
  const ends = solved.map((a) => a.joint.movement.amount * 1.08);
  const end = Math.max(...ends);
  const ways = solved.map((a) => {
    const way = wayOf(a);
    const cut = { ...way, forward: way.forward.filter(({ amount }) => amount <= end) };
    return { a, way: cut, marks: marksOf(cut).filter(({ kind, amount }) => kind === 'rests' && amount > 0) };
  });
  const curves = ways.flatMap(({ way }, i) =>
    runsOf(way.forward).map(({ holds, points }, k) => ({
      key: `${LETTERS[i]}${k}`,
      isOwn: i === 0,
      isGuided: !holds,
      points: points.map(({ amount, typical }) => ({ x: amount, y: typical })),
    })),
  );
  const efforts = curves.flatMap(({ points }) => points.map(({ y }) => y));
  const level = levelsOver(Math.min(...efforts) * 1.05, Math.max(...efforts) * 1.05);
  const [first] = ways;
  const line = (first?.way.forward ?? []).map(({ amount, typical }) => ({ x: amount, y: typical }));
  return {
    x: acrossAxis('mm', [0, end], unit),
    y: { span: level.span, ticks: levelMarks(level) },
    curves,
    bands: [],
    points: ways.flatMap(({ a, way }, i) => {
      const amount = a.joint.movement.amount * shownShare;
      const y = heightAt(
        way.forward.map((point) => ({ x: point.amount, y: point.typical })),
        amount,
      );
      return y === undefined ? [] : [{ letter: LETTERS[i]!, x: amount, y, text: effortText(y, a.effort.measure) }];
    }),
    balls: ways.flatMap(({ marks }) => marks.map(({ kind, amount, effort }) => ({ kind, x: amount, y: effort }))),
    read: (x) => {
      const height = heightAt(line, x);
      const words = height === undefined || !first ? '' : `: ${effortText(height, first.a.effort.measure)}`;
      return { text: `${length(x, unit, 1)}${words}`, ...(height === undefined ? {} : { height }) };
    },
    grid: { step: end / 24, fine: end / 240 },
  };
}

/** The plot of a demonstration; nothing until what it shows is known. */
export function plotPlan(
  demo: Demo,
  answers: readonly Assessment[],
  values: Values,
  unit: LengthUnit,
): PlotPlan | undefined {
  if (demo.law) return lawPlan(demo, demo.law, answers, values, unit);
  return wayPlan(answers, demo.shown?.(values) ?? 1, unit);
}

/** What runs across, with its unit where it is a length. */
export function acrossName(demo: Demo, across: string, unit: LengthUnit): string {
  const isLength = demo.law === undefined || acrossOf(demo, demo.law) === 'mm';
  return isLength ? `${across}, ${unit === 'mm' ? 'mm' : 'in'}` : across;
}

/** What the upright axis counts in, where its figures do not say it: “N·mm”. */
export function upUnit(demo: Demo, [first]: readonly Assessment[]): string {
  if (demo.law?.figure === 'life') return 'cycles';
  if (demo.law && demo.law.figure !== 'effort') return '';
  return first ? EFFORT_UNIT[first.effort.measure] : '';
}
