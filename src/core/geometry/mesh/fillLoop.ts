import type { Point3 } from './triangleMesh.ts';
import { along3, anySquareTo, cross3, distance3, dot3, from3, length3, times3 } from './vector3.ts';

/** How a closed way through space lies to the plane that fits it. */
export interface LoopPlane {
  /** Of length 1; the way is counter-clockwise seen from where it points. */
  readonly normal: Point3;
  /** Once round. */
  readonly length: number;
  readonly area: number;
  /** How far it lies off its plane, from side to side. */
  readonly thickness: number;
}

const at = (points: Float64Array, vertex: number): Point3 => ({
  x: points[3 * vertex]!,
  y: points[3 * vertex + 1]!,
  z: points[3 * vertex + 2]!,
});

/**
 * The plane of a closed way, by the sum of its areas in the three planes of the axes.
 *
 * @param points - coordinates of vertices [mm]
 * @param round - vertices of the way in order [-], at least three
 * @returns its plane and sizes [mm, mm²]
 */
export function loopPlane(points: Float64Array, round: readonly number[]): LoopPlane {
  const corners = round.map((vertex) => at(points, vertex));
  const first = corners[0]!;
  let normal: Point3 = { x: 0, y: 0, z: 0 };
  let length = 0;
  corners.forEach((corner, i) => {
    const next = corners[(i + 1) % corners.length]!;
    normal = along3(normal, cross3(from3(first, corner), from3(first, next)), 0.5);
    length += distance3(corner, next);
  });
  const area = length3(normal);
  const unit = area > 0 ? times3(normal, 1 / area) : { x: 0, y: 0, z: 1 };
  const heights = corners.map((corner) => dot3(from3(first, corner), unit));
  const thickness = Math.max(...heights) - Math.min(...heights);
  return { normal: unit, length, area, thickness };
}

/** A corner of the way in its own plane. */
interface Flat {
  readonly vertex: number;
  readonly x: number;
  readonly y: number;
}

/**
 * Triangles that fill a closed way which is nearly flat, by cutting off one corner after the other.
 *
 * @param points - coordinates of vertices [mm]
 * @param round - vertices of the way in order, none twice [-]
 * @param plane - its plane as `loopPlane` tells it [mm]
 * @returns three vertices a triangle, wound like the way [-]; undefined where the way crosses itself
 */
export function filledLoop(points: Float64Array, round: readonly number[], plane: LoopPlane): number[] | undefined {
  const left = flattened(points, round, plane);
  const level = 1e-12 * plane.length * plane.length;
  const fill: number[] = [];
  while (left.length > 3) {
    const ear = findEar(left, level);
    if (ear < 0) return undefined;
    for (const step of [-1, 0, 1]) fill.push(left.at((ear + step) % left.length)!.vertex);
    left.splice(ear, 1);
  }
  return [...fill, ...left.map(({ vertex }) => vertex)];
}

function flattened(points: Float64Array, round: readonly number[], { normal }: LoopPlane): Flat[] {
  const right = anySquareTo(normal);
  const up = cross3(normal, right);
  return round.map((vertex) => ({ vertex, x: dot3(at(points, vertex), right), y: dot3(at(points, vertex), up) }));
}

/** A corner that can be cut off; −1 where none can. */
function findEar(left: readonly Flat[], level: number): number {
  return left.findIndex((q, i) => {
    const [p, r] = [left.at(i - 1)!, left[(i + 1) % left.length]!];
    if (!(turnOf(p, q, r) > level)) return false;
    return !left.some((other) => other !== p && other !== q && other !== r && holds(p, q, r, other));
  });
}

function turnOf(p: Flat, q: Flat, r: Flat): number {
  return (q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x);
}

function holds(p: Flat, q: Flat, r: Flat, other: Flat): boolean {
  return turnOf(p, q, other) >= 0 && turnOf(q, r, other) >= 0 && turnOf(r, p, other) >= 0;
}
