import { scaleLinear, scaleLog, type ScaleContinuousNumeric } from 'd3';

export type Span = readonly [low: number, high: number];

/** A place on the figure [CSS px], from its upper left corner. */
export interface Px {
  readonly x: number;
  readonly y: number;
}

export interface Size {
  readonly width: number;
  readonly height: number;
}

/** The plotting area [CSS px]. */
export interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

type Axis = ScaleContinuousNumeric<number, number>;

/** Where a figure's values lie on the screen. */
export interface Frame {
  readonly box: Box;
  readonly x: Axis;
  readonly y: Axis;
}

interface AxisKind {
  readonly span: Span;
  readonly kind: 'linear' | 'log';
}

/** Room left of the axis for “100 %”, below it for figures and the axis's name. */
const MARGIN = { left: 46, right: 14, top: 8, bottom: 36 } as const;

function axis({ span, kind }: AxisKind, range: Span): Axis {
  return (kind === 'log' ? scaleLog() : scaleLinear()).domain(span).range(range);
}

/** The plotting area and both scales; `right` is the room kept for labels at the ends of curves. */
export function frameOf(size: Size, x: AxisKind, y: AxisKind, right: number = MARGIN.right): Frame {
  const box: Box = {
    left: MARGIN.left,
    right: size.width - right,
    top: MARGIN.top,
    bottom: size.height - MARGIN.bottom,
  };
  return { box, x: axis(x, [box.left, box.right]), y: axis(y, [box.bottom, box.top]) };
}

export function clamp(value: number, [low, high]: Span): number {
  return Math.min(Math.max(value, low), high);
}

/** The nearest place inside the plotting area, that far from its edges. */
export function clampInto(at: Px, { left, right, top, bottom }: Box, inset = 0): Px {
  return { x: clamp(at.x, [left + inset, right - inset]), y: clamp(at.y, [top + inset, bottom - inset]) };
}

export function isInside(at: Px, { left, right, top, bottom }: Box): boolean {
  return at.x >= left && at.x <= right && at.y >= top && at.y <= bottom;
}

/** On paper narrower than this [px] every second figure of a crowded axis is left out. */
const NARROW = 360;
export function isNarrow(size: Size | undefined): boolean {
  return size !== undefined && size.width < NARROW;
}
