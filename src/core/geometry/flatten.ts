import type { Mm } from '../units.ts';
import type { Span } from './meet.ts';
import type { Path, Point } from './outline.ts';
import { bearing, cross, distance, from, sweep, type Arc } from './vector.ts';

/** Every piece with the point it starts from. */
export function spansOf(path: Path): readonly Span[] {
  return path.pieces.map((piece, i) => ({ start: path.pieces[i - 1]?.to ?? path.start, piece }));
}

/** Sagitta r·(1 − cos(α/2)) of each chord stays within the tolerance. */
function flattenArc(start: Point, arc: Arc, tolerance: Mm): Point[] {
  const radius = distance(arc.centre, start);
  const turn = sweep(start, arc);
  const most = 2 * Math.acos(Math.max(0, 1 - tolerance / radius));
  const chords = Math.max(1, Math.ceil(Math.abs(turn) / most));
  const first = bearing(arc.centre, start);
  const inner = Array.from({ length: chords - 1 }, (_, i) => {
    const angle = first + (turn * (i + 1)) / chords;
    return { x: arc.centre.x + radius * Math.cos(angle), y: arc.centre.y + radius * Math.sin(angle) };
  });
  return [...inner, arc.to];
}

/**
 * A path as points joined by straight lines, for a screen.
 *
 * @param path - lines and arcs [mm]
 * @param tolerance - how far a chord may lie from its arc [mm], > 0
 * @returns points [mm], the start first; a closed path repeats it at the end
 *
 * @example flatten({ start: { x: 0, y: 0 }, pieces: [{ kind: 'line', to: { x: 1, y: 0 } }] }, 0.01) // → [{ x: 0, y: 0 }, { x: 1, y: 0 }]
 */
export function flatten(path: Path, tolerance: Mm): readonly Point[] {
  if (!(tolerance > 0)) throw new RangeError(`tolerance ${tolerance} must be above 0`);
  const rest = spansOf(path).flatMap(({ start, piece }) =>
    piece.kind === 'line' ? [piece.to] : flattenArc(start, piece, tolerance),
  );
  return [path.start, ...rest];
}

/**
 * Length of a path along its lines and true arcs.
 *
 * @param path - lines and arcs [mm]
 * @returns length [mm], ≥ 0
 *
 * @example pathLength({ start: { x: 1, y: 0 }, pieces: [{ kind: 'arc', to: { x: -1, y: 0 }, centre: { x: 0, y: 0 }, counterClockwise: true }] }) // → 3.14159265
 */
export function pathLength(path: Path): Mm {
  return spansOf(path).reduce((sum, { start, piece }) => {
    if (piece.kind === 'line') return sum + distance(start, piece.to);
    return sum + distance(piece.centre, start) * Math.abs(sweep(start, piece));
  }, 0);
}

/**
 * Area inside a closed path, its arcs taken as true arcs.
 *
 *     A = ½·∮(x dy − y dx)
 *
 * @param path - closed path of lines and arcs [mm]
 * @returns area [mm²], above 0 when the path runs counter-clockwise
 *
 * @example pathArea({ start: { x: 1, y: 0 }, pieces: [{ kind: 'arc', to: { x: 1, y: 0 }, centre: { x: 0, y: 0 }, counterClockwise: true }] }) // → 3.14159265
 */
export function pathArea(path: Path): number {
  return spansOf(path).reduce((sum, { start, piece }) => {
    if (piece.kind === 'line') return sum + cross(start, piece.to) / 2;
    const { centre, to } = piece;
    const radius = distance(centre, start);
    return sum + (radius ** 2 * sweep(start, piece) + cross(centre, from(start, to))) / 2;
  }, 0);
}

/** Smallest upright rectangle round some paths [mm]. */
export interface Bounds {
  readonly left: Mm;
  readonly right: Mm;
  readonly bottom: Mm;
  readonly top: Mm;
}

/** Where an arc passes its rightmost, topmost, leftmost and lowest point, if it does. */
function extremes(start: Point, arc: Arc): Point[] {
  const radius = distance(arc.centre, start);
  const first = bearing(arc.centre, start);
  const turn = sweep(start, arc);
  const quarter = Math.PI / 2;
  return [0, 1, 2, 3].flatMap((k) => {
    const full = 2 * Math.PI;
    const ahead = ((((k * quarter - first) * Math.sign(turn)) % full) + full) % full;
    if (ahead > Math.abs(turn)) return [];
    const directions = [
      [1, 0],
      [0, 1],
      [-1, 0],
      [0, -1],
    ] as const;
    const [dx, dy] = directions[k] ?? [0, 0];
    return [{ x: arc.centre.x + radius * dx, y: arc.centre.y + radius * dy }];
  });
}

/**
 * The smallest upright rectangle round some paths, arcs included.
 *
 * @param paths - lines and arcs [mm], at least one
 * @returns its four sides [mm]
 *
 * @example bounds([{ start: { x: 1, y: 0 }, pieces: [{ kind: 'arc', to: { x: -1, y: 0 }, centre: { x: 0, y: 0 }, counterClockwise: true }] }]) // → { left: -1, right: 1, bottom: 0, top: 1 }
 */
export function bounds(paths: readonly Path[]): Bounds {
  const points = paths.flatMap((path) => [
    path.start,
    ...spansOf(path).flatMap(({ start, piece }) =>
      piece.kind === 'line' ? [piece.to] : [piece.to, ...extremes(start, piece)],
    ),
  ]);
  if (points.length === 0) throw new RangeError('bounds of no path');
  const xs = points.map((point) => point.x);
  const ys = points.map((point) => point.y);
  return { left: Math.min(...xs), right: Math.max(...xs), bottom: Math.min(...ys), top: Math.max(...ys) };
}
