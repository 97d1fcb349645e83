/** The curves of joints side by side, on the same axes. */
import { ticks as evenTicks } from 'd3';
import { firstFlexStrain, strainAtCycles } from '../../../core/design/curves.ts';
import type { Assessment } from '../../../core/design/assessment.ts';
import type { Letter } from '../../../core/lesson/demos/demo.ts';
import { asRad, degrees } from '../../../core/units.ts';
import { effortPoint } from '../../charts/effortCurve.ts';
import type { Span } from '../../charts/frame.ts';
import { levelMarks, levelsOver } from '../../charts/levels.ts';
import { jointPoint } from '../../charts/lifeCurves.ts';
import { isAnswered, runsOf, wayOf } from '../../charts/solved/way.ts';
import { amountText, effortText } from '../../text/amountText.ts';
import { manyCycles } from '../../text/countText.ts';
import { curveText, pastText } from '../../text/compareText.ts';
import { cycles, MM_PER_INCH, NO_BREAK, percent, type LengthUnit } from '../../text/numbers.ts';
import { heightAt, type PlacedPoint, type PlotPlan } from '../demos/plot.ts';

/** A joint with the letter of its column. */
export interface Lettered {
  readonly letter: Letter;
  readonly a: Assessment;
}

/** Lives on paper: from the first flexes to a little past where counting ends [decades]. */
const LIVES: Span = [1, 6.4];
/** Strains on paper: per cent that are figured. */
const STRAINS = [0.1, 0.3, 1, 3, 10, 30, 100].map((value) => value / 100);
const SAMPLES = 48;

/** The median curve of a joint's filament, in the peak strain of that joint, to where counting ends. */
function curveOf(a: Assessment): readonly PlacedPoint[] {
  const end = Math.min(LIVES[1], Math.log10(a.filament.life.maxReportableCycles));
  return Array.from({ length: SAMPLES + 1 }, (_, i) => {
    const x = LIVES[0] + ((end - LIVES[0]) * i) / SAMPLES;
    return { x, y: Math.log10(Math.min(strainAtCycles(a, 10 ** x), firstFlexStrain(a))) };
  });
}

function isAlike(one: readonly PlacedPoint[], other: readonly PlacedPoint[]): boolean {
  return one.length === other.length && one.every(({ y }, i) => Math.abs(y - (other[i]?.y ?? Number.NaN)) < 1e-9);
}

/** Where a joint stands: on its curve, or where the paper begins or counting ends, which it is beyond. */
function lifeAt(a: Assessment): PlacedPoint & { readonly text: string } {
  const { cycles: n, strain } = jointPoint(a);
  const most = a.filament.life.maxReportableCycles;
  const x = Math.min(Math.log10(most), Math.max(LIVES[0], Math.log10(Math.max(n, 1))));
  return { x, y: Math.log10(strain), text: n > most ? pastText(percent(strain), most) : percent(strain) };
}

/** Strain against life of all that are known; a curve that two joints share is drawn once. */
export function lifePlan(all: readonly Lettered[]): PlotPlan | undefined {
  if (all.length === 0) return undefined;
  const curves = all.map(({ letter, a }) => ({ key: letter, points: curveOf(a), isOwn: false }));
  const points = all.map(({ letter, a }) => ({ letter, ...lifeAt(a) }));
  const heights = [...curves.flatMap((curve) => curve.points), ...points].map(({ y }) => y);
  const [low, high] = [Math.min(...heights), Math.max(...heights)];
  const marks = STRAINS.map((strain) => Math.log10(strain));
  const from = marks.findLast((mark) => mark <= low) ?? marks[0] ?? low;
  const to = marks.find((mark) => mark >= high) ?? high;
  const shown = STRAINS.filter((strain) => Math.log10(strain) >= from && Math.log10(strain) <= to);
  const [first] = curves;
  const drawn = curves.filter(
    (curve, at) => !curves.slice(0, at).some((before) => isAlike(before.points, curve.points)),
  );
  const decades = Array.from({ length: Math.floor(LIVES[1] - LIVES[0]) + 1 }, (_, i) => LIVES[0] + i);
  return {
    x: { span: LIVES, ticks: decades.map((at) => ({ at, text: manyCycles(10 ** at) })) },
    y: {
      span: [from, to],
      ticks: shown.map((strain, i) => ({
        at: Math.log10(strain),
        text: `${Number((strain * 100).toPrecision(2))}${i === shown.length - 1 ? `${NO_BREAK}%` : ''}`,
      })),
    },
    curves: drawn,
    names: drawn.flatMap(({ key, points: line }) => {
      const at = line.at(Math.round(0.28 * SAMPLES));
      const filament = all.find(({ letter }) => letter === key)?.a.filament.name ?? '';
      const letters = curves.filter((curve) => isAlike(curve.points, line)).map((curve) => curve.key);
      return at ? [{ key, text: curveText(filament, letters), ...at }] : [];
    }),
    bands: [],
    points,
    balls: [],
    read: (x) => {
      const height = first && heightAt(first.points, x);
      const strain = height === undefined ? '' : `: ${first?.key}, ${percent(10 ** height)}`;
      return { text: `${cycles(10 ** x)} cycles${strain}`, ...(height === undefined ? {} : { height }) };
    },
    grid: { step: 0.5, fine: 0.05 },
  };
}

