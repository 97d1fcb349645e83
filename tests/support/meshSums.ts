/** Figures of a mesh summed here anew, so that the program's own sums are not checked by themselves. */
import type { TriangleMesh } from '../../src/core/geometry/mesh/triangleMesh.ts';

type Place = readonly [number, number, number];

export interface MeshSums {
  readonly triangles: number;
  readonly vertices: number;
  readonly min: Place;
  readonly max: Place;
  readonly area: number;
  /** Of the cones between the mean of the vertices and each triangle; of an open surface it hangs on that place. */
  readonly volume: number;
}

export function trianglesOf({ points, corners }: TriangleMesh): readonly (readonly [Place, Place, Place])[] {
  const place = (corner: number): Place => {
    const at = 3 * corners[corner]!;
    return [points[at]!, points[at + 1]!, points[at + 2]!];
  };
  return Array.from({ length: corners.length / 3 }, (_, i) => [place(3 * i), place(3 * i + 1), place(3 * i + 2)]);
}

const cross = ([a, b, c]: Place, [d, e, f]: Place): Place => [b * f - c * e, c * d - a * f, a * e - b * d];
const less = ([a, b, c]: Place, [d, e, f]: Place): Place => [a - d, b - e, c - f];
const dot = ([a, b, c]: Place, [d, e, f]: Place): number => a * d + b * e + c * f;

/** @param scale - length of one unit of the mesh */
export function meshSums(mesh: TriangleMesh, scale = 1): MeshSums {
  const triangles = trianglesOf(mesh);
  const places = triangles.flat();
  const along = (axis: 0 | 1 | 2, pick: (...all: number[]) => number) =>
    scale * places.reduce((best, place) => pick(best, place[axis]), places[0]?.[axis] ?? 0);
  const sum = (of: (a: Place, b: Place, c: Place) => number) =>
    triangles.reduce((total, [a, b, c]) => total + of(a, b, c), 0);
  const { points } = mesh;
  const mean = [0, 1, 2].map(
    (axis) => points.reduce((total, value, i) => total + (i % 3 === axis ? value : 0), 0) / (points.length / 3),
  ) as unknown as Place;
  return {
    triangles: triangles.length,
    vertices: mesh.points.length / 3,
    min: [along(0, Math.min), along(1, Math.min), along(2, Math.min)],
    max: [along(0, Math.max), along(1, Math.max), along(2, Math.max)],
    area: (scale ** 2 * sum((a, b, c) => Math.hypot(...cross(less(b, a), less(c, a))))) / 2,
    volume: (scale ** 3 * sum((a, b, c) => dot(less(a, mean), cross(less(b, mean), less(c, mean))))) / 6,
  };
}
