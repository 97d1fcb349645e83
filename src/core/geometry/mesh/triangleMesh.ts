/** A surface of triangles, as part files hold it; in mm wherever no unit is told beside it. */

/** A place or a direction in space. */
export interface Point3 {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

export interface TriangleMesh {
  /** x, y and z of one vertex after the other. */
  readonly points: Float64Array;
  /** Three numbers of vertices a triangle, counter-clockwise as seen from outside. */
  readonly corners: Uint32Array;
}

/** Least and greatest of each coordinate. */
export interface Box3 {
  readonly min: Point3;
  readonly max: Point3;
}

/**
 * One vertex of a mesh.
 *
 * @param mesh - any mesh [mm]
 * @param vertex - its number [-], 0 to points.length / 3 − 1
 * @returns where it is [mm]
 */
export function pointOf({ points }: TriangleMesh, vertex: number): Point3 {
  return { x: points[3 * vertex] ?? 0, y: points[3 * vertex + 1] ?? 0, z: points[3 * vertex + 2] ?? 0 };
}

/** How many triangles a mesh has. */
export function triangleCount({ corners }: TriangleMesh): number {
  return corners.length / 3;
}
