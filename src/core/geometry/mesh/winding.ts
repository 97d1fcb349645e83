import { nextHalf, type MeshEdges } from './edges.ts';
import type { Shells } from './shells.ts';
import { areaVector } from './triangles.ts';
import type { TriangleMesh } from './triangleMesh.ts';

/**
 * Which triangles are to be turned over so that all of a shell are wound alike: those that are less of its area. Where the
 * surface has one side only, some stay against their neighbours.
 *
 * @param mesh - any mesh [mm]
 * @param edges - its edges [-]
 * @param patches - what hangs together over edges of two triangles [-]
 * @returns 1 for each triangle to be turned [-]
 */
export function unlikeWound(mesh: TriangleMesh, edges: MeshEdges, patches: Shells): Uint8Array {
  const isTurned = spread(mesh, edges);
  const balance = new Float64Array(patches.count);
  for (let triangle = 0; triangle < isTurned.length; triangle += 1) {
    const { x, y, z } = areaVector(mesh, triangle);
    balance[patches.shellOf[triangle]!]! += (isTurned[triangle] === 1 ? 1 : -1) * Math.sqrt(x * x + y * y + z * z);
  }
  for (let triangle = 0; triangle < isTurned.length; triangle += 1) {
    if (balance[patches.shellOf[triangle]!]! > 0) isTurned[triangle] = 1 - isTurned[triangle]!;
  }
  return isTurned;
}

/** Against the first triangle of each patch. */
function spread({ corners }: TriangleMesh, { partner }: MeshEdges): Uint8Array {
  const count = corners.length / 3;
  const isTurned = new Uint8Array(count);
  const isReached = new Uint8Array(count);
  const waiting = new Uint32Array(count);
  for (let first = 0; first < count; first += 1) {
    if (isReached[first] === 1) continue;
    let [from, to] = [0, 1];
    waiting[0] = first;
    isReached[first] = 1;
    for (; from < to; from += 1) {
      const triangle = waiting[from]!;
      for (let half = 3 * triangle; half < 3 * triangle + 3; half += 1) {
        const other = partner[half]!;
        const next = Math.floor(other / 3);
        if (other < 0 || isReached[next] === 1) continue;
        isReached[next] = 1;
        isTurned[next] = corners[half] === corners[other] ? 1 - isTurned[triangle]! : isTurned[triangle]!;
        waiting[to] = next;
        to += 1;
      }
    }
  }
  return isTurned;
}

/**
 * A mesh with some of its triangles turned over.
 *
 * @param mesh - any mesh [any unit]
 * @param isTurned - 1 for each triangle that is turned [-]
 * @returns the same triangles in their order
 */
export function turnedOver({ points, corners }: TriangleMesh, isTurned: Uint8Array): TriangleMesh {
  const turned = corners.slice();
  for (let triangle = 0; triangle < isTurned.length; triangle += 1) {
    if (isTurned[triangle] === 0) continue;
    turned[3 * triangle + 1] = corners[3 * triangle + 2]!;
    turned[3 * triangle + 2] = corners[3 * triangle + 1]!;
  }
  return { points, corners: turned };
}

/**
 * The next half-edge along the rim: round the end of one, through the triangles that hang together there.
 *
 * @param half - an open half-edge [-]
 * @param mesh - any mesh [any unit]
 * @param edges - its edges [-]
 * @returns an open half-edge that begins where the first ends [-]; undefined at crowded edges and against the winding
 */
export function nextAlongRim(half: number, { corners }: TriangleMesh, { partner }: MeshEdges): number | undefined {
  let at = nextHalf(half);
  for (let other = partner[at]!; other >= 0; other = partner[at]!) {
    if (corners[other] === corners[at]) return undefined;
    at = nextHalf(other);
  }
  return partner[at] === -1 ? at : undefined;
}
