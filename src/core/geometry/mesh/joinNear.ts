import { sortedByKey, wholeNumbers } from './countingSort.ts';
import { nextHalf, OPEN, type MeshEdges } from './edges.ts';
import type { TriangleMesh } from './triangleMesh.ts';

/** Any direction that no part is likely to be square to, so that few vertices lie abreast: its numbers mean nothing. */
const SLANT = [0.518, 0.6131, 0.5966] as const;
/** Into how many slices the rim is cut along it. */
const SLICES = 1 << 20;

/** Vertices at open edges, in the order of slices square to the slant; all by their place in that order. */
interface Rim {
  readonly vertices: Uint32Array;
  readonly slices: Uint32Array;
  /** x, y and z of one after the other, so that those near each other are near in memory. */
  readonly places: Float64Array;
  readonly sliceWidth: number;
}

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

// Plain loops from here on: a file of loose triangles has three million such vertices.
function slicedRim(rim: Uint32Array, points: Float64Array): Rim {
  const { keys, sliceWidth } = sliceKeys(rim, points);
  const order = sortedByKey(wholeNumbers(rim.length), keys, SLICES);
  const vertices = new Uint32Array(rim.length);
  const slices = new Uint32Array(rim.length);
  const places = new Float64Array(3 * rim.length);
  for (let to = 0; to < order.length; to += 1) {
    const from = order[to]!;
    vertices[to] = rim[from]!;
    slices[to] = keys[from]!;
    for (let axis = 0; axis < 3; axis += 1) places[3 * to + axis] = points[3 * rim[from]! + axis]!;
  }
  return { vertices, slices, places, sliceWidth };
}

function sliceKeys(rim: Uint32Array, points: Float64Array) {
  const along = new Float64Array(rim.length);
  let [least, most] = [Infinity, -Infinity];
  for (let i = 0; i < rim.length; i += 1) {
    const at = 3 * rim[i]!;
    const value = SLANT[0] * points[at]! + SLANT[1] * points[at + 1]! + SLANT[2] * points[at + 2]!;
    along[i] = value;
    if (value < least) least = value;
    if (value > most) most = value;
  }
  const sliceWidth = Math.max((most - least) / (SLICES - 1), Number.MIN_VALUE);
  const keys = new Uint32Array(rim.length);
  for (let i = 0; i < rim.length; i += 1) keys[i] = Math.min(SLICES - 1, (along[i]! - least) / sliceWidth);
  return { keys, sliceWidth };
}
