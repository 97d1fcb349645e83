/** Lengths along lines of straight pieces, and distances between two of them. */
import type { Mm } from '../../units.ts';
import type { Point } from '../../geometry/outline.ts';
import { along, cross, distance, dot, from, left } from '../../geometry/vector.ts';

/** Stations at which the thickness is taken along a run. */
const STATIONS = 96;

export function lengthOfLine(points: readonly Point[]): Mm {
  let length = 0;
  for (let i = 1; i < points.length; i += 1) length += distance(points[i - 1]!, points[i]!);
  return length;
}

/** Where a ray from a point first meets a line of pieces; undefined where it does not. */
function hitOf(origin: Point, direction: Point, line: readonly Point[]): number | undefined {
  let best: number | undefined;
  for (let i = 1; i < line.length; i += 1) {
    const a = line[i - 1]!;
    const piece = from(a, line[i]!);
    const det = cross(direction, piece);
    if (det === 0) continue;
    const off = from(origin, a);
    const t = cross(off, piece) / det;
    const u = cross(off, direction) / det;
    if (t > 0 && u >= -1e-9 && u <= 1 + 1e-9 && (best === undefined || t < best)) best = t;
  }
  return best;
}

/** The point at a share of the length of a line, and its direction there. */
export function stationOn(line: readonly Point[], share: number): { readonly at: Point; readonly direction: Point } {
  let rest = share * lengthOfLine(line);
  for (let i = 1; i < line.length; i += 1) {
    const a = line[i - 1]!;
    const b = line[i]!;
    const length = distance(a, b);
    if (rest <= length || i === line.length - 1) {
      const part = length > 0 ? rest / length : 0;
      const direction = length > 0 ? { x: (b.x - a.x) / length, y: (b.y - a.y) / length } : { x: 1, y: 0 };
      return { at: along(a, from(a, b), part), direction };
    }
    rest -= length;
  }
  throw new RangeError('a line needs two points');
}

/** Thickness at stations along the centre line, square to it; where it meets no wall on one side, that of its neighbour. */
export function thicknesses(
  line: readonly Point[],
  leftWall: readonly Point[],
  rightWall: readonly Point[],
  least: Mm,
): readonly Mm[] {
  const found: Mm[] = [];
  for (let i = 0; i < STATIONS; i += 1) {
    const { at, direction } = stationOn(line, (i + 0.5) / STATIONS);
    const square = left(direction);
    const l = hitOf(at, square, leftWall);
    const r = hitOf(at, { x: -square.x, y: -square.y }, rightWall);
    found.push(l !== undefined && r !== undefined ? l + r : (found.at(-1) ?? least));
  }
  return found;
}

/** Distance of a point from a line of pieces. */
function awayFrom(point: Point, line: readonly Point[]): Mm {
  let least = Infinity;
  for (let i = 1; i < line.length; i += 1) {
    const a = line[i - 1]!;
    const piece = from(a, line[i]!);
    const square = dot(piece, piece);
    const share = square > 0 ? Math.min(1, Math.max(0, dot(from(a, point), piece) / square)) : 0;
    least = Math.min(least, distance(point, along(a, piece, share)));
  }
  return line.length === 1 ? distance(point, line[0]!) : least;
}

/** Least distance between two walls that do not cross: one of the two places is a corner. */
export function between(a: readonly Point[], b: readonly Point[]): Mm {
  let least = Infinity;
  for (const point of a) least = Math.min(least, awayFrom(point, b));
  for (const point of b) least = Math.min(least, awayFrom(point, a));
  return least;
}

/** Points of a line, without those that repeat the one before. */
export function distinct(points: readonly Point[]): readonly Point[] {
  return points.filter((point, i) => i === 0 || distance(point, points[i - 1]!) > 1e-6);
}
