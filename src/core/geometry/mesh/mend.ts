import type { Damage } from './damage.ts';
import { repeatedCorners, withoutTriangles, withoutUnused } from './dropTriangles.ts';
import { duplicatesOf } from './duplicates.ts';
import { CROWDED, edgesOf, OPEN } from './edges.ts';
import { nearVertices } from './joinNear.ts';
import type { Mending } from './mending.ts';
import { boxOf, diagonalOf, meshFigures } from './meshFigures.ts';
import { heightOf, middleOfSide, middleOfTriangle } from './triangles.ts';
import { pointOf, type TriangleMesh } from './triangleMesh.ts';
import { splitAtVertices } from './splitEdges.ts';
import { windOutward } from './windOutward.ts';

/** Vertices nearer than these shares of the diagonal are joined: what single precision keeps of a coordinate, and ten times that. */
const NEAR = [1e-6, 1e-5] as const;
/** Joining takes away no more than this share of the area. */
const NO_AREA = 1e-6;
/** A triangle lower than this share of the diagonal has no area. */
const NO_HEIGHT = 1e-10;

/** A mesh with what could be mended mended. */
export interface Mended {
  readonly mesh: TriangleMesh;
  /** What was found, each kind once; empty for a sound mesh. */
  readonly damage: readonly Damage[];
}

/**
 * Finds what is wrong with a surface and mends what cannot change the part.
 *
 * Triangles that are there twice go; vertices at open edges join where they are as near as single precision can tell, and are
 * let into open edges on which they lie; small flat holes are filled by the rule of `fillHoles`; triangles are turned so that all of a shell look the same way, and a
 * shell inside out that lies in no other is turned outward. Triangles without an area stay, as they hold the surface
 * together. Counts of open and crowded edges are those of the file; `mended` says how many of them are gone.
 *
 * @param mesh - any mesh, equal vertices joined [mm]
 * @param alive - called between one step and the next [-]; may throw to give up
 * @returns the mended mesh [mm], the same object where nothing had to be done, and what was found
 */
export function mendMesh(mesh: TriangleMesh, alive: () => void = () => undefined): Mended {
  const found = withoutRepeated(mesh);
  alive();
  const single = withoutDuplicates(found);
  alive();
  const joined = withNearJoined(single, alive);
  // Triangles that were there twice with vertices of their own are found only now.
  const whole = withSeamsSplit(joined === single ? single : withoutDuplicates(joined));
  alive();
  const wound = windOutward(whole);
  alive();
  const damage = [
    ...edgeDamage('open-edges', OPEN, found, wound),
    ...edgeDamage('crowded-edges', CROWDED, found, wound),
    ...flatTriangles(found.mesh, single.mesh),
    ...wound.damage,
  ];
  return { mesh: wound.mesh === mesh ? mesh : withoutUnused(wound.mesh), damage: oneOfEachKind(damage) };
}

function withoutRepeated(mesh: TriangleMesh): Mending {
  const isRepeated = repeatedCorners(mesh);
  const first = isRepeated.indexOf(1);
  if (first < 0) return { mesh, edges: edgesOf(mesh), damage: [] };
  const count = countOf(isRepeated);
  const kept = withoutTriangles(mesh, isRepeated);
  const at = middleOfTriangle(mesh, first);
  return { mesh: kept, edges: edgesOf(kept), damage: [{ kind: 'degenerate', count, at, mended: count }] };
}

function withoutDuplicates(mending: Mending): Mending {
  const { copies, isDropped } = duplicatesOf(mending.mesh, mending.edges);
  if (copies === 0) return mending;
  const mesh = withoutTriangles(mending.mesh, isDropped);
  const at = middleOfTriangle(mending.mesh, isDropped.indexOf(1));
  const found: Damage = { kind: 'duplicate', count: copies, at, mended: copies };
  return { mesh, edges: edgesOf(mesh), damage: [...mending.damage, found] };
}

