/** Where the values of Fig. 1 and Fig. 2 lie on the screen. */
import { scaleLinear, scaleLog, ticks } from 'd3';
import type { Design } from '../../core/find/findAnswer.ts';
import { SURE } from '../../core/find/front.ts';
import type { Wanted } from '../../core/find/wanted.ts';
import { normalQuantile } from '../../core/numeric/normal.ts';
import { lengthTicks, type Tick } from '../charts/ticks.ts';
import { clamp, isNarrow, type Box, type Frame, type Size, type Span } from '../charts/frame.ts';
import { effortSet } from '../text/findText.ts';
import type { LengthUnit } from '../text/numbers.ts';

/** The chance axis ends at what counts as sure, and surer ones are ticks on its upper edge; it begins at the first of these that lies under what is wanted. */
const LOW_CHANCES: readonly number[] = [0.8, 0.7, 0.6, 0.4];
const CHANCE_TICKS: readonly number[] = [0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 0.95, 0.99, 0.999];

/** Room for the bar left of the figures and for the one under them [px]. */
const MARGIN = { left: 58, right: 12, top: 28, bottom: 62 } as const;
/** Bars of the brush lie so far outside the plot [px]. */
export const BAR_OUT = { left: 46, bottom: 30 } as const;

export interface TradeFrame extends Frame {
  readonly lowChance: number;
  /** Larger side of the room that is wanted, and whether it lies past the right edge [mm]. */
  readonly room: number;
  readonly isRoomFar: boolean;
}

/** Surer than the axis tells lies on its edge. */
export function heightOf({ y, lowChance }: TradeFrame, chance: number): number {
  return y(normalQuantile(clamp(chance, [lowChance, SURE])));
}

/** Where the chance axis begins. */
function lowChanceOf(wanted: number): number {
  return LOW_CHANCES.find((low) => low < wanted) ?? 0.4;
}

/** What the axis of the room spans [mm]: all designs and the room that is wanted, unless that lies far beyond them. */
function sizeSpan(designs: readonly Design[], room: number): { readonly span: Span; readonly isRoomFar: boolean } {
  const sizes = designs.map(({ figures }) => figures.size);
  const largest = Math.max(...sizes, 0);
  const smallest = Math.min(...sizes);
  const isRoomFar = largest > 0 && room > 2.5 * largest;
  const high = isRoomFar ? 1.3 * largest : Math.max(1.08 * room, 1.04 * largest);
  // From nought, unless that would leave most of the paper idle.
  const low = sizes.length > 0 && smallest > 0.45 * high ? 0.8 * smallest : 0;
  return { span: [low, high], isRoomFar };
}

export function tradeFrame(size: Size, designs: readonly Design[], wanted: Wanted): TradeFrame {
  const box: Box = {
    left: MARGIN.left,
    right: size.width - MARGIN.right,
    top: MARGIN.top,
    bottom: size.height - MARGIN.bottom,
  };
  const room = Math.max(wanted.room.along, wanted.room.across);
  const { span, isRoomFar } = sizeSpan(designs, room);
  const lowChance = lowChanceOf(wanted.movement.chance);
  return {
    box,
    x: scaleLinear().domain(span).range([box.left, box.right]),
    y: scaleLinear()
      .domain([normalQuantile(lowChance), normalQuantile(SURE)])
      .range([box.bottom, box.top]),
    lowChance,
    room,
    isRoomFar,
  };
}

export function sizeTicks({ x }: Frame, unit: LengthUnit, size: Size): readonly Tick[] {
  const [low = 0, high = 1] = x.domain();
  return lengthTicks([low, high], unit, isNarrow(size));
}

export function chanceTicks({ lowChance }: TradeFrame): readonly Tick[] {
  return CHANCE_TICKS.filter((chance) => chance >= lowChance - 1e-9).map((chance) => ({
    at: normalQuantile(chance),
    text: String(Number((100 * chance).toFixed(1))),
  }));
}

/** What efforts span, a little beyond the ends of those found [N·mm] or [N]. */
export function effortSpan(designs: readonly Design[]): Span {
  const efforts = designs.map(({ figures }) => figures.effort).filter((effort) => effort > 0);
  if (efforts.length === 0) return [1, 10];
  return [Math.min(...efforts) / 1.25, Math.max(...efforts) * 1.25];
}

export function effortScale(designs: readonly Design[], range: Span) {
  return scaleLog().domain(effortSpan(designs)).range(range);
}

/** 1, 2 and 5 in each decade, or decades alone where that is many. */
export function effortTicks([low, high]: Span): readonly Tick[] {
  const decades = Math.log10(high / low);
  const digits = decades > 2.5 ? [1] : decades > 1.2 ? [1, 3] : [1, 2, 5];
  const first = Math.floor(Math.log10(low));
  const round = Array.from({ length: Math.ceil(decades) + 2 }, (_, i) => 10 ** (first + i))
    .flatMap((decade) => digits.map((digit) => Number((digit * decade).toPrecision(3))))
    .filter((at) => at >= low && at <= high);
  // Within a part of a decade round figures are too few to read from.
  const shown = round.length >= FEWEST_TICKS ? round : ticks(low, high, FEWEST_TICKS + 1);
  return shown.map((at) => ({ at, text: String(at) }));
}

/** Two figures say what a logarithmic axis does between them, a third that it is one. */
const FEWEST_TICKS = 3;

/** Radii of the smallest and the largest effort [px]. */
const RADII: Span = [3.4, 10];

/** Radius of a ring: its area grows with the logarithm of the effort, which spans decades. */
export function ringRadius(designs: readonly Design[]): (effort: number) => number {
  const [low, high] = effortSpan(designs);
  const [least, most] = RADII;
  return (effort) => {
    const share = clamp(Math.log(effort / low) / Math.log(high / low), [0, 1]);
    return Math.sqrt(least ** 2 + share * (most ** 2 - least ** 2));
  };
}

const round = (value: number) => Number(value.toPrecision(1));

/** Three efforts for the key of the rings, round and apart. */
export function keyEfforts(designs: readonly Design[]): readonly number[] {
  const [low, high] = effortSpan(designs);
  return [...new Set([round(low * 1.25), round(Math.sqrt(low * high)), round(high / 1.25)])];
}

export function keyText(effort: number, measure: Wanted['measure'], isLast: boolean): string {
  return isLast ? effortSet(effort, measure) : String(effort);
}
