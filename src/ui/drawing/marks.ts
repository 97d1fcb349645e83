import type { Point } from '../../core/geometry/outline.ts';
import type { Box, Label } from './lettering.ts';
import { pair, through } from './sheet.ts';

/** An arrowhead: where its tip is and which way it points [deg], 0 to the right and turning with the clock. */
export interface Arrow extends Point {
  readonly turn: number;
}

/** Thin lines, heads and words of one or several dimensions, ready to draw. */
export interface Marks {
  /** `d` of all thin lines. */
  readonly lines: string;
  /** `d` of the short heavy dashes. */
  readonly heavy: string;
  readonly arrows: readonly Arrow[];
  readonly labels: readonly Label[];
}

export const NO_MARKS: Marks = { lines: '', heavy: '', arrows: [], labels: [] };

export function together(...all: readonly (Marks | undefined)[]): Marks {
  const some = all.filter((marks) => marks !== undefined);
  return {
    lines: some.map(({ lines }) => lines).join(''),
    heavy: some.map(({ heavy }) => heavy).join(''),
    arrows: some.flatMap(({ arrows }) => arrows),
    labels: some.flatMap(({ labels }) => labels),
  };
}

/** How far an extension line runs past its dimension line [px]. */
const OVERRUN = 6;
const OUTSIDE = 20;

const turnOf = (from: Point, to: Point) => (Math.atan2(to.y - from.y, to.x - from.x) * 180) / Math.PI;

/** A leader from words to the thing they are about: an arrow at its end, a short level landing at the words. */
export function leader(tip: Point, elbow: Point, landing: number, label: Label | undefined): Marks {
  return {
    ...NO_MARKS,
    lines: through([tip, elbow, { x: elbow.x + landing, y: elbow.y }]),
    arrows: [{ ...tip, turn: turnOf(elbow, tip) }],
    labels: label ? [label] : [],
  };
}

/** Two facing arrows on a line between `a` and `b`; from outside where they would not fit between. */
export function measured(a: Point, b: Point, outside: boolean): Marks {
  const turn = turnOf(a, b);
  const length = Math.hypot(b.x - a.x, b.y - a.y) || 1;
  const along = { x: (b.x - a.x) / length, y: (b.y - a.y) / length };
  const tail = outside ? OUTSIDE : 0;
  return {
    ...NO_MARKS,
    lines: through([
      { x: a.x - along.x * tail, y: a.y - along.y * tail },
      { x: b.x + along.x * tail, y: b.y + along.y * tail },
    ]),
    arrows: [
      { ...a, turn: outside ? turn : turn + 180 },
      { ...b, turn: outside ? turn + 180 : turn },
    ],
  };
}

/** A level dimension at height `y` between two places whose extension lines begin at `from`. */
export function levelDimension(x0: number, x1: number, y: number, from: number, label: Label, outside: boolean): Marks {
  const end = y + Math.sign(y - from) * OVERRUN;
  const extension = [x0, x1].map((x) => `M${pair({ x, y: from })}V${end.toFixed(2)}`).join('');
  const marks = measured({ x: x0, y }, { x: x1, y }, outside);
  return { ...marks, lines: marks.lines + extension, labels: [label] };
}

/** An upright dimension at `x` between two heights whose extension lines begin at `from`. */
export function uprightDimension(y0: number, y1: number, x: number, from: number, label: Label): Marks {
  const end = x + Math.sign(x - from) * OVERRUN;
  const extension = [y0, y1].map((y) => `M${pair({ x: from, y })}H${end.toFixed(2)}`).join('');
  const marks = measured({ x, y: y0 }, { x, y: y1 }, false);
  return { ...marks, lines: marks.lines + extension, labels: [label] };
}

/** A box round a point. */
export function boxAround({ x, y }: Point, reach: number): Box {
  return { x: x - reach, y: y - reach, width: 2 * reach, height: 2 * reach };
}
