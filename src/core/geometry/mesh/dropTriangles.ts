import type { TriangleMesh } from './triangleMesh.ts';

/**
 * A mesh without some of its triangles.
 *
 * @param mesh - any mesh [any unit]
 * @param isDropped - 1 for each triangle that goes [-]
 * @returns the same vertices with the other triangles, in their order
 */
export function withoutTriangles({ points, corners }: TriangleMesh, isDropped: Uint8Array): TriangleMesh {
  const kept = new Uint32Array(corners.length);
  let count = 0;
  for (let triangle = 0; triangle < isDropped.length; triangle += 1) {
    if (isDropped[triangle] === 1) continue;
    for (let k = 0; k < 3; k += 1) kept[count + k] = corners[3 * triangle + k]!;
    count += 3;
  }
  return { points, corners: kept.slice(0, count) };
}

/**
 * A mesh without vertices that no triangle uses.
 *
 * @param mesh - any mesh [any unit]
 * @returns the same triangles; vertices keep their order
 */
export function withoutUnused(mesh: TriangleMesh): TriangleMesh {
  const { points, corners } = mesh;
  const name = new Uint32Array(points.length / 3);
  for (let i = 0; i < corners.length; i += 1) name[corners[i]!] = 1;
  let count = 0;
  const kept = new Float64Array(points.length);
  for (let vertex = 0; vertex < name.length; vertex += 1) {
    if (name[vertex] === 0) continue;
    for (let axis = 0; axis < 3; axis += 1) kept[3 * count + axis] = points[3 * vertex + axis]!;
    name[vertex] = count;
    count += 1;
  }
  if (count === name.length) return mesh;
  return { points: kept.slice(0, 3 * count), corners: corners.map((vertex) => name[vertex]!) };
}

/**
 * Which triangles have the same vertex twice.
 *
 * @param mesh - any mesh [any unit]
 * @returns 1 for each that has [-]
 */
export function repeatedCorners({ corners }: TriangleMesh): Uint8Array {
  const isRepeated = new Uint8Array(corners.length / 3);
  for (let i = 0; i < isRepeated.length; i += 1) {
    const p = corners[3 * i]!;
    const q = corners[3 * i + 1]!;
    const r = corners[3 * i + 2]!;
    if (p === q || q === r || r === p) isRepeated[i] = 1;
  }
  return isRepeated;
}
