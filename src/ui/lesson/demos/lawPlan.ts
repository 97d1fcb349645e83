/** The law of a demonstration as a plot. */
import { allowableNamed } from '../../../core/design/allowables.ts';
import type { Assessment } from '../../../core/design/assessment.ts';
import { LETTERS, type Demo, type Law, type Values } from '../../../core/lesson/demos/demo.ts';
import { lawCurve, lawFigure } from '../../../core/lesson/demos/lawCurve.ts';
import type { Span } from '../../charts/frame.ts';
import { EFFORT_UNIT } from '../../text/amountText.ts';
import type { LengthUnit } from '../../text/numbers.ts';
import { heightAt, type PlacedPoint, type PlotPlan } from './plot.ts';
import { acrossAxis, acrossOf, acrossText, onPaper, upAxis, upText, type Across } from './plotAxes.ts';
import { wayPlan } from './wayPlan.ts';

/** A demonstration with its law, as it stands. */
interface Told {
  readonly demo: Demo;
  readonly law: Law;
  readonly answers: readonly Assessment[];
  readonly values: Values;
  readonly across: Across;
}

/** Lives stand on decades. */
const upOn = ({ figure }: Law, y: number) => (figure === 'life' ? Math.log10(Math.max(1, y)) : y);

function curvesOf({ demo, law, values, across }: Told): PlotPlan['curves'] {
  return law.curves.map((at) => ({
    key: LETTERS[at] ?? '',
    isOwn: at === law.curves.at(-1),
    points: lawCurve(demo, law, at, values).map(({ x, y }) => ({ x: onPaper(across, x), y: upOn(law, y) })),
  }));
}

function pointsOf({ law, answers, values, across }: Told): PlotPlan['points'] {
  return law.places(values).flatMap((place, i) => {
    const [a, letter] = [answers[i], LETTERS[i]];
    const figure = a && lawFigure(law.figure, a);
    if (place === undefined || !a || !letter || figure === undefined) return [];
    const y = upOn(law, figure);
    return [{ letter, x: onPaper(across, place), y, text: upText(law.figure, y, a) }];
  });
}

function lawPlan(told: Told, own: Assessment, unit: LengthUnit): PlotPlan {
  const { law, across } = told;
  const [curves, points] = [curvesOf(told), pointsOf(told)];
  const all: readonly PlacedPoint[] = [...curves.flatMap((curve) => curve.points), ...points];
  const [xs, ys] = [all.map(({ x }) => x), all.map(({ y }) => y)];
  const span: Span = [across === 'mm' || across === 'whole' ? 0 : Math.min(...xs), Math.max(...xs)];
  const limit = (name: 'repeated' | 'yield') => allowableNamed(own.allowables, name).limit;
  const y = upAxis(law.figure, Math.max(...ys), Math.min(...ys), limit('repeated'));
  const line = curves.find(({ isOwn }) => isOwn)?.points ?? [];
  const wide = span[1] - span[0];
  return {
    x: acrossAxis(across, span, unit),
    y,
    curves,
    bands: law.figure === 'strain' ? bandsOf(limit('repeated'), limit('yield'), y.span[1]) : [],
    points,
    balls: [],
    read: (x) => {
      const height = heightAt(line, x);
      const words = height === undefined ? '' : `: ${upText(law.figure, height, own)}`;
      return { text: `${acrossText(across, x, unit)}${words}`, ...(height === undefined ? {} : { height }) };
    },
    grid: across === 'whole' ? { step: 1, fine: 1 } : { step: wide / 24, fine: wide / 240 },
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

/** The plot of a demonstration; nothing until what it shows is known. */
export function plotPlan(
  demo: Demo,
  answers: readonly Assessment[],
  values: Values,
  unit: LengthUnit,
): PlotPlan | undefined {
  const { law } = demo;
  if (!law) return wayPlan(answers, demo.shown?.(values) ?? 1, unit);
  const own = answers[law.curves.at(-1) ?? 0];
  return own && lawPlan({ demo, law, answers, values, across: acrossOf(demo, law) }, own, unit);
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
