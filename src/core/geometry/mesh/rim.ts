import { sortedByKey, wholeNumbers } from './countingSort.ts';
import { nextHalf, OPEN, type MeshEdges } from './edges.ts';
import type { TriangleMesh } from './triangleMesh.ts';

/** Any direction that no part is likely to be square to, so that few vertices lie abreast: its numbers mean nothing. */
const SLANT = [0.518, 0.6131, 0.5966] as const;
/** Into how many slices the rim is cut along it at most; a short one into four for each vertex. */
const MOST_SLICES = 1 << 20;

/** Vertices at open edges, in the order of slices square to the slant; all by their place in that order. */
export interface Rim {
  readonly vertices: Uint32Array;
  readonly slices: Uint32Array;
  /** x, y and z of one after the other, so that those near each other are near in memory. */
  readonly places: Float64Array;
  readonly sliceWidth: number;
  /** Where the first slice begins, along the slant. */
  readonly least: number;
}

/**
 * The vertices at open edges.
 *
 * @param mesh - any mesh [mm]
 * @param edges - its edges [-]
 * @returns them, sliced so that those near a place are quickly found
 */
export function rimOf({ points, corners }: TriangleMesh, { partner }: MeshEdges): Rim {
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
  const { keys, count, ...slicing } = sliceKeys(rim, points);
  const order = sortedByKey(wholeNumbers(rim.length), keys, count);
  const vertices = new Uint32Array(rim.length);
  const slices = new Uint32Array(rim.length);
  const places = new Float64Array(3 * rim.length);
  for (let to = 0; to < order.length; to += 1) {
    const from = order[to]!;
    vertices[to] = rim[from]!;
    slices[to] = keys[from]!;
    for (let axis = 0; axis < 3; axis += 1) places[3 * to + axis] = points[3 * rim[from]! + axis]!;
  }
  return { vertices, slices, places, ...slicing };
}

function sliceKeys(rim: Uint32Array, points: Float64Array) {
  const along = new Float64Array(rim.length);
  let [least, most] = [Infinity, -Infinity];
  for (let i = 0; i < rim.length; i += 1) {
    const value = alongSlant(points, rim[i]!);
    along[i] = value;
    if (value < least) least = value;
    if (value > most) most = value;
  }
  const count = Math.min(MOST_SLICES, 4 * rim.length + 1);
  const sliceWidth = Math.max((most - least) / count, Number.MIN_VALUE);
  const keys = new Uint32Array(rim.length);
  for (let i = 0; i < rim.length; i += 1) keys[i] = Math.min(count - 1, (along[i]! - least) / sliceWidth);
  return { keys, count, sliceWidth, least };
}

function alongSlant(points: Float64Array, vertex: number): number {
  return SLANT[0] * points[3 * vertex]! + SLANT[1] * points[3 * vertex + 1]! + SLANT[2] * points[3 * vertex + 2]!;
}

/**
 * The slice in which a vertex lies.
 *
 * @param rim - as `rimOf` tells it [-]
 * @param points - coordinates of all vertices [mm]
 * @param vertex - one of the rim [-]
 * @returns number of the slice [-]
 */
export function sliceOf({ least, sliceWidth }: Rim, points: Float64Array, vertex: number): number {
  return Math.floor((alongSlant(points, vertex) - least) / sliceWidth);
}

/**
 * The first place in the order of the rim that lies in a slice or beyond it.
 *
 * @param rim - as `rimOf` tells it [-]
 * @param slice - number of a slice [-]
 * @returns place in the order [-]; one past the last where there is none
 */
export function firstFrom({ slices }: Rim, slice: number): number {
  let [from, to] = [0, slices.length];
  while (from < to) {
    const middle = (from + to) >> 1;
    if (slices[middle]! < slice) from = middle + 1;
    else to = middle;
  }
  return from;
}
