/** Where a plane cuts a surface. */
import type { Point } from '../outline.ts';
import { dot3 } from './vector3.ts';
import type { Point3, TriangleMesh } from './triangleMesh.ts';

/** A plane with its own axes: a point of it is origin + x·right + y·up; normal = right × up. */
export interface Plane {
  readonly origin: Point3;
  readonly right: Point3;
  readonly up: Point3;
  readonly normal: Point3;
}

/** What a plane cuts: closed loops with the material at their left, and chains that a hole in the surface leaves open. */
export interface PlaneCut {
  readonly loops: readonly (readonly Point[])[];
  readonly open: readonly (readonly Point[])[];
}

/** Height of each vertex over the plane. What lies in the plane itself counts as above it, so that no edge lies in it. */
function heights({ points }: TriangleMesh, { origin, normal }: Plane): Float64Array {
  const base = dot3(origin, normal);
  const found = new Float64Array(points.length / 3);
  for (let i = 0, p = 0; i < found.length; i += 1, p += 3) {
    found[i] = points[p]! * normal.x + points[p + 1]! * normal.y + points[p + 2]! * normal.z - base;
  }
  return found;
}

/** Pieces of the cut by where they begin: each runs from one crossed edge of the surface to another. */
class Pieces {
  readonly #mesh: TriangleMesh;
  readonly #plane: Plane;
  readonly #heights: Float64Array;
  readonly #numbers = new Map<number, number>();
  readonly at: Point[] = [];
  readonly from: number[] = [];
  readonly to: number[] = [];

  constructor(mesh: TriangleMesh, plane: Plane) {
    this.#mesh = mesh;
    this.#plane = plane;
    this.#heights = heights(mesh, plane);
    this.#cutAll();
  }

  #cutAll(): void {
    const { corners } = this.#mesh;
    const h = this.#heights;
    for (let c = 0; c + 2 < corners.length; c += 3) {
      const a = corners[c]!;
      const b = corners[c + 1]!;
      const d = corners[c + 2]!;
      const isA = h[a]! >= 0;
      const isB = h[b]! >= 0;
      const isD = h[d]! >= 0;
      if (isA === isB && isB === isD) continue;
      // The corner that is alone on its side; the piece runs so that the material stays at its left.
      const [one, next, last, isAbove] = isB === isD ? [a, b, d, isA] : isA === isD ? [b, d, a, isB] : [d, a, b, isD];
      const start = this.#crossing(one, isAbove ? next : last);
      const end = this.#crossing(one, isAbove ? last : next);
      this.from.push(start);
      this.to.push(end);
    }
  }

  /** Number of the place where the plane crosses an edge: the same from both of its triangles. */
  #crossing(a: number, b: number): number {
    const low = Math.min(a, b);
    const high = Math.max(a, b);
    const key = low * this.#heights.length + high;
    const known = this.#numbers.get(key);
    if (known !== undefined) return known;
    const { points } = this.#mesh;
    const share = this.#heights[low]! / (this.#heights[low]! - this.#heights[high]!);
    const mix = (k: number) => points[3 * low + k]! + share * (points[3 * high + k]! - points[3 * low + k]!);
    const { origin, right, up } = this.#plane;
    const off = { x: mix(0) - origin.x, y: mix(1) - origin.y, z: mix(2) - origin.z };
    const number = this.at.length;
    this.at.push({ x: dot3(off, right), y: dot3(off, up) });
    this.#numbers.set(key, number);
    return number;
  }
}

/** Pieces that begin at each place. */
function byStart({ from, at }: Pieces): readonly number[][] {
  const found: number[][] = at.map(() => []);
  for (const [piece, start] of from.entries()) found[start]?.push(piece);
  return found;
}

/** Follows pieces from one until nothing goes on or the start is reached again. */
function follow(pieces: Pieces, starts: readonly number[][], isUsed: Uint8Array, first: number): readonly number[] {
  const places = [pieces.from[first]!];
  let piece: number | undefined = first;
  while (piece !== undefined) {
    isUsed[piece] = 1;
    const end: number = pieces.to[piece]!;
    places.push(end);
    if (end === places[0]) break;
    piece = starts[end]?.find((candidate) => isUsed[candidate] === 0);
  }
  return places;
}

/**
 * Cuts a surface by a plane.
 *
 * @param mesh - triangles counter-clockwise from outside [mm]
 * @param plane - its axes have length 1 and stand square on one another [mm]
 * @returns loops in the axes of the plane [mm], the material at their left; open chains where the surface is open
 */
export function cutByPlane(mesh: TriangleMesh, plane: Plane): PlaneCut {
  const pieces = new Pieces(mesh, plane);
  const starts = byStart(pieces);
  const isUsed = new Uint8Array(pieces.from.length);
  const ends = new Set(pieces.to);
  const loops: Point[][] = [];
  const open: Point[][] = [];
  const take = (first: number) => {
    if (isUsed[first] === 1) return;
    const places = follow(pieces, starts, isUsed, first);
    const isClosed = places.length > 3 && places[0] === places.at(-1);
    const points = places.map((place) => pieces.at[place]!);
    if (isClosed) loops.push(points.slice(0, -1));
    else if (places[0] !== places.at(-1)) open.push(points);
  };
  // Chains that begin where nothing ends are open: they are followed whole before loops are looked for.
  for (const [piece, start] of pieces.from.entries()) if (!ends.has(start)) take(piece);
  for (const piece of pieces.from.keys()) take(piece);
  return { loops, open };
}
