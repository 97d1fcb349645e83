import type { TriangleMesh } from './triangleMesh.ts';

/**
 * A mesh made larger or smaller about the origin, as from inches to millimetres.
 *
 * @param mesh - any mesh [any unit]
 * @param by - new over old [-], > 0
 * @returns the same triangles [any unit]; the same mesh where nothing changes
 */
export function scaleMesh(mesh: TriangleMesh, by: number): TriangleMesh {
  if (!(by > 0)) throw new RangeError(`a mesh cannot be scaled by ${by}`);
  return by === 1 ? mesh : { points: mesh.points.map((value) => value * by), corners: mesh.corners };
}
