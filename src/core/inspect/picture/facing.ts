import type { MeshEdges } from '../../geometry/mesh/edges.ts';
import { boxOf, diagonalOf } from '../../geometry/mesh/meshFigures.ts';
import { areaVector, heightOf, sideOf } from '../../geometry/mesh/triangles.ts';
import type { TriangleMesh } from '../../geometry/mesh/triangleMesh.ts';
import type { Form } from './placing.ts';

/** Triangles lower than this share of the diagonal look any way that rounding makes them: single precision keeps 10⁻⁷. */
const NO_HEIGHT = 2e-6;
/** Slivers lie side by side in rows of a few. */
const MOST_ROUNDS = 8;

/** Which way each triangle looks. */
export interface Facing {
  /** x, y and z of a vector of length 1; 0, 0, 0 where none can be told. */
  readonly normals: Float32Array;
  /** 1 towards the eye, −1 away from it. */
  readonly side: Int8Array;
}

/**
 * Which way each triangle looks, and whether the eye sees its outside. One without height is taken to look as the triangle
 * on its longest side does, of whose edge it is a part.
 *
 * @param mesh - any mesh [mm]
 * @param edges - its edges [-]
 * @param nearer - towards the eye [-]
 * @returns normals and sides [-]
 */
export function facingOf(mesh: TriangleMesh, edges: MeshEdges, nearer: Form): Facing {
  const count = mesh.corners.length / 3;
  const normals = new Float32Array(3 * count);
  const diagonal = diagonalOf(boxOf(mesh));
  const least = NO_HEIGHT * diagonal;
  const slivers: number[] = [];
  for (let triangle = 0; triangle < count; triangle += 1) {
    const { x, y, z } = areaVector(mesh, triangle);
    const length = Math.sqrt(x * x + y * y + z * z);
    // No side is longer than the diagonal, which spares measuring most of them.
    if (length <= least * diagonal && heightOf(mesh, triangle) <= least) {
      slivers.push(triangle);
      continue;
    }
    normals[3 * triangle] = x / length;
    normals[3 * triangle + 1] = y / length;
    normals[3 * triangle + 2] = z / length;
  }
  lookAsNeighbours(mesh, edges, normals, slivers);
  return { normals, side: sidesOf(normals, nearer) };
}

function lookAsNeighbours(mesh: TriangleMesh, edges: MeshEdges, normals: Float32Array, slivers: number[]): void {
  let left = slivers;
  for (let round = 0; round < MOST_ROUNDS && left.length > 0; round += 1) {
    left = left.filter((triangle) => {
      const other = Math.floor(edges.partner[longestSide(mesh, triangle)]! / 3);
      if (other < 0) return false;
      for (let k = 0; k < 3; k += 1) normals[3 * triangle + k] = normals[3 * other + k]!;
      return normals[3 * triangle] === 0 && normals[3 * triangle + 1] === 0 && normals[3 * triangle + 2] === 0;
    });
  }
}

function longestSide(mesh: TriangleMesh, triangle: number): number {
  const half = 3 * triangle;
  const [a, b, c] = [sideOf(mesh, half), sideOf(mesh, half + 1), sideOf(mesh, half + 2)];
  if (a >= b && a >= c) return half;
  return b >= c ? half + 1 : half + 2;
}

function sidesOf(normals: Float32Array, [x, y, z]: Form): Int8Array {
  const side = new Int8Array(normals.length / 3);
  for (let i = 0; i < side.length; i += 1) {
    const toEye = x * normals[3 * i]! + y * normals[3 * i + 1]! + z * normals[3 * i + 2]!;
    side[i] = Math.sign(toEye);
  }
  return side;
}