function withNearJoined(mending: Mending, alive: () => void): Mending {
  return NEAR.reduce((state, share) => {
    const joined = state.edges.open > 0 ? joinedWithin(state, share) : state;
    alive();
    return joined;
  }, mending);
}

/** As it was, where joining closes no edge or takes away what can be seen. */
function joinedWithin(mending: Mending, share: number): Mending {
  const { mesh, edges, damage } = mending;
  const { area, box } = meshFigures(mesh);
  const { name, joined } = nearVertices(mesh, edges, share * diagonalOf(box));
  if (joined === 0) return mending;
  const renamed = { points: mesh.points, corners: mesh.corners.map((vertex) => name[vertex]!) };
  const whole = withoutTriangles(renamed, repeatedCorners(renamed));
  const after = edgesOf(whole);
  if (after.open >= edges.open || area - meshFigures(whole).area > NO_AREA * area) return mending;
  const at = pointOf(
    mesh,
    name.findIndex((other, vertex) => other !== vertex),
  );
  return { mesh: whole, edges: after, damage: [...damage, { kind: 'unjoined', count: joined, at, mended: joined }] };
}

/** Vertices that lie on edges of their neighbours are let into them; as it was, where that closes no edge. */
function withSeamsSplit(mending: Mending): Mending {
  const { mesh, edges, damage } = mending;
  if (edges.open === 0) return mending;
  const split = splitAtVertices(mesh, edges, NEAR[1] * diagonalOf(boxOf(mesh)));
  if (split === undefined) return mending;
  const after = edgesOf(split.mesh);
  if (after.open >= edges.open || after.crowded > edges.crowded) return mending;
  const count = split.vertices.length;
  const found: Damage = { kind: 'unjoined', count, at: pointOf(mesh, split.vertices[0]!), mended: count };
  return { mesh: split.mesh, edges: after, damage: [...damage, found] };
}

function edgeDamage(
  kind: 'open-edges' | 'crowded-edges',
  sign: typeof OPEN | typeof CROWDED,
  before: Mending,
  after: Mending,
): readonly Damage[] {
  const side = sign === OPEN ? 'open' : 'crowded';
  const left = after.edges[side];
  // Where a triangle was there twice and nothing else, one of it is left with edges that were not open before.
  const count = Math.max(before.edges[side], left);
  if (count === 0) return [];
  const { mesh, edges } = left > 0 ? after : before;
  return [{ kind, count, at: middleOfSide(mesh, edges.partner.indexOf(sign)), mended: count - left }];
}

/** Those that were there twice may be gone; all others stay. */
function flatTriangles(before: TriangleMesh, single: TriangleMesh): readonly Damage[] {
  const least = NO_HEIGHT * diagonalOf(boxOf(before));
  const { count, first } = lowerThan(before, least);
  if (count === 0) return [];
  const left = single === before ? count : lowerThan(single, least).count;
  return [{ kind: 'degenerate', count, at: middleOfTriangle(before, first), mended: count - left }];
}

function lowerThan(mesh: TriangleMesh, least: number): { readonly count: number; readonly first: number } {
  let [count, first] = [0, -1];
  for (let triangle = 0; triangle < mesh.corners.length / 3; triangle += 1) {
    if (heightOf(mesh, triangle) > least) continue;
    count += 1;
    if (first < 0) first = triangle;
  }
  return { count, first };
}

function oneOfEachKind(damage: readonly Damage[]): readonly Damage[] {
  const kinds = new Map<Damage['kind'], Damage>();
  for (const { kind, count, at, mended } of damage) {
    const had = kinds.get(kind);
    kinds.set(kind, { kind, count: count + (had?.count ?? 0), at: had?.at ?? at, mended: mended + (had?.mended ?? 0) });
  }
  return [...kinds.values()];
}

function countOf(flags: Uint8Array): number {
  return flags.reduce((sum, flag) => sum + flag, 0);
}
