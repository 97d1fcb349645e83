import type { Point3, TriangleMesh } from './triangleMesh.ts';

/**
 * Twice the area of a triangle along its normal: (q − p) × (r − p).
 *
 * @param mesh - any mesh [mm]
 * @param triangle - its number [-]
 * @returns outward where the triangle is counter-clockwise [mm²]
 */
export function areaVector({ points, corners }: TriangleMesh, triangle: number): Point3 {
  const p = 3 * corners[3 * triangle]!;
  const q = 3 * corners[3 * triangle + 1]!;
  const r = 3 * corners[3 * triangle + 2]!;
  const x = points[p]!;
  const y = points[p + 1]!;
  const z = points[p + 2]!;
  const ax = points[q]! - x;
  const ay = points[q + 1]! - y;
  const az = points[q + 2]! - z;
  const bx = points[r]! - x;
  const by = points[r + 1]! - y;
  const bz = points[r + 2]! - z;
  return { x: ay * bz - az * by, y: az * bx - ax * bz, z: ax * by - ay * bx };
}

/**
 * The middle of a triangle: the mean of its corners.
 *
 * @param mesh - any mesh [mm]
 * @param triangle - its number [-]
 * @returns the middle [mm]
 */
export function middleOfTriangle({ points, corners }: TriangleMesh, triangle: number): Point3 {
  const mean = (axis: number) =>
    (points[3 * corners[3 * triangle]! + axis]! +
      points[3 * corners[3 * triangle + 1]! + axis]! +
      points[3 * corners[3 * triangle + 2]! + axis]!) /
    3;
  return { x: mean(0), y: mean(1), z: mean(2) };
}

/**
 * How high a triangle stands on its longest side.
 *
 * @param mesh - any mesh [mm]
 * @param triangle - its number [-]
 * @returns height [mm], ≥ 0; 0 where its corners lie in one line
 */
export function heightOf(mesh: TriangleMesh, triangle: number): number {
  const normal = areaVector(mesh, triangle);
  const longest = Math.max(sideOf(mesh, 3 * triangle), sideOf(mesh, 3 * triangle + 1), sideOf(mesh, 3 * triangle + 2));
  return longest > 0 ? Math.sqrt(normal.x * normal.x + normal.y * normal.y + normal.z * normal.z) / longest : 0;
}

/**
 * How long a side of a triangle is.
 *
 * @param mesh - any mesh [mm]
 * @param half - half-edge [-]: 3 × triangle + corner at which it begins
 * @returns length [mm], ≥ 0
 */
export function sideOf({ points, corners }: TriangleMesh, half: number): number {
  const p = 3 * corners[half]!;
  const q = 3 * corners[half % 3 === 2 ? half - 2 : half + 1]!;
  const x = points[q]! - points[p]!;
  const y = points[q + 1]! - points[p + 1]!;
  const z = points[q + 2]! - points[p + 2]!;
  return Math.sqrt(x * x + y * y + z * z);
}

/**
 * The middle of a side of a triangle.
 *
 * @param mesh - any mesh [mm]
 * @param half - half-edge [-]: 3 × triangle + corner at which it begins
 * @returns the middle [mm]
 */
export function middleOfSide({ points, corners }: TriangleMesh, half: number): Point3 {
  const p = 3 * corners[half]!;
  const q = 3 * corners[half % 3 === 2 ? half - 2 : half + 1]!;
  const mean = (axis: number) => (points[p + axis]! + points[q + axis]!) / 2;
  return { x: mean(0), y: mean(1), z: mean(2) };
}
