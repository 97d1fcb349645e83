import { sortedByKey } from './countingSort.ts';
import { nextHalf, OPEN, type MeshEdges } from './edges.ts';
import type { TriangleMesh } from './triangleMesh.ts';

/** Any direction that no part is likely to be square to, so that few vertices lie abreast: its numbers mean nothing. */
const SLANT = [0.518, 0.6131, 0.5966] as const;
/** Into how many slices the rim is cut along it. */
const SLICES = 1 << 20;

/** Vertices at open edges, in the order of slices square to the slant. */
interface Rim {
  readonly vertices: Uint32Array;
  readonly slices: Uint32Array;
  readonly sliceWidth: number;
}

/**
 * Joins vertices at open edges that lie within a distance of each other to the one with the least number among them.
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
  const name = new Uint32Array(mesh.points.length / 3);
  for (let i = 0; i < name.length; i += 1) name[i] = i;
  let joined = 0;
  for (let i = 0; i < rim.vertices.length; i += 1) {
    const vertex = rim.vertices[i]!;
    const other = nearBefore(rim, i, within, mesh.points, name);
    if (other === undefined) continue;
    name[vertex] = other;
    joined += 1;
  }
  return { name, joined };
}

/** Only vertices that stand for themselves are looked at, so that a heap of a million in one place takes no longer. */
function nearBefore(
  { vertices, slices, sliceWidth }: Rim,
  i: number,
  within: number,
  points: Float64Array,
  name: Uint32Array,
): number | undefined {
  const at = 3 * vertices[i]!;
  const least = slices[vertices[i]!]! - Math.ceil(within / sliceWidth);
  for (let j = i - 1; j >= 0; j -= 1) {
    const other = vertices[j]!;
    if (slices[other]! < least) return undefined;
    if (name[other] !== other) continue;
    const x = points[at]! - points[3 * other]!;
    const y = points[at + 1]! - points[3 * other + 1]!;
    const z = points[at + 2]! - points[3 * other + 2]!;
    if (x * x + y * y + z * z <= within * within) return other;
  }
  return undefined;
}

function rimOf({ points, corners }: TriangleMesh, { partner }: MeshEdges): Rim {
  const isRim = new Uint8Array(points.length / 3);
  for (let half = 0; half < partner.length; half += 1) {
    if (partner[half] !== OPEN) continue;
    isRim[corners[half]!] = 1;
    isRim[corners[nextHalf(half)]!] = 1;
  }
  const vertices = new Uint32Array(isRim.length);
  let count = 0;
  for (let vertex = 0; vertex < isRim.length; vertex += 1) {
    if (isRim[vertex] === 0) continue;
    vertices[count] = vertex;
    count += 1;
  }
  return slicedRim(vertices.subarray(0, count), points);
}

function slicedRim(vertices: Uint32Array, points: Float64Array): Rim {
  const along = new Float64Array(points.length / 3);
  let [least, most] = [Infinity, -Infinity];
  for (const vertex of vertices) {
    const value =
      SLANT[0] * points[3 * vertex]! + SLANT[1] * points[3 * vertex + 1]! + SLANT[2] * points[3 * vertex + 2]!;
    along[vertex] = value;
    least = Math.min(least, value);
    most = Math.max(most, value);
  }
  const sliceWidth = Math.max((most - least) / (SLICES - 1), Number.MIN_VALUE);
  const slices = new Uint32Array(along.length);
  for (const vertex of vertices) slices[vertex] = Math.min(SLICES - 1, (along[vertex]! - least) / sliceWidth);
  return { vertices: sortedByKey(vertices, slices, SLICES), slices, sliceWidth };
}
