/** Small meshes for tests. */
import type { TriangleMesh } from '../../src/core/geometry/mesh/triangleMesh.ts';

const FACES = [
  [0, 2, 1],
  [0, 3, 2],
  [4, 5, 6],
  [4, 6, 7],
  [0, 1, 5],
  [0, 5, 4],
  [1, 2, 6],
  [1, 6, 5],
  [2, 3, 7],
  [2, 7, 6],
  [3, 0, 4],
  [3, 4, 7],
] as const;

/** A box with a corner at the origin and one at x, y, z; twelve triangles that face outwards. */
export function boxMesh(x: number, y: number, z: number): TriangleMesh {
  const flat = [0, 0, x, 0, x, y, 0, y];
  const level = (height: number) => [0, 1, 2, 3].flatMap((i) => [flat[2 * i]!, flat[2 * i + 1]!, height]);
  return { points: Float64Array.from([...level(0), ...level(z)]), corners: Uint32Array.from(FACES.flat()) };
}

/** Any triangles, each a place of nine numbers, as a mesh that joins nothing. */
export function looseMesh(...triangles: readonly (readonly number[])[]): TriangleMesh {
  return {
    points: Float64Array.from(triangles.flat()),
    corners: Uint32Array.from({ length: 3 * triangles.length }, (_, i) => i),
  };
}

/** An open sheet of waves, two triangles to each of n × n squares; no two of its vertices alike. */
export function wavyMesh(n: number): TriangleMesh {
  const points = Array.from({ length: (n + 1) ** 2 }, (_, i) => {
    const [row, column] = [Math.floor(i / (n + 1)), i % (n + 1)];
    return [row, column, Math.sin(row / 7) * Math.cos(column / 5)].map(Math.fround);
  });
  const corners = Array.from({ length: n * n }, (_, i) => {
    const at = Math.floor(i / n) * (n + 1) + (i % n);
    return [at, at + n + 1, at + n + 2, at, at + n + 2, at + 1];
  });
  return { points: Float64Array.from(points.flat()), corners: Uint32Array.from(corners.flat()) };
}
