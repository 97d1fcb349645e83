import { nextHalf, type MeshEdges } from '../../geometry/mesh/edges.ts';
import { radians } from '../../units.ts';
import type { Facing } from './facing.ts';

/** Faces that meet more bluntly than this are taken for one that is rounded. Common practice, no source. */
const COS_SHARP = Math.cos(radians(25));

/** What an edge is drawn as. */
export type EdgeClass = 'silhouette' | 'edge';

/** Edges that may be drawn, each from one vertex to another. */
export interface DrawnEdges {
  readonly count: number;
  readonly from: Uint32Array;
  readonly to: Uint32Array;
  /** A triangle on it that looks at the eye where there is one. */
  readonly triangle: Uint32Array;
  /** Another on it, or the same. */
  readonly other: Uint32Array;
  /** 1 where the surface turns away or ends. */
  readonly isSilhouette: Uint8Array;
}

/**
 * Edges at which the surface ends, turns away from the eye, or turns sharply.
 *
 * @param corners - of the mesh [-]
 * @param edges - its edges [-]
 * @param facing - which way its triangles look [-]
 * @returns edges that are drawn where nothing hides them
 */
export function drawnEdges(corners: Uint32Array, edges: MeshEdges, facing: Facing): DrawnEdges {
  const { sorted, starts } = edges;
  const most = starts.length - 1;
  const drawn = {
    from: new Uint32Array(most),
    to: new Uint32Array(most),
    triangle: new Uint32Array(most),
    other: new Uint32Array(most),
    isSilhouette: new Uint8Array(most),
  };
  // The inside of a closed surface is never seen.
  const isClosed = edges.open === 0;
  let count = 0;
  for (let edge = 0; edge < most; edge += 1) {
    const at = starts[edge]!;
    const meeting = starts[edge + 1]! - at;
    const kind = kindOf(sorted, at, meeting, facing, isClosed);
    if (kind === undefined) continue;
    const half = sorted[at]!;
    const [one, two] = [Math.floor(half / 3), Math.floor(sorted[at + meeting - 1]! / 3)];
    drawn.from[count] = corners[half]!;
    drawn.to[count] = corners[nextHalf(half)]!;
    drawn.triangle[count] = facing.side[one]! > 0 ? one : two;
    drawn.other[count] = facing.side[one]! > 0 ? two : one;
    drawn.isSilhouette[count] = kind === 'silhouette' ? 1 : 0;
    count += 1;
  }
  return { count, ...drawn };
}

function kindOf(
  sorted: Uint32Array,
  at: number,
  meeting: number,
  { side, normals }: Facing,
  isClosed: boolean,
): EdgeClass | undefined {
  if (meeting === 1) return 'silhouette';
  const first = Math.floor(sorted[at]! / 3);
  let isSharp = false;
  for (let i = at + 1; i < at + meeting; i += 1) {
    const other = Math.floor(sorted[i]! / 3);
    if (side[first]! * side[other]! < 0) return 'silhouette';
    isSharp ||= isSharpBetween(normals, first, other);
  }
  return isSharp && !(isClosed && side[first]! < 0) ? 'edge' : undefined;
}

/** False where a triangle looks nowhere. */
function isSharpBetween(normals: Float32Array, a: number, b: number): boolean {
  const [ax, ay, az] = [normals[3 * a]!, normals[3 * a + 1]!, normals[3 * a + 2]!];
  const [bx, by, bz] = [normals[3 * b]!, normals[3 * b + 1]!, normals[3 * b + 2]!];
  if ((ax === 0 && ay === 0 && az === 0) || (bx === 0 && by === 0 && bz === 0)) return false;
  return ax * bx + ay * by + az * bz < COS_SHARP;
}
