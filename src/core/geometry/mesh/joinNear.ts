import { wholeNumbers } from './countingSort.ts';
import type { MeshEdges } from './edges.ts';
import { rimOf, type Rim } from './rim.ts';
import type { TriangleMesh } from './triangleMesh.ts';

/**
 * Joins vertices at open edges that lie within a distance of each other to one of them.
 *
 * @param mesh - any mesh [mm]
 * @param edges - its edges [-]
 * @param within - how near [mm], > 0
 * @returns which vertex each becomes [-], and how many of them become another
 */
export function nearVertices(
  mesh: TriangleMesh,
  edges: MeshEdges,
  within: number,
): { readonly name: Uint32Array; readonly joined: number } {
  const rim = rimOf(mesh, edges);
  const name = wholeNumbers(mesh.points.length / 3);
  const isJoined = new Uint8Array(rim.vertices.length);
  let joined = 0;
  for (let i = 0; i < rim.vertices.length; i += 1) {
    const other = nearBefore(rim, i, within, isJoined);
    if (other < 0) continue;
    name[rim.vertices[i]!] = rim.vertices[other]!;
    isJoined[i] = 1;
    joined += 1;
  }
  return { name, joined };
}

/** Only vertices that stand for themselves are looked at, so that a heap of a million in one place takes no longer. */
function nearBefore({ slices, places, sliceWidth }: Rim, i: number, within: number, isJoined: Uint8Array): number {
  const least = slices[i]! - Math.ceil(within / sliceWidth);
  const x = places[3 * i]!;
  const y = places[3 * i + 1]!;
  const z = places[3 * i + 2]!;
  for (let j = i - 1; j >= 0 && slices[j]! >= least; j -= 1) {
    if (isJoined[j] === 1) continue;
    const dx = x - places[3 * j]!;
    const dy = y - places[3 * j + 1]!;
    const dz = z - places[3 * j + 2]!;
    if (dx * dx + dy * dy + dz * dz <= within * within) return j;
  }
  return -1;
}
