/** A cut through a part square to an axis, with all that is thin in it. */
import { simplified, unite } from '../../geometry/clipping.ts';
import { cutByPlane, type Plane } from '../../geometry/mesh/planeSection.ts';
import type { Point3, TriangleMesh } from '../../geometry/mesh/triangleMesh.ts';
import { cross3, dot3, from3, squareTo, times3, unit3 } from '../../geometry/mesh/vector3.ts';
import type { Point } from '../../geometry/outline.ts';
import type { Mm } from '../../units.ts';
import { Boundary } from './boundary.ts';
import { measureRun, type MeasuredRun } from './measureRun.ts';
import { thinRuns, type RunEnd } from './regions.ts';
import { trianglesOf, type Triangles } from './triangles.ts';

/** A hole in the surface of up to this share of the part's size leaves a gap that a section may be drawn across. */
const CLOSABLE = 0.02;
/** Edges are split no shorter than this share of the thickness that is looked at. */
const FINEST = 1 / 8;
/** Roughness of this share of the thickness may be smoothed out of an outline. */
const SMOOTHED = 1 / 40;
/** An axis that leans from the vertical by less is drawn as seen from above. */
const UPRIGHT = 0.7;

/** A section with its thin runs. */
export interface Section {
  readonly plane: Plane;
  readonly outlines: readonly (readonly Point[])[];
  readonly triangles: Triangles;
  readonly runs: readonly MeasuredRun[];
  /** True where it was drawn across a hole, or is too rough, to be trusted. */
  readonly isOpen: boolean;
}

/** Axes of a plane through a point, square to a direction: seen from above where that is possible, else with z upwards. */
export function planeAt(origin: Point3, axis: Point3): Plane {
  const normal = axis.z < -1e-9 || (Math.abs(axis.z) <= 1e-9 && axis.y > 1e-9) ? times3(axis, -1) : axis;
  if (Math.abs(normal.z) > UPRIGHT) {
    const right = unit3(squareTo(normal, { x: 1, y: 0, z: 0 })) ?? { x: 1, y: 0, z: 0 };
    return { origin, right, up: cross3(normal, right), normal };
  }
  const up = unit3(squareTo(normal, { x: 0, y: 0, z: 1 })) ?? { x: 0, y: 1, z: 0 };
  return { origin, right: cross3(up, normal), up, normal };
}

/** A point of the section in space. */
export function inSpace({ origin, right, up }: Plane, { x, y }: Point): Point3 {
  return {
    x: origin.x + x * right.x + y * up.x,
    y: origin.y + x * right.y + y * up.y,
    z: origin.z + x * right.z + y * up.z,
  };
}

/** A point in space as seen along the axis, with how far it lies in front of the plane. */
export function inPlane({ origin, right, up, normal }: Plane, point: Point3): Point & { readonly before: Mm } {
  const off = from3(origin, point);
  return { x: dot3(off, right), y: dot3(off, up), before: dot3(off, normal) };
}

/** Open chains joined end to nearest start, and the widest gap that was bridged [mm]. */
function bridged(open: readonly (readonly Point[])[]): { readonly loops: readonly Point[][]; readonly gap: Mm } {
  const left = open.map((chain) => [...chain]);
  const loops: Point[][] = [];
  let gap = 0;
  for (let loop = left.pop(); loop; loop = left.pop()) {
    for (;;) {
      const end = loop.at(-1)!;
      const away = ({ x, y }: Point) => Math.hypot(x - end.x, y - end.y);
      const home = away(loop[0]!);
      const starts = left.map((chain) => away(chain[0]!));
      const nearest = Math.min(home, ...starts);
      gap = Math.max(gap, nearest);
      if (nearest === home) break;
      loop.push(...left.splice(starts.indexOf(nearest), 1)[0]!);
    }
    loops.push(loop);
  }
  return { loops, gap };
}

/** The middle of a place where runs meet. */
function middleOf({ boundary, corners }: Triangles, end: RunEnd): Point | undefined {
  if (end.kind !== 'meeting') return undefined;
  let x = 0;
  let y = 0;
  for (const t of end.triangles) {
    for (let k = 0; k < 3; k += 1) {
      x += boundary.x[corners[3 * t + k]!]! / 3;
      y += boundary.y[corners[3 * t + k]!]! / 3;
    }
  }
  return { x: x / end.triangles.length, y: y / end.triangles.length };
}

/** Outlines cut into triangles; without their roughness where that is in the way. */
function trianglesIn(outlines: readonly (readonly Point[])[], thickest: Mm, fine: Mm): Triangles | undefined {
  let found: Triangles | undefined;
  for (const tolerance of [0, SMOOTHED * fine]) {
    const boundary = new Boundary(tolerance > 0 ? simplified(outlines, tolerance) : outlines);
    if (boundary.x.length < 3) return found;
    found = trianglesOf(boundary, thickest, FINEST * fine);
    if (found.missing === 0) return found;
  }
  return found;
}

/**
 * Cuts a part and measures what is thin in the cut.
 *
 * @param mesh - the part [mm]
 * @param size - length of the diagonal of its box [mm]
 * @param plane - where to cut [mm]
 * @param thickest - what is thicker is not looked at [mm]
 * @param fine - the thickness that matters most here [mm]
 * @returns the section with its runs; undefined where the plane cuts nothing
 */
export function sectionAt(mesh: TriangleMesh, size: Mm, plane: Plane, thickest: Mm, fine: Mm): Section | undefined {
  const { loops, open } = cutByPlane(mesh, plane);
  const { loops: closed, gap } = bridged(open);
  const outlines = unite([...loops, ...closed]);
  if (outlines.length === 0) return undefined;
  const triangles = trianglesIn(outlines, thickest, fine);
  if (!triangles) return undefined;
  const { boundary } = triangles;
  const isOpen = gap > CLOSABLE * size || triangles.missing > 0;
  const measured = (isOpen ? [] : thinRuns(triangles, thickest)).flatMap(
    (run) => measureRun(boundary, run, (end) => middleOf(triangles, end)) ?? [],
  );
  return { plane, outlines, triangles, runs: measured, isOpen };
}
