/** Where a reading cursor can stand, and how keys move it. */
import { bisector } from 'd3';
import type { Mm } from '../../core/units.ts';
import { clamp, type Span } from './frame.ts';

const bisect = bisector((stop: number) => stop);

/** Clears the binary dust of a multiple: 0.1 × 3 → 0.3. */
function tidy(value: number): number {
  return Number(value.toFixed(6));
}

/** Whole steps from the low end to the high end, both included when they are steps themselves. */
export function evenStops([low, high]: Span, step: number): readonly number[] {
  const first = Math.ceil(low / step - 1e-9);
  const last = Math.floor(high / step + 1e-9);
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => tidy((first + i) * step));
}

/** Ten stops a decade that can be said in two figures: 1, 1.2, 1.6, 2, 2.5, 3, 4, 5, 6, 8. */
const TO_THE_DECADE: readonly number[] = [1, 1.2, 1.6, 2, 2.5, 3, 4, 5, 6, 8];

export function cycleStops([low, high]: Span): readonly number[] {
  const decades = Array.from({ length: Math.round(Math.log10(high / low)) + 1 }, (_, i) => low * 10 ** i);
  return decades.flatMap((decade) => TO_THE_DECADE.map((digit) => tidy(digit * decade))).filter((at) => at <= high);
}

/** A number of cycles that can be said. */
export function twoFigures(cycles: number): number {
  return Number(cycles.toPrecision(2));
}

/** The stop nearest to a value; a value beyond the ends gets the end. */
function nearestIndex(stops: readonly number[], value: number): number {
  return bisect.center(stops, value);
}

export function snapped(length: Mm, step: Mm, limits: Span): Mm {
  return tidy(clamp(Math.round(length / step) * step, limits));
}

export type Move = { readonly by: number } | 'first' | 'last';

/** What a key does to the cursor; nothing for keys that are not its own. */
export function moveOf(key: string, shift: boolean): Move | undefined {
  const far = shift ? 10 : 1;
  const moves: Readonly<Record<string, Move>> = {
    ArrowRight: { by: far },
    ArrowLeft: { by: -far },
    PageUp: { by: 10 },
    PageDown: { by: -10 },
    Home: 'first',
    End: 'last',
  };
  return moves[key];
}

/** The stop that a move leads to; from between two stops a single step goes to the next one that way. */
export function movedTo(stops: readonly number[], from: number, move: Move): number {
  const ends = { first: 0, last: stops.length - 1 };
  if (typeof move === 'string') return stops[ends[move]] ?? from;
  const nearest = nearestIndex(stops, from);
  const passed = move.by > 0 ? (stops[nearest] ?? from) > from + 1e-9 : (stops[nearest] ?? from) < from - 1e-9;
  const index = nearest + move.by - (passed ? Math.sign(move.by) : 0);
  return stops[clamp(index, [0, stops.length - 1])] ?? from;
}
