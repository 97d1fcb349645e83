import type { Point3, TriangleMesh } from '../geometry/mesh/triangleMesh.ts';
import type { PlateUp } from './judged.ts';

/** From which coordinate, and with which sign, each new one comes: quarter and half turns, never a mirror image. */
type Turn = readonly [x: Taken, y: Taken, z: Taken];
type Taken = readonly [axis: 0 | 1 | 2, sign: 1 | -1];

const [X, Y, Z] = [
  [0, 1],
  [1, 1],
  [2, 1],
] as const;
const [LESS_X, LESS_Y, LESS_Z] = [
  [0, -1],
  [1, -1],
  [2, -1],
] as const;

const TURNS: Readonly<Record<PlateUp, Turn>> = {
  '+z': [X, Y, Z],
  '-z': [X, LESS_Y, LESS_Z],
  '+x': [LESS_Z, Y, X],
  '-x': [Z, Y, LESS_X],
  '+y': [X, LESS_Z, Y],
  '-y': [X, Z, LESS_Y],
};

/**
 * A place or a direction of the file in a part that was turned to stand on the plate: z is up, exactly.
 *
 * @param point - in the coordinates of the file [mm]
 * @param up - which direction of the file points away from the plate [-]
 * @returns in the coordinates of the plate [mm], about the same origin
 *
 * @example turnPoint({ x: 1, y: 2, z: 3 }, '+x') // → { x: -3, y: 2, z: 1 }
 */
export function turnPoint({ x, y, z }: Point3, up: PlateUp): Point3 {
  const from = [x, y, z] as const;
  const [a, b, c] = TURNS[up];
  return { x: taken(from[a[0]], a[1]), y: taken(from[b[0]], b[1]), z: taken(from[c[0]], c[1]) };
}

/**
 * A part turned to stand on the plate: z is up, exactly.
 *
 * @param mesh - in the coordinates of the file [mm]
 * @param up - which direction of the file points away from the plate [-]
 * @returns in the coordinates of the plate [mm], about the same origin; the same mesh where it stands already
 */
export function turnMesh(mesh: TriangleMesh, up: PlateUp): TriangleMesh {
  if (up === '+z') return mesh;
  const { points, corners } = mesh;
  const turned = new Float64Array(points.length);
  TURNS[up].forEach(([axis, sign], to) => {
    for (let i = 0; i < points.length; i += 3) turned[i + to] = taken(points[i + axis]!, sign);
  });
  return { points: turned, corners };
}

/** Never −0, which would be told from 0 where nothing is. */
function taken(value: number, sign: 1 | -1): number {
  return sign < 0 ? 0 - value : value;
}