/** One joint's way to where it is wanted, in runs; dashed where a push alone would not hold it. */
function effortRuns(a: Assessment): readonly { readonly holds: boolean; readonly points: readonly PlacedPoint[] }[] {
  const { amount } = a.joint.movement;
  if (isAnswered(a) && a.travel === undefined) {
    const way = wayOf(a).forward.filter((point) => point.amount <= amount * (1 + 1e-9));
    return runsOf(way).map(({ holds, points }) => ({
      holds,
      points: points.map(({ amount: x, typical }) => ({ x, y: typical })),
    }));
  }
  const points = Array.from({ length: SAMPLES + 1 }, (_, i) => {
    const at = (amount * i) / SAMPLES;
    return { x: at, y: effortPoint(a, at).typical };
  });
  return [{ holds: true, points }];
}

/** Past the farthest movement the paper goes on by this share. */
const PAST = 1.08;

/** Effort against movement of all that are moved alike; nothing where none is. */
export function effortPlan(
  all: readonly Lettered[],
  measure: 'turn' | 'travel',
  unit: LengthUnit,
): PlotPlan | undefined {
  const alike = all.filter(({ a }) => a.drive.measure === measure);
  if (alike.length === 0) return undefined;
  const onPaper = (x: number) => (measure === 'turn' ? degrees(asRad(x)) : x);
  const ways = alike.map(({ letter, a }) => {
    const runs = effortRuns(a).map(({ holds, points }) => ({
      holds,
      points: points.map(({ x, y }) => ({ x: onPaper(x), y })),
    }));
    return { letter, a, runs, line: runs.flatMap(({ points }) => points) };
  });
  const end = PAST * Math.max(...alike.map(({ a }) => onPaper(a.joint.movement.amount)));
  const heights = ways.flatMap(({ line }) => line.map(({ y }) => y));
  const level = levelsOver(Math.min(0, ...heights) * 1.05, Math.max(...heights) * 1.05);
  const [first] = ways;
  return {
    x: acrossOf(end, measure, unit),
    y: { span: level.span, ticks: levelMarks(level) },
    curves: ways.flatMap(({ letter, runs }) =>
      runs.map(({ holds, points }, k) => ({ key: `${letter}${k}`, points, isOwn: false, isGuided: !holds })),
    ),
    bands: [],
    points: ways.flatMap(({ letter, line, a }) => {
      const last = line.at(-1);
      return last ? [{ letter, ...last, text: effortText(last.y, a.effort.measure) }] : [];
    }),
    balls: [],
    read: (x) => {
      const height = first && heightAt(first.line, x);
      const at = amountText(measure === 'turn' ? (x * Math.PI) / 180 : x, measure, unit);
      const effort = height === undefined || !first ? '' : `: ${first.letter}, ${effortText(height, measure)}`;
      return { text: `${at}${effort}`, ...(height === undefined ? {} : { height }) };
    },
    grid: { step: end / 24, fine: end / 240 },
  };
}

function acrossOf(end: number, measure: 'turn' | 'travel', unit: LengthUnit): PlotPlan['x'] {
  const per = measure === 'travel' && unit === 'inch' ? MM_PER_INCH : 1;
  const marks = evenTicks(0, end / per, 6);
  const after = measure === 'turn' ? '°' : '';
  return {
    span: [0, end],
    ticks: marks.map((at, i) => ({ at: at * per, text: `${at}${i === marks.length - 1 ? after : ''}` })),
  };
}
