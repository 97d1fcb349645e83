/** The axes of a plot of a demonstration: what they count in, their figures, and what is said of a place on them. */
import { format, ticks as evenTicks } from 'd3';
import type { Assessment } from '../../../core/design/assessment.ts';
import type { Demo, Law, LawFigure } from '../../../core/lesson/demos/demo.ts';
import { asRad, degrees } from '../../../core/units.ts';
import type { Span } from '../../charts/frame.ts';
import { levelMarks, levelsOver } from '../../charts/levels.ts';
import { effortText } from '../../text/amountText.ts';
import { manyCycles, spanFigure, spanText } from '../../text/countText.ts';
import { cycles, length, MM_PER_INCH, NO_BREAK, percent, share, type LengthUnit } from '../../text/numbers.ts';
import type { PlotAxis } from './plot.ts';

const figure = format('~g');
/** Held times that are figured [h]. */
const HOURS: readonly number[] = [1 / 60, 1, 24, 168, 8760];

export type Across = 'mm' | 'degrees' | 'whole' | 'times' | 'hours';

export function acrossOf(demo: Demo, law: Law): Across {
  if (law.figure === 'push left') return 'hours';
  const kind = demo.handles.find(({ key }) => key === law.along)?.kind;
  if (kind === 'angle') return 'degrees';
  if (kind === 'count') return 'whole';
  return kind === 'scale' ? 'times' : 'mm';
}

/** What the paper counts in: degrees, decades of hours, and whatever else as it is. */
export function onPaper(across: Across, x: number): number {
  if (across === 'degrees') return degrees(asRad(x));
  return across === 'hours' ? Math.log10(x) : x;
}

export function acrossText(across: Across, x: number, unit: LengthUnit): string {
  if (across === 'mm') return length(x, unit, unit === 'mm' ? 1 : 2);
  if (across === 'degrees') return `${Number(x.toFixed(1))}°`;
  if (across === 'hours') return spanText(10 ** x);
  return across === 'whole' ? String(Math.round(x)) : `${x.toFixed(2)}${NO_BREAK}times`;
}

export function acrossAxis(across: Across, span: Span, unit: LengthUnit): PlotAxis {
  if (across === 'hours')
    return { span, ticks: HOURS.map((hours) => ({ at: Math.log10(hours), text: spanFigure(hours) })) };
  const per = across === 'mm' && unit === 'inch' ? MM_PER_INCH : 1;
  const [low, high] = span;
  const marks = evenTicks(low / per, high / per, 7).filter((at) => across !== 'whole' || Number.isInteger(at));
  const last = marks.length - 1;
  const after = across === 'degrees' ? '°' : '';
  return { span, ticks: marks.map((at, i) => ({ at: at * per, text: `${figure(at)}${i === last ? after : ''}` })) };
}

export function upText(what: LawFigure, y: number, a: Assessment): string {
  if (what === 'strain') return percent(y);
  if (what === 'effort') return effortText(y, a.effort.measure);
  return what === 'life' ? `${cycles(10 ** y)} cycles` : share(y);
}

export function upAxis(what: LawFigure, most: number, least: number, limit: number): PlotAxis {
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
