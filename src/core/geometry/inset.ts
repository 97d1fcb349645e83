import type { Mm } from '../units.ts';
import { pathArea, spansOf } from './flatten.ts';
import { isOn, meet, SAME_PLACE, type Span } from './meet.ts';
import type { Path, Piece, Point } from './outline.ts';
import { along, distance, dot, from, left, sweep, unit } from './vector.ts';

/**
 * A closed outline moved inwards by a distance, exact in lines and arcs: where a line of filament laid along the edge
 * has its centre, half a line width inside.
 *
 * Rounded corners shrink and fillets grow by the distance; corners without an arc, and those whose arc is used up,
 * are mitred. A negative distance moves outwards. Undefined when the outline collapses: when no room is left
 * somewhere between two sides that face each other.
 *
 * @param path - closed outline [mm], counter-clockwise
 * @param offset - distance inwards [mm], below 0 outwards
 * @returns closed path [mm] that starts where the outline starts, moved; or undefined
 *
 * @example inset({ start: { x: 2, y: 0 }, pieces: [{ kind: 'arc', to: { x: 2, y: 0 }, centre: { x: 0, y: 0 }, counterClockwise: true }] }, 0.5)?.start // → { x: 1.5, y: 0 }
 */
export function inset(path: Path, offset: Mm): Path | undefined {
  let moved = spansOf(path).flatMap((span) => move(span, offset) ?? []);
  // Each pass drops one piece that has been used up and joins its neighbours; there are only so many.
  while (moved.length > 0) {
    const joined = join(moved);
    if (!joined) return undefined;
    const usedUp = joined.findIndex((span, i) => isReversed(span, moved[i] ?? span));
    if (usedUp === -1) return whenSound(joined);
    moved = moved.filter((_, i) => i !== usedUp);
  }
  return undefined;
}

/** One piece moved to its left, which is into the material; undefined when its arc is used up. */
function move({ start, piece }: Span, offset: Mm): Span | undefined {
  if (piece.kind === 'line') {
    const inward = left(unit(from(start, piece.to)));
    return { start: along(start, inward, offset), piece: { kind: 'line', to: along(piece.to, inward, offset) } };
  }
  const radius = distance(piece.centre, start);
  const moved = piece.counterClockwise ? radius - offset : radius + offset;
  if (!(moved > SAME_PLACE)) return undefined;
  const radial = (point: Point) => along(piece.centre, from(piece.centre, point), moved / radius);
  return { start: radial(start), piece: { ...piece, to: radial(piece.to) } };
}

/** The pieces lengthened or shortened until each begins where the one before it ends. */
function join(moved: readonly Span[]): readonly Span[] | undefined {
  const joints = moved.map((span, i) => jointOf(moved.at(i - 1) ?? span, span));
  if (joints.includes(undefined)) return undefined;
  return moved.map(({ start, piece }, i) => ({
    start: joints[i] ?? start,
    piece: { ...piece, to: joints[(i + 1) % moved.length] ?? piece.to },
  }));
}

function jointOf(before: Span, after: Span): Point | undefined {
  const { to } = before.piece;
  if (distance(to, after.start) < SAME_PLACE) return after.start;
  const middle = along(to, from(to, after.start), 0.5);
  return meet(before, after).toSorted((a, b) => distance(a, middle) - distance(b, middle))[0];
}

/** A line that now runs backwards, or an arc that would have to go round the long way, has been used up. */
function isReversed(now: Span, was: Span): boolean {
  if (now.piece.kind === 'line') {
    return dot(from(now.start, now.piece.to), from(was.start, was.piece.to)) <= 0;
  }
  if (was.piece.kind !== 'arc') return true;
  return Math.abs(sweep(now.start, now.piece)) > Math.abs(sweep(was.start, was.piece)) + Math.PI;
}

/** The path of these pieces, unless it crosses or touches itself or has turned inside out. */
function whenSound(spans: readonly Span[]): Path | undefined {
  const start = spans[0]?.start;
  if (
    !start ||
    spans.some((a, i) => spans.slice(i + 2).some((b, k) => !isNeighbour(i, i + 2 + k, spans.length) && touch(a, b)))
  ) {
    return undefined;
  }
  const path = { start, pieces: spans.map((span): Piece => span.piece) };
  return pathArea(path) > 0 ? path : undefined;
}

function isNeighbour(i: number, j: number, count: number): boolean {
  return j - i === 1 || j - i === count - 1;
}

function touch(a: Span, b: Span): boolean {
  return meet(a, b).some((point) => isOn(point, a) && isOn(point, b));
}
