/** The run of a thin section, cut at stations: where along it and how far off it a point lies. */
import type { Point } from '../../geometry/outline.ts';
import { fromSegment } from '../../geometry/segment.ts';
import { distance } from '../../geometry/vector.ts';
import type { Mm } from '../../units.ts';
import { STATION } from './audit.ts';

/** However short a section is, it is cut so often. */
const LEAST_STATIONS = 12;
/** Corners that lie no farther off the straight way are left out [mm]: below what outlines are measured to. */
const STRAIGHT: Mm = 2e-3;

/** A straight piece of the run, with its stations. */
export interface RunPiece {
  readonly x: Mm;
  readonly y: Mm;
  /** Its direction, of length 1; square to it at the left is (−uy, ux). */
  readonly ux: number;
  readonly uy: number;
  /** Where along the run it begins, and how long it is [mm]. */
  readonly from: Mm;
  readonly length: Mm;
  /** Numbers of its stations: from `first` up to, and without, `end`. */
  readonly first: number;
  readonly end: number;
}

export interface RunFrame {
  readonly length: Mm;
  readonly pieces: readonly RunPiece[];
  /** Where along the run each station is [mm]: in the middle of equal steps. */
  readonly stations: Float64Array;
  readonly step: Mm;
}

/** Where a point lies: along the run, below 0 or over its length beyond its ends; and off it, positive at the left [mm]. */
export interface OnRun {
  readonly at: Mm;
  readonly off: Mm;
}

/** Leaves out corners that hardly turn: of each stretch the farthest stays if it is off the straight way. */
function simplified(points: readonly Point[]): readonly Point[] {
  if (points.length < 3) return points;
  const [first, last] = [points[0]!, points.at(-1)!];
  let [farthest, at] = [STRAIGHT, 0];
  for (let i = 1; i < points.length - 1; i += 1) {
    const off = fromSegment(points[i]!, first, last);
    if (off > farthest) [farthest, at] = [off, i];
  }
  if (at === 0) return [first, last];
  return [...simplified(points.slice(0, at + 1)).slice(0, -1), ...simplified(points.slice(at))];
}

/**
 * The run of a section with its stations; undefined where it has no length.
 *
 * @param run - from end to end [mm]
 * @returns straight pieces and stations [mm]
 */
export function runFrame(run: readonly Point[]): RunFrame | undefined {
  const points = simplified(run).filter((point, i, all) => i === 0 || distance(all[i - 1]!, point) > 1e-9);
  const length = points.slice(1).reduce((sum, point, i) => sum + distance(points[i]!, point), 0);
  if (!(length > 0) || !Number.isFinite(length)) return undefined;
  const count = Math.max(LEAST_STATIONS, Math.ceil(length / STATION - 1e-9));
  const step = length / count;
  const stations = Float64Array.from({ length: count }, (_, i) => (i + 0.5) * step);
  return { length, pieces: piecesOf(points, stations), stations, step };
}

function piecesOf(points: readonly Point[], stations: Float64Array): readonly RunPiece[] {
  const pieces: RunPiece[] = [];
  let [from, first] = [0, 0];
  for (const [i, b] of points.slice(1).entries()) {
    const a = points[i]!;
    const length = distance(a, b);
    const to = i === points.length - 2 ? Infinity : from + length;
    let end = first;
    while (end < stations.length && stations[end]! < to) end += 1;
    pieces.push({ x: a.x, y: a.y, ux: (b.x - a.x) / length, uy: (b.y - a.y) / length, from, length, first, end });
    from += length;
    first = end;
  }
  return pieces;
}

/**
 * Where a point lies along and off a run, by the nearest of its pieces.
 *
 * @param frame - the run [mm]
 * @param point - anywhere [mm]
 * @returns along and off it [mm]
 */
export function onRun({ pieces }: RunFrame, point: Point): OnRun {
  let best: OnRun = { at: 0, off: Infinity };
  let nearest = Infinity;
  for (const [i, piece] of pieces.entries()) {
    const [x, y] = [point.x - piece.x, point.y - piece.y];
    const s = x * piece.ux + y * piece.uy;
    const off = y * piece.ux - x * piece.uy;
    const beyond = s < 0 ? -s : Math.max(0, s - piece.length);
    const away = Math.sqrt(beyond * beyond + off * off);
    if (away >= nearest) continue;
    nearest = away;
    // Past its ends the run goes on straight; at a corner between pieces a point beyond it is at the corner.
    const [low, high] = [i === 0 ? -Infinity : 0, i === pieces.length - 1 ? Infinity : piece.length];
    best = { at: piece.from + Math.min(high, Math.max(low, s)), off };
  }
  return best;
}
