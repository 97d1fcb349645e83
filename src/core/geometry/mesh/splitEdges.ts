import { OPEN, type MeshEdges } from './edges.ts';
import { filledLoop, loopPlane } from './fillLoop.ts';
import { firstFrom, rimOf, sliceOf, type Rim } from './rim.ts';
import type { TriangleMesh } from './triangleMesh.ts';

/** How many pairs of an edge and a vertex may be looked at; loose triangles by the million have more, and no seams. */
const MOST_LOOKS = 2e7;

/** A mesh with vertices let into edges. */
export interface Split {
  readonly mesh: TriangleMesh;
  readonly vertices: readonly number[];
}

/**
 * Lets vertices into open edges on which they lie: along a seam one side may have been cut at more places than the other.
 *
 * @param mesh - any mesh [mm]
 * @param edges - its edges [-]
 * @param within - how near a vertex lies to an edge to lie on it [mm], > 0
 * @returns the mesh and which vertices were let in [-]; undefined where none is, or where there is too much to look at
 */
export function splitAtVertices(mesh: TriangleMesh, edges: MeshEdges, within: number): Split | undefined {
  const rim = rimOf(mesh, edges);
  const onEdge = new Map<number, readonly number[]>();
  let looks = 0;
  for (let half = 0; half < edges.partner.length; half += 1) {
    if (edges.partner[half] !== OPEN) continue;
    const [from, to] = spanOf(half, mesh, rim, within);
    looks += to - from;
    if (looks > MOST_LOOKS) return undefined;
    const found = verticesOn(half, mesh, rim, from, to, within);
    if (found.length > 0) onEdge.set(half, found);
  }
  return onEdge.size === 0 ? undefined : { mesh: withLetIn(mesh, onEdge), vertices: [...onEdge.values()].flat() };
}

function endsOf(half: number, corners: Uint32Array): readonly [number, number] {
  return [corners[half]!, corners[half % 3 === 2 ? half - 2 : half + 1]!];
}

/** Places in the order of the rim between which all lie that can be on an edge. */
function spanOf(half: number, { points, corners }: TriangleMesh, rim: Rim, within: number): readonly [number, number] {
  const slices = endsOf(half, corners).map((vertex) => sliceOf(rim, points, vertex));
  const spare = Math.ceil(within / rim.sliceWidth) + 1;
  return [firstFrom(rim, Math.min(...slices) - spare), firstFrom(rim, Math.max(...slices) + spare + 1)];
}

/** In the order in which they lie along it. */
function verticesOn(
  half: number,
  { points, corners }: TriangleMesh,
  { vertices, places }: Rim,
  from: number,
  to: number,
  within: number,
): readonly number[] {
  const [a, b] = endsOf(half, corners);
  const [ax, ay, az] = [points[3 * a]!, points[3 * a + 1]!, points[3 * a + 2]!];
  const [x, y, z] = [points[3 * b]! - ax, points[3 * b + 1]! - ay, points[3 * b + 2]! - az];
  const length = Math.sqrt(x * x + y * y + z * z);
  const found: { readonly vertex: number; readonly along: number }[] = [];
  for (let i = from; i < to; i += 1) {
    const px = places[3 * i]! - ax;
    const py = places[3 * i + 1]! - ay;
    const pz = places[3 * i + 2]! - az;
    const along = (px * x + py * y + pz * z) / length;
    // Nearer to an end it is that end, or nothing that splitting could mend.
    if (!(along > within && along < length - within)) continue;
    if (px * px + py * py + pz * pz - along * along <= within * within) found.push({ vertex: vertices[i]!, along });
  }
  return found.toSorted((p, q) => p.along - q.along).map(({ vertex }) => vertex);
}

function withLetIn({ points, corners }: TriangleMesh, onEdge: ReadonlyMap<number, readonly number[]>): TriangleMesh {
  const all: number[] = [];
  for (let first = 0; first < corners.length; first += 3) {
    const round = [0, 1, 2].flatMap((k) => [corners[first + k]!, ...(onEdge.get(first + k) ?? [])]);
    const own = round.length === 3 || new Set(round).size < round.length ? undefined : filled(points, round);
    for (const vertex of own ?? corners.subarray(first, first + 3)) all.push(vertex);
  }
  return { points, corners: Uint32Array.from(all) };
}

function filled(points: Float64Array, round: readonly number[]): readonly number[] | undefined {
  return filledLoop(points, round, loopPlane(points, round));
}
