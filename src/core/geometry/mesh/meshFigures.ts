import { pointOf, type Box3, type Point3, type TriangleMesh } from './triangleMesh.ts';

/** Figures of a mesh in its own unit of length. */
export interface MeshFigures {
  readonly box: Box3;
  readonly area: number;
  /** Negative where it is inside out; of an open surface it means little. */
  readonly volume: number;
}

/**
 * Least box round all vertices of the triangles, with sides along the axes.
 *
 * @param mesh - any mesh [mm]
 * @returns the box [mm]; a point at the origin where there are no triangles
 */
export function boxOf(mesh: TriangleMesh): Box3 {
  const { points, corners } = mesh;
  const least = pointOf(mesh, corners[0] ?? 0);
  const [min, max] = [
    [least.x, least.y, least.z],
    [least.x, least.y, least.z],
  ];
  for (let i = 0; i < corners.length; i += 1) {
    const at = 3 * corners[i]!;
    for (let axis = 0; axis < 3; axis += 1) {
      const value = points[at + axis]!;
      if (value < min[axis]!) min[axis] = value;
      if (value > max[axis]!) max[axis] = value;
    }
  }
  return { min: { x: min[0]!, y: min[1]!, z: min[2]! }, max: { x: max[0]!, y: max[1]!, z: max[2]! } };
}

/**
 * How far it is from one corner of a box to the opposite one.
 *
 * @param box - any box [mm]
 * @returns diagonal [mm], ≥ 0
 *
 * @example diagonalOf({ min: { x: 0, y: 0, z: 0 }, max: { x: 2, y: 3, z: 6 } }) // → 7
 */
export function diagonalOf({ min, max }: Box3): number {
  return Math.hypot(max.x - min.x, max.y - min.y, max.z - min.z);
}

/**
 * The middle of a box.
 *
 * @param box - any box [mm]
 * @returns its middle [mm]
 */
export function middleOf({ min, max }: Box3): Point3 {
  return { x: (min.x + max.x) / 2, y: (min.y + max.y) / 2, z: (min.z + max.z) / 2 };
}

/**
 * Box, area and volume of a mesh.
 *
 *     A = ½ Σ|a × b|,   V = ⅙ Σ p·(a × b)
 *
 * with p from the middle of the box, since far from the origin the volumes under the triangles would cancel to noise.
 *
 * @param mesh - any mesh [mm]
 * @returns box [mm], area [mm²], volume [mm³]
 */
export function meshFigures(mesh: TriangleMesh): MeshFigures {
  const { points, corners } = mesh;
  const box = boxOf(mesh);
  const middle = middleOf(box);
  const sums = { area: 0, volume: 0 };
  for (let corner = 0; corner < corners.length; corner += 3) addTriangle(sums, points, corners, corner, middle);
  return { box, area: sums.area / 2, volume: sums.volume / 6 };
}

function addTriangle(
  sums: { area: number; volume: number },
  points: Float64Array,
  corners: Uint32Array,
  corner: number,
  middle: Point3,
): void {
  const [p, q, r] = [3 * corners[corner]!, 3 * corners[corner + 1]!, 3 * corners[corner + 2]!];
  const [x, y, z] = [points[p]!, points[p + 1]!, points[p + 2]!];
  const [ax, ay, az] = [points[q]! - x, points[q + 1]! - y, points[q + 2]! - z];
  const [bx, by, bz] = [points[r]! - x, points[r + 1]! - y, points[r + 2]! - z];
  const [nx, ny, nz] = [ay * bz - az * by, az * bx - ax * bz, ax * by - ay * bx];
  sums.area += Math.sqrt(nx * nx + ny * ny + nz * nz);
  sums.volume += (x - middle.x) * nx + (y - middle.y) * ny + (z - middle.z) * nz;
}
