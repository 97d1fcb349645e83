import { format, ticks } from 'd3';
import type { Measure } from '../text/amountText.ts';
import { manyCycles } from '../text/countText.ts';
import { MM_PER_INCH, NO_BREAK, share, type LengthUnit } from '../text/numbers.ts';
import type { Span } from './frame.ts';

/** A mark on an axis; one without words is marked and not figured. */
export interface Tick {
  readonly at: number;
  readonly text: string;
}

const MM_PER: Readonly<Record<LengthUnit, number>> = { mm: 1, inch: MM_PER_INCH };

const figure = format('~g');

function steps([low, high]: Span, step: number): number[] {
  const count = Math.floor((high - low) / step + 1e-9);
  return Array.from({ length: count + 1 }, (_, i) => Number((low + i * step).toPrecision(12)));
}

/** Every second figure is left out on narrow paper; the last stays, because it carries the unit. */
function thinned(marks: readonly Tick[], narrow: boolean): readonly Tick[] {
  if (!narrow) return marks;
  return marks.map((mark, i) => ((marks.length - 1 - i) % 2 === 0 ? mark : { ...mark, text: '' }));
}

/** Decades of cycles: “1 000”, “2 M”. */
export function cycleTicks([low, high]: Span, narrow: boolean): readonly Tick[] {
  const decades = steps([Math.log10(low), Math.log10(high)], 1).map((power) => 10 ** power);
  return thinned(
    decades.map((at) => ({ at, text: manyCycles(at) })),
    narrow,
  );
}

/** 1 and 3 in each decade of strain, as per cent; the unit stands on the top figure. */
export function logStrainTicks([low, high]: Span): readonly Tick[] {
  const all = [1e-4, 3e-4, 1e-3, 3e-3, 0.01, 0.03, 0.1, 0.3, 1, 3, 10];
  const shown = all.filter((at) => at >= low * 0.999 && at <= high * 1.001);
  return shown.map((at, i) => ({ at, text: percentFigure(at, i === shown.length - 1) }));
}

/** Quarters of a linear strain axis. */
export function strainTicks(top: number): readonly Tick[] {
  return [0, 1, 2, 3, 4].map((i) => ({ at: (top * i) / 4, text: percentFigure((top * i) / 4, i === 4) }));
}

function percentFigure(strain: number, withUnit: boolean): string {
  return `${figure(Number((strain * 100).toPrecision(6)))}${withUnit ? `${NO_BREAK}%` : ''}`;
}

/** Round figures in the chosen unit; each mark lies at a length in mm. */
export function lengthTicks([low, high]: Span, unit: LengthUnit, narrow: boolean): readonly Tick[] {
  const per = MM_PER[unit];
  return ticks(low / per, high / per, narrow ? 4 : 6).map((value) => ({ at: value * per, text: figure(value) }));
}

export function angleTicks(topDeg: number, narrow: boolean): readonly Tick[] {
  const step = [5, 10, 15, 30].find((size) => topDeg / size <= 7) ?? 60;
  const marks = steps([0, topDeg], step);
  return thinned(
    marks.map((at, i) => ({ at, text: `${figure(at)}${i === marks.length - 1 ? '°' : ''}` })),
    narrow,
  );
}

/** Figures under an axis of amounts: degrees, or lengths in the chosen unit. */
export function amountTicks(top: number, measure: Measure, unit: LengthUnit, narrow: boolean): readonly Tick[] {
  return measure === 'turn' ? angleTicks(top, narrow) : lengthTicks([0, top], unit, narrow);
}

/** Quarters of a whole, in per cent; the unit stands on the last figure. */
export const QUARTERS: readonly Tick[] = [0, 0.25, 0.5, 0.75, 1].map((at) => ({
  at,
  text: at === 1 ? share(at) : String(100 * at),
}));
