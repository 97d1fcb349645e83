/**
 * Places at which a part is thin: from points spread over its surface, rays go inwards, and where they meet a wall that
 * faces the other way, the middle between the two is one.
 */
import { edgesOf, nextHalf } from '../../geometry/mesh/edges.ts';
import { pointOf, type Point3 } from '../../geometry/mesh/triangleMesh.ts';
import { along3, cross3, dot3, from3, length3, times3, unit3 } from '../../geometry/mesh/vector3.ts';
import type { Mm } from '../../units.ts';
import type { Solid } from './solid.ts';

/** So many points are spread by area, … */
const SAMPLES = 20_000;
/** … and up to so many more, so that each triangle has one: what is small is made of small ones. */
const MOST_SAMPLES = 60_000;
/** Walls face each other where their normals are at least so opposed: up to 18° from parallel, which leaves out edges. */
const OPPOSED = -0.95;
/** From the bottom of a groove the other wall is seen slantwise: up to 53° off. */
const OPPOSED_TO_GROOVE = -0.6;
/** A hollow edge turns by more than the facets of a hollow surface do: 25°. */
const GROOVE = Math.sin((25 * Math.PI) / 180);
/** A surface of more triangles than this has facets in its grooves, whose rays tell enough. */
const MOST_FOR_GROOVES = 300_000;
/** Places along a hollow edge from which rays go. */
const ALONG_GROOVE = [0.5, 0.2, 0.8];
/**
 * What is thinner is the roughness of a surface: 0.05 mm, a quarter of what any printer lays, or less in a part so small that
 * its unit may be in doubt; in any case a share of the part, as single precision and scanning have it.
 */
export function roughness(size: Mm): Mm {
  return Math.max(size / 5000, Math.min(0.05, size / 500));
}

/** Two whole numbers whose multiples spread evenly over a square (the plastic number's powers). */
const SPREAD = [0.7548776662466927, 0.5698402909980532] as const;

export interface ThinSpot {
  readonly middle: Point3;
  /** Across the thin way, of length 1. */
  readonly across: Point3;
  readonly thickness: Mm;
}

/** Called now and then while it looks, with the share that is done; may throw to give up. */
export type Alive = (share: number) => void;

/** One spot, from a point on a triangle. */
function spotFrom(solid: Solid, point: Point3, normal: Point3, thickest: Mm, opposed = OPPOSED): ThinSpot | undefined {
  const inward = times3(normal, -1);
  const hit = solid.wall(point, inward, 2 * thickest);
  if (!hit || dot3(hit.normal, normal) > opposed) return undefined;
  const across = unit3(from3(hit.normal, normal));
  if (!across) return undefined;
  const middle = along3(point, inward, hit.at / 2);
  const both = solid.through(middle, across);
  if (!both) return undefined;
  const thickness = both.ahead.at + both.behind.at;
  if (thickness > thickest || thickness < roughness(solid.size)) return undefined;
  return { middle: along3(middle, across, (both.ahead.at - both.behind.at) / 2), across, thickness };
}

/**
 * Thin places of a part, thinnest first.
 *
 * @param solid - the part [mm]
 * @param thickest - thicker places are left out [mm], > 0
 * @param alive - called every few hundred rays with the share that is done [-]
 * @returns places inside the material [mm]; every thin wall that holds a whole triangle has at least one while the part has
 *   no more than 40 000 triangles
 */
export function thinSpots(solid: Solid, thickest: Mm, alive: Alive): readonly ThinSpot[] {
  const count = solid.mesh.corners.length / 3;
  let area = 0;
  for (let t = 0; t < count; t += 1) area += length3(solid.areaNormal(t)) / 2;
  const share = area / SAMPLES;
  const every = Math.max(1, Math.ceil(count / (MOST_SAMPLES - SAMPLES)));
  const spots: ThinSpot[] = [];
  let owed = 0;
  let number = 0;
  for (let t = 0; t < count; t += 1) {
    if (t % 256 === 0) alive((0.7 * t) / count);
    const areaNormal = solid.areaNormal(t);
    const normal = unit3(areaNormal);
    if (!normal) continue;
    owed += length3(areaNormal) / 2 / share;
    let due = Math.floor(owed);
    owed -= due;
    if (due === 0 && t % every === 0) due = 1;
    for (let i = 0; i < due; i += 1) {
      number += 1;
      const spot = spotFrom(solid, due === 1 ? middleOf(solid, t) : pointIn(solid, t, number), normal, thickest);
      if (spot) spots.push(spot);
    }
  }
  if (count <= MOST_FOR_GROOVES) spots.push(...grooveSpots(solid, thickest, alive));
  return spots.toSorted((a, b) => a.thickness - b.thickness);
}

/** Thin places under the hollow edges of a surface: two grooves that nearly meet have no walls that face each other. */
function grooveSpots(solid: Solid, thickest: Mm, alive: Alive): readonly ThinSpot[] {
  const { mesh } = solid;
  const { partner } = edgesOf(mesh);
  const spots: ThinSpot[] = [];
  for (let half = 0; half < partner.length; half += 1) {
    if (half % 256 === 0) alive(0.7 + (0.3 * half) / partner.length);
    const other = partner[half]!;
    if (other < half) continue;
    const a = unit3(solid.areaNormal(Math.floor(half / 3)));
    const b = unit3(solid.areaNormal(Math.floor(other / 3)));
    if (!a || !b) continue;
    const from = pointOf(mesh, mesh.corners[half]!);
    const to = pointOf(mesh, mesh.corners[nextHalf(half)]!);
    const edge = from3(from, to);
    // Along the edge as its first triangle runs, hollow edges turn the other way round than those that stand out.
    if (dot3(cross3(a, b), edge) > -GROOVE * length3(edge)) continue;
    const normal = unit3(along3(a, b, 1));
    if (!normal) continue;
    for (const share of ALONG_GROOVE) {
      const spot = spotFrom(solid, along3(from, edge, share), normal, thickest, OPPOSED_TO_GROOVE);
      if (spot) spots.push(spot);
    }
  }
  return spots;
}

function mixed(solid: Solid, triangle: number, u: number, v: number): Point3 {
  const { points: p, corners } = solid.mesh;
  const a = 3 * corners[3 * triangle]!;
  const b = 3 * corners[3 * triangle + 1]!;
  const c = 3 * corners[3 * triangle + 2]!;
  const mix = (k: number) => p[a + k]! + u * (p[b + k]! - p[a + k]!) + v * (p[c + k]! - p[a + k]!);
  return { x: mix(0), y: mix(1), z: mix(2) };
}

function middleOf(solid: Solid, triangle: number): Point3 {
  return mixed(solid, triangle, 1 / 3, 1 / 3);
}

/** The nth of points spread evenly over a triangle. */
function pointIn(solid: Solid, triangle: number, n: number): Point3 {
  const u = (n * SPREAD[0]) % 1;
  const v = (n * SPREAD[1]) % 1;
  return u + v > 1 ? mixed(solid, triangle, 1 - u, 1 - v) : mixed(solid, triangle, u, v);
}
