import { areaVector } from './triangles.ts';
import type { MeshEdges } from './edges.ts';
import type { Point3, TriangleMesh } from './triangleMesh.ts';
import { UnionFind } from './unionFind.ts';

/** Surfaces that hang together over their edges. A hollow body has two: its outside and its void. */
export interface Shells {
  /** To which shell each triangle belongs. */
  readonly shellOf: Uint32Array;
  readonly count: number;
}

/**
 * Parts a surface into what hangs together. Surfaces that only touch at a corner are two shells.
 *
 * @param edges - edges of the mesh [-]
 * @param across - whether an edge of so many triangles [-] joins them; where left out, every edge does
 * @returns shells in the order of their first triangles
 */
export function shellsOf({ sorted, starts }: MeshEdges, across: (meeting: number) => boolean = () => true): Shells {
  const groups = new UnionFind(sorted.length / 3);
  for (let edge = 0; edge + 1 < starts.length; edge += 1) {
    const from = starts[edge]!;
    const to = starts[edge + 1]!;
    if (!across(to - from)) continue;
    const first = Math.floor(sorted[from]! / 3);
    for (let i = from + 1; i < to; i += 1) groups.join(first, Math.floor(sorted[i]! / 3));
  }
  return numbered(groups, sorted.length / 3);
}

/** The root of a group is its first triangle, so that it is met before the others. */
function numbered(groups: UnionFind, triangles: number): Shells {
  const shellOf = new Uint32Array(triangles);
  let count = 0;
  for (let triangle = 0; triangle < triangles; triangle += 1) {
    const root = groups.rootOf(triangle);
    shellOf[triangle] = root === triangle ? count : shellOf[root]!;
    if (root === triangle) count += 1;
  }
  return { shellOf, count };
}

/** Figures of each shell by its number. */
export interface ShellFigures {
  readonly triangles: Uint32Array;
  /** Half-edges at which it does not go on in one other triangle; none of a shell that is closed in itself. */
  readonly rim: Uint32Array;
  readonly area: Float64Array;
  /** What it encloses, from its own reference point: negative where it is inside out, or round a void. */
  readonly volume: Float64Array;
}

/**
 * Area and enclosed volume of each shell. The volume is taken from the middle of the shell's rim, as if a
 * fan from there closed it, and from one of its corners where it is closed.
 *
 * @param mesh - any mesh [mm]
 * @param edges - its edges [-]
 * @param shells - its shells [-]
 * @returns figures of each shell [-, mm², mm³]
 */
export function shellFigures(mesh: TriangleMesh, edges: MeshEdges, { shellOf, count }: Shells): ShellFigures {
  const { from, rim } = referencePoints(mesh, edges, { shellOf, count });
  const { points, corners } = mesh;
  const triangles = new Uint32Array(count);
  const [area, volume] = [new Float64Array(count), new Float64Array(count)];
  for (let triangle = 0; triangle < shellOf.length; triangle += 1) {
    const shell = shellOf[triangle]!;
    const normal = areaVector(mesh, triangle);
    const at = 3 * corners[3 * triangle]!;
    triangles[shell]! += 1;
    area[shell]! += Math.sqrt(normal.x * normal.x + normal.y * normal.y + normal.z * normal.z) / 2;
    volume[shell]! +=
      ((points[at]! - from[3 * shell]!) * normal.x +
        (points[at + 1]! - from[3 * shell + 1]!) * normal.y +
        (points[at + 2]! - from[3 * shell + 2]!) * normal.z) /
      6;
  }
  return { triangles, rim, area, volume };
}

function referencePoints({ points, corners }: TriangleMesh, { partner }: MeshEdges, { shellOf, count }: Shells) {
  const from = new Float64Array(3 * count);
  const rim = new Uint32Array(count);
  for (let half = 0; half < partner.length; half += 1) {
    if (partner[half]! >= 0) continue;
    const shell = shellOf[Math.floor(half / 3)]!;
    rim[shell]! += 1;
    for (let axis = 0; axis < 3; axis += 1) from[3 * shell + axis]! += points[3 * corners[half]! + axis]!;
  }
  for (let triangle = 0; triangle < shellOf.length; triangle += 1) {
    const shell = shellOf[triangle]!;
    if (rim[shell]! > 0) continue;
    for (let axis = 0; axis < 3; axis += 1) from[3 * shell + axis] = points[3 * corners[3 * triangle]! + axis]!;
  }
  for (let shell = 0; shell < count; shell += 1) {
    for (let axis = 0; axis < 3; axis += 1) from[3 * shell + axis]! /= Math.max(1, rim[shell]!);
  }
  return { from, rim };
}

/**
 * How often a surface winds round a point, by the solid angles of its triangles (A. van Oosterom and J. Strackee 1983, from
 * memory): 1 inside a closed body, 0 outside, and between them near a hole.
 *
 * @param mesh - any mesh [mm]
 * @param triangles - which of its triangles make the surface [-]
 * @param at - the point [mm]
 * @returns windings [-]
 */
export function windingsRound({ points, corners }: TriangleMesh, triangles: Uint32Array, at: Point3): number {
  let sum = 0;
  for (let i = 0; i < triangles.length; i += 1) {
    const p = 3 * corners[3 * triangles[i]!]!;
    const q = 3 * corners[3 * triangles[i]! + 1]!;
    const r = 3 * corners[3 * triangles[i]! + 2]!;
    const ax = points[p]! - at.x;
    const ay = points[p + 1]! - at.y;
    const az = points[p + 2]! - at.z;
    const bx = points[q]! - at.x;
    const by = points[q + 1]! - at.y;
    const bz = points[q + 2]! - at.z;
    const cx = points[r]! - at.x;
    const cy = points[r + 1]! - at.y;
    const cz = points[r + 2]! - at.z;
    const a = Math.sqrt(ax * ax + ay * ay + az * az);
    const b = Math.sqrt(bx * bx + by * by + bz * bz);
    const c = Math.sqrt(cx * cx + cy * cy + cz * cz);
    const triple = ax * (by * cz - bz * cy) + ay * (bz * cx - bx * cz) + az * (bx * cy - by * cx);
    const ab = ax * bx + ay * by + az * bz;
    const bc = bx * cx + by * cy + bz * cz;
    const ca = cx * ax + cy * ay + cz * az;
    sum += 2 * Math.atan2(triple, a * b * c + ab * c + bc * a + ca * b);
  }
  return sum / (4 * Math.PI);
}
