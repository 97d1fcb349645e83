import type { Point } from '../../../core/geometry/outline.ts';
import { along, distance, from, left, unit } from '../../../core/geometry/vector.ts';
import { labelBox, letteringWidth, type Label } from '../lettering.ts';
import { boxAround, measured, type Marks } from '../marks.ts';
import { through } from '../sheet.ts';
import { densified } from '../polygon.ts';
import { hitsFigure, isClearWay, isFree, isFreeOfWords, keep, keepLabel, keepLine, type Room } from '../room.ts';

/** A dimension line that has found its place, with the end that can be dragged [px]. */
export interface PlacedLine {
  readonly marks: Marks;
  readonly end: Point;
}

/** Between a point and where its extension line begins, and how far that runs past the dimension line [px]. */
const GAP = 4;
const OVERRUN = 6;
/** Dimension lines are tried so far off what they measure [px]. */
const NEAREST = 22;
const FURTHEST = 190;
const STEP = 8;
/** A figure that does not fit over its line stands so far beside it, past the arrow and the handle [px]. */
const BESIDE = 28;
/** The side that the family proposes is worth so much distance [px]. */
const OWN_SIDE = 40;

/**
 * A dimension between two places on the sheet [px], off to the side that lies `side` of the way from one to the other,
 * or to the other where that is much nearer; nothing where no place is clear.
 */
export function placeDistance(
  room: Room,
  a: Point,
  b: Point,
  side: Point,
  text: string,
  reach: number,
): PlacedLine | undefined {
  if (!(distance(a, b) > 1)) return undefined;
  const tried = [1, -1]
    .flatMap((sign) =>
      Array.from({ length: Math.floor((FURTHEST - NEAREST) / STEP) }, (_, k) => ({ sign, off: NEAREST + k * STEP })),
    )
    .toSorted((p, q) => p.off + (p.sign < 0 ? OWN_SIDE : 0) - q.off - (q.sign < 0 ? OWN_SIDE : 0));
  for (const { sign, off } of tried) {
    const out = { x: sign * side.x, y: sign * side.y };
    const [p, q] = [along(a, out, off), along(b, out, off)];
    for (const { label, outside } of lettering(p, q, out, text)) {
      const way = unit(from(p, q));
      const tail = outside ? 22 : 0;
      const [start, end] = [along(p, way, -tail), along(q, way, tail)];
      if (!isFree(room, labelBox(label)) || !isClearWay(room.paper, start, end)) continue;
      // Figures and handles keep off extension lines too, which may cross whatever else there is.
      if (!isFreeOfWords(room, labelBox(label)) || !isFreeOfWords(room, boxAround(q, reach))) continue;
      const extensions = [
        [a, p],
        [b, q],
      ] as const;
      if (extensions.some(([foot, head]) => hitsFigure(room, foot, along(head, out, OVERRUN)))) continue;
      if (reach > 0 && !isFree(room, boxAround(q, reach), 0)) continue;
      keepLine(room, [start, end]);
      keepLabel(room, label);
      if (reach > 0) keep(room, boxAround(q, reach));
      const lines = extensions.map(([foot, head]) => through([along(foot, out, GAP), along(head, out, OVERRUN)]));
      for (const [foot, head] of extensions) room.words.ink(densified([along(foot, out, GAP), head], 4));
      const arrows = measured(p, q, outside);
      return { marks: { ...arrows, lines: arrows.lines + lines.join(''), labels: [label] }, end: q };
    }
  }
  return undefined;
}

/** Ways in which a figure may stand at its line, the usual one first; `out` is the way off what is measured. */
function lettering(p: Point, q: Point, out: Point, text: string): readonly { label: Label; outside: boolean }[] {
  const length = distance(p, q);
  const width = letteringWidth(text, 13);
  const outside = length < 30;
  const common = { text, tone: 'pencil', size: 13 } as const;
  const middle = { x: (p.x + q.x) / 2, y: (p.y + q.y) / 2 };
  const flat = (at: Point, anchor: Label['anchor']): Label => ({ ...common, ...at, anchor });
  const [low, high] = p.x < q.x ? [p, q] : [q, p];
  if (Math.abs(out.y) > 0.97) {
    const above = flat({ x: middle.x, y: middle.y - 5 }, 'middle');
    const beside = [
      flat({ x: high.x + BESIDE, y: high.y + 4 }, 'start'),
      flat({ x: low.x - BESIDE, y: low.y + 4 }, 'end'),
    ];
    return (length > width + 26 ? [above] : beside).map((label) => ({
      label,
      outside: outside || length < width + 26,
    }));
  }
  const side = out.x > 0 ? 1 : -1;
  const off = flat({ x: middle.x + side * 8, y: middle.y + 4 }, side > 0 ? 'start' : 'end');
  if (Math.abs(out.x) > 0.97) {
    const upright: Label = { ...common, x: middle.x - 5, y: middle.y, anchor: 'middle', upright: true };
    return (length > width + 26 ? [upright, off] : [off]).map((label) => ({ label, outside }));
  }
  const clear = 10 + 6 * Math.abs(out.y);
  const away = along(middle, out, clear);
  return [{ label: flat({ x: away.x, y: away.y + 4 }, side > 0 ? 'start' : 'end'), outside }];
}

/** To the left of the way from one place to another, as the sheet has y down. */
export function leftOnSheet(a: Point, b: Point): Point {
  const way = left(unit(from(a, b)));
  return { x: -way.x, y: -way.y };
}
