/** The axes that filaments are compared on: places as shares of the width, so that nothing waits for a measurement. */
import { scaleLinear, scaleLog } from 'd3';
import type { Quantity } from '../../core/material/types.ts';
import { bareFigure } from '../text/figureText.ts';

interface Tick {
  readonly share: number;
  readonly text: string;
}

export interface RowAxis {
  /** Where a value lies, 0 at the left end to 1 at the right one. */
  readonly at: (value: number) => number;
  readonly ticks: readonly Tick[];
}

export type AxisKind = 'log' | 'linear';

/** Bars end a little inside their column. */
const INSET = 0.03;
const MOST_TICKS = 4;
const PER_DECADE: readonly number[] = [1, 3];

/** Every figure of some quantities: typical, low and high. */
export function figuresOf(quantities: readonly (Quantity | undefined)[]): readonly number[] {
  return quantities.flatMap((one) => (one ? [one.low ?? one.typical, one.typical, one.high ?? one.typical] : []));
}

function logTicks([low, high]: readonly [number, number]): readonly number[] {
  const decades = Array.from({ length: 14 }, (_, i) => 10 ** (i - 6));
  const inside = (values: readonly number[]) => values.filter((value) => value >= low && value <= high);
  const fine = inside(decades.flatMap((decade) => PER_DECADE.map((digit) => Number((digit * decade).toPrecision(6)))));
  if (fine.length <= MOST_TICKS) return fine;
  const whole = inside(decades);
  const every = Math.ceil(whole.length / MOST_TICKS);
  return whole.filter((_, i) => i % every === 0);
}

/**
 * An axis on which all of these figures have a place.
 *
 * @param kind - ratios or differences
 * @param figures - what must be on it; for ratios above 0
 * @param scale - what a figure is multiplied by before it is written: 100 for strains
 * @param always - figures that it reaches at least
 */
export function rowAxis(
  kind: AxisKind,
  figures: readonly number[],
  scale = 1,
  always: readonly number[] = [],
): RowAxis {
  const all = [...figures, ...always].filter((value) => kind === 'linear' || value > 0);
  const span = [Math.min(...all), Math.max(...all)] as const;
  const made = kind === 'log' ? scaleLog() : scaleLinear();
  const place = made
    .domain(span)
    .range([INSET, 1 - INSET])
    .clamp(true);
  const values =
    kind === 'log'
      ? logTicks(span)
      : scaleLinear()
          .domain(span)
          .ticks(MOST_TICKS - 1);
  return {
    at: place,
    ticks: values
      .filter((value) => value >= span[0] && value <= span[1])
      .map((value) => ({ share: place(value), text: bareFigure(value * scale) })),
  };
}

/** A share as SVG and CSS take it. */
export function pct(share: number): string {
  return `${(share * 100).toFixed(2)}%`;
}
