/** Where the handles of the brush can stand, and what they say. */
import type { Design } from '../../core/find/findAnswer.ts';
import { stepIn } from '../controls/settle.ts';
import type { Span } from '../charts/frame.ts';
import { evenStops } from '../charts/stops.ts';
import type { Measure } from '../text/amountText.ts';
import { effortText } from '../text/amountText.ts';
import { SHOWN, sizeText } from '../text/foundText.ts';
import type { LengthUnit } from '../text/numbers.ts';
import type { Brush } from './designs.ts';
import { SURE } from '../../core/find/front.ts';
import { effortSpan } from './tradeFrame.ts';

/** One press of an arrow key on the bar of the room [mm]. */
const SIZE_STEP = 0.5;
const CHANCE_STOPS: readonly number[] = [
  0.5,
  0.6,
  0.7,
  0.8,
  0.85,
  0.9,
  0.92,
  0.94,
  0.95,
  0.96,
  0.97,
  0.98,
  0.985,
  0.99,
  0.993,
  0.995,
  0.997,
  0.998,
  0.999,
  SURE,
];
/** Presses from one end of the bar of efforts to the other. */
const EFFORT_STEPS = 40;

export function sizeStops([low, high]: Span, unit: LengthUnit): readonly number[] {
  return [...evenStops([low, high], stepIn(unit, SIZE_STEP)).filter((stop) => stop > low && stop < high), high];
}

export function chanceStops(low: number): readonly number[] {
  return [low, ...CHANCE_STOPS.filter((stop) => stop > low + 1e-9)];
}

/** Even steps on the axis, in two figures. */
export function effortStops(designs: readonly Design[]): readonly number[] {
  const [low, high] = effortSpan(designs);
  const between = Array.from({ length: EFFORT_STEPS - 1 }, (_, i) => low * (high / low) ** ((i + 1) / EFFORT_STEPS));
  const round = between
    .map((effort) => Number(effort.toPrecision(2)))
    .filter((effort) => effort > low && effort < high);
  return [low, ...new Set(round), high];
}

/** An end of the bar lets all through, and is no limit. */
export function unlessEnd(value: number, end: number): number | undefined {
  return Math.abs(value - end) <= 1e-6 * Math.max(1, Math.abs(end)) ? undefined : value;
}

/** A chance that is let through, finer than one in a hundred where it has to be: “95”, “99.9 in 100”. */
function chanceFigure(chance: number): string {
  return `${Number((100 * chance).toFixed(chance > 0.985 ? 2 : 1))} in 100`;
}

export function limitsSaid(brush: Brush, measure: Measure, unit: LengthUnit): readonly string[] {
  const { size, chance, effortAtLeast, effortAtMost } = brush;
  return [
    ...(size === undefined ? [] : [SHOWN.size(sizeText(size, unit))]),
    ...(chance === undefined ? [] : [SHOWN.chance(chanceFigure(chance))]),
    ...(effortAtLeast === undefined ? [] : [SHOWN.effortAtLeast(effortText(effortAtLeast, measure))]),
    ...(effortAtMost === undefined ? [] : [SHOWN.effortAtMost(effortText(effortAtMost, measure))]),
  ];
}
