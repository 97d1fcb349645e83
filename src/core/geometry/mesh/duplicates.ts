import { sortedByKey, wholeNumbers } from './countingSort.ts';
import type { MeshEdges } from './edges.ts';
import type { TriangleMesh } from './triangleMesh.ts';

/** Triangles between the same three vertices, in whatever order. */
export interface Duplicates {
  /** How many there are beyond the first of each. */
  readonly copies: number;
  /** 1 for each triangle that can go without leaving a hole. */
  readonly isDropped: Uint8Array;
}

/**
 * Finds triangles that are in the mesh more than once. One of each is kept, but for sheets without a thickness: where two
 * of them look opposite ways and the surface round them is closed without them, none is.
 *
 * @param mesh - any mesh without triangles of repeated vertices [any unit]
 * @param edges - its edges [-]
 * @returns how many there are and which may go
 */
export function duplicatesOf(mesh: TriangleMesh, edges: MeshEdges): Duplicates {
  const keys = cornersInOrder(mesh.corners);
  const vertices = mesh.points.length / 3;
  const sorted = keys.reduceRight((items, key) => sortedByKey(items, key, vertices), wholeNumbers(keys[0].length));
  const isDropped = new Uint8Array(sorted.length);
  const isSame = (a: number, b: number) => keys.every((key) => key[a] === key[b]);
  let copies = 0;
  for (let from = 0, to = 1; from < sorted.length; from = to, to += 1) {
    while (to < sorted.length && isSame(sorted[from]!, sorted[to]!)) to += 1;
    if (to - from === 1) continue;
    copies += to - from - 1;
    const group = sorted.subarray(from, to);
    for (const triangle of isNeedless(group, mesh, edges) ? group : group.subarray(1)) isDropped[triangle] = 1;
  }
  return { copies, isDropped };
}

/** The least, the middle and the greatest vertex of each triangle. */
function cornersInOrder(corners: Uint32Array): readonly [Uint32Array, Uint32Array, Uint32Array] {
  const count = corners.length / 3;
  const [least, middle, most] = [new Uint32Array(count), new Uint32Array(count), new Uint32Array(count)];
  for (let i = 0; i < count; i += 1) {
    const p = corners[3 * i]!;
    const q = corners[3 * i + 1]!;
    const r = corners[3 * i + 2]!;
    const low = Math.min(p, q, r);
    const high = Math.max(p, q, r);
    least[i] = low;
    most[i] = high;
    middle[i] = p + q + r - low - high;
  }
  return [least, middle, most];
}

function isNeedless(group: Uint32Array, mesh: TriangleMesh, edges: MeshEdges): boolean {
  const first = group[0]!;
  const isSheet = group.some((triangle) => isUpward(mesh, triangle) !== isUpward(mesh, first));
  return isSheet && [0, 1, 2].every((k) => meetingAt(3 * first + k, mesh, edges) - group.length !== 1);
}

/** Whether its corners rise from the least on: tells the two windings of three vertices apart. */
function isUpward({ corners }: TriangleMesh, triangle: number): boolean {
  const [p, q, r] = [corners[3 * triangle]!, corners[3 * triangle + 1]!, corners[3 * triangle + 2]!];
  return (p < q && q < r) || (q < r && r < p) || (r < p && p < q);
}

/** How many triangles meet at the edge of a half-edge: edges lie in the order of their vertices, so it is searched by halves. */
function meetingAt(half: number, { corners }: TriangleMesh, { sorted, starts }: MeshEdges): number {
  const [low, high] = ends(half, corners);
  let [from, to] = [0, starts.length - 2];
  while (from < to) {
    const middle = (from + to) >> 1;
    const [l, h] = ends(sorted[starts[middle]!]!, corners);
    if (l < low || (l === low && h < high)) from = middle + 1;
    else to = middle;
  }
  return starts[from + 1]! - starts[from]!;
}

function ends(half: number, corners: Uint32Array): readonly [number, number] {
  const [from, to] = [corners[half]!, corners[half % 3 === 2 ? half - 2 : half + 1]!];
  return from < to ? [from, to] : [to, from];
}
