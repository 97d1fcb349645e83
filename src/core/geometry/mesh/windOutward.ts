import type { Damage } from './damage.ts';
import { edgesOf, type MeshEdges } from './edges.ts';
import { fillHoles } from './holes.ts';
import type { Mending } from './mending.ts';
import { insideOutShells } from './outward.ts';
import { shellFigures, shellsOf, type Shells } from './shells.ts';
import { middleOfSide, middleOfTriangle } from './triangles.ts';
import type { TriangleMesh } from './triangleMesh.ts';
import { turnedOver, unlikeWound } from './winding.ts';

/**
 * Winds each shell alike, fills its small holes, which need that, and turns it outward, which needs the holes filled.
 *
 * @param mending - a mesh without triangles of repeated vertices [mm]
 * @returns the same with what was found: `flipped`, `inside-out`
 */
export function windOutward({ mesh, edges, damage }: Mending): Mending {
  const isTurned = unlikeWound(mesh, edges, patchesOf(edges));
  const alike = withEdges(mesh, edges, isTurned);
  const filled = withHolesFilled(alike.mesh, alike.edges);
  const patches = patchesOf(filled.edges);
  const isInsideOut = insideOutShells(filled.mesh, patches, shellFigures(filled.mesh, filled.edges, patches));
  const outward = withEdges(
    filled.mesh,
    filled.edges,
    Uint8Array.from(patches.shellOf, (patch) => isInsideOut[patch]!),
  );
  const turned = isTurned.map((is, triangle) => is ^ isInsideOut[patches.shellOf[triangle]!]!);
  const found = turnedDamage(mesh, turned, patches);
  return { ...outward, damage: [...damage, ...found, ...stillClashing(outward.mesh, outward.edges)] };
}

/** Surfaces that hang together over edges of two triangles: the only ones over which a winding can be passed on. */
function patchesOf(edges: MeshEdges): Shells {
  return shellsOf(edges, (meeting) => meeting === 2);
}

function withEdges(mesh: TriangleMesh, edges: MeshEdges, isTurned: Uint8Array) {
  if (!isTurned.includes(1)) return { mesh, edges };
  const turned = turnedOver(mesh, isTurned);
  return { mesh: turned, edges: edgesOf(turned) };
}

function withHolesFilled(mesh: TriangleMesh, edges: MeshEdges) {
  if (edges.open === 0) return { mesh, edges };
  const patches = patchesOf(edges);
  const corners = fillHoles(mesh, edges, patches, shellFigures(mesh, edges, patches));
  if (corners.length === 0) return { mesh, edges };
  const all = new Uint32Array(mesh.corners.length + corners.length);
  all.set(mesh.corners);
  all.set(corners, mesh.corners.length);
  const filled = { points: mesh.points, corners: all };
  return { mesh: filled, edges: edgesOf(filled) };
}

/** Where all of a patch had to be turned it was inside out; where some of it had to, they were flipped. */
function turnedDamage(mesh: TriangleMesh, isTurned: Uint8Array, { shellOf, count }: Shells): readonly Damage[] {
  const [turned, all] = [new Uint32Array(count), new Uint32Array(count)];
  for (let triangle = 0; triangle < isTurned.length; triangle += 1) {
    all[shellOf[triangle]!]! += 1;
    turned[shellOf[triangle]!]! += isTurned[triangle]!;
  }
  const isWhole = (patch: number) => turned[patch] === all[patch];
  const atFirst = (whole: boolean) =>
    middleOfTriangle(
      mesh,
      isTurned.findIndex((is, triangle) => is === 1 && isWhole(shellOf[triangle]!) === whole),
    );
  let [shells, triangles] = [0, 0];
  for (let patch = 0; patch < count; patch += 1) {
    if (turned[patch] === 0) continue;
    if (isWhole(patch)) shells += 1;
    else triangles += turned[patch]!;
  }
  return [
    ...(triangles > 0 ? [{ kind: 'flipped', count: triangles, at: atFirst(false), mended: triangles } as const] : []),
    ...(shells > 0 ? [{ kind: 'inside-out', count: shells, at: atFirst(true), mended: shells } as const] : []),
  ];
}

/** Edges of a surface with one side only, which cannot be wound alike. */
function stillClashing(mesh: TriangleMesh, { partner, clashing }: MeshEdges): readonly Damage[] {
  if (clashing === 0) return [];
  const first = partner.findIndex((other, half) => other >= 0 && mesh.corners[other] === mesh.corners[half]);
  return [{ kind: 'flipped', count: clashing, at: middleOfSide(mesh, first), mended: 0 }];
}
