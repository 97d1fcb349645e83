import { OPEN, type MeshEdges } from './edges.ts';
import { filledLoop, loopPlane, type LoopPlane } from './fillLoop.ts';
import { boxOf, diagonalOf } from './meshFigures.ts';
import type { Shells, ShellFigures } from './shells.ts';
import { nextAlongRim } from './winding.ts';
import type { TriangleMesh } from './triangleMesh.ts';

/*
 * Which holes are filled. Ours, without a source: what is missing must be beyond doubt, so that the part is the one that
 * was drawn. A cup without its lid or a tube open at both ends stays as it is.
 */
/** A fill is flat to this share of the length round the hole. */
const FLAT = 1e-3;
/** It has no more sides than this, or … */
const FEW_SIDES = 8;
/** … it is no longer round than this share of the diagonal of the part. */
const SHORT = 0.05;
/** It adds no more than this share of the area that is there. */
const LITTLE_AREA = 0.1;
/** Longer ways round are not looked at, so that the time stays within bounds. */
const MOST_SIDES = 96;

/**
 * Fills small flat holes.
 *
 * @param mesh - a mesh whose shells are each wound alike [mm]
 * @param edges - its edges [-]
 * @param patches - what hangs together over edges of two triangles [-]
 * @param figures - figures of the patches [mm², mm³]
 * @returns three vertices [-] of each triangle to add, wound like those round it
 */
export function fillHoles(
  mesh: TriangleMesh,
  edges: MeshEdges,
  patches: Shells,
  figures: ShellFigures,
): readonly number[] {
  const diagonal = diagonalOf(boxOf(mesh));
  const corners: number[] = [];
  const taken = new TakenEdges(mesh, edges);
  for (const loop of rimLoops(mesh, edges)) {
    const area = figures.area[patches.shellOf[Math.floor(loop[0]! / 3)]!]!;
    const round = loop.map((half) => mesh.corners[half]!).toReversed();
    const plane = loopPlane(mesh.points, round);
    if (!isFilled(plane, round.length, diagonal, area)) continue;
    const fill = filledLoop(mesh.points, round, plane);
    if (fill === undefined || !taken.addAll(fill, round)) continue;
    for (const vertex of fill) corners.push(vertex);
  }
  return corners;
}

function isFilled({ thickness, length, area }: LoopPlane, sides: number, diagonal: number, have: number): boolean {
  const isFlat = thickness <= FLAT * length;
  return isFlat && area <= LITTLE_AREA * have && (sides <= FEW_SIDES || length <= SHORT * diagonal);
}

/** Ways round along open edges that come back to where they began; one that meets a vertex twice is two of them. */
function* rimLoops(mesh: TriangleMesh, edges: MeshEdges): Generator<readonly number[]> {
  const isSeen = new Uint8Array(edges.partner.length);
  for (let first = 0; first < isSeen.length; first += 1) {
    if (edges.partner[first] !== OPEN || isSeen[first] === 1 || isAlone(first, edges)) continue;
    const way: number[] = [];
    let at: number | undefined = first;
    while (at !== undefined && isSeen[at] === 0) {
      isSeen[at] = 1;
      way.push(at);
      at = nextAlongRim(at, mesh, edges);
    }
    if (at === first) yield* simpleLoops(way, mesh.corners);
  }
}

/** A triangle that meets no other has a rim and no hole; a file may be a million of them. */
function isAlone(half: number, { partner }: MeshEdges): boolean {
  const first = half - (half % 3);
  return partner[first] === OPEN && partner[first + 1] === OPEN && partner[first + 2] === OPEN;
}

/** Holes that touch at a vertex are walked as one way, since the triangles there hang together round it from hole to hole. */
function* simpleLoops(way: readonly number[], corners: Uint32Array): Generator<readonly number[]> {
  const left: number[] = [];
  const placeOf = new Map<number, number>();
  for (const half of way) {
    const from = placeOf.get(corners[half]!);
    if (from !== undefined) {
      const loop = left.splice(from);
      for (const gone of loop) placeOf.delete(corners[gone]!);
      if (loop.length > 2 && loop.length <= MOST_SIDES) yield loop;
    }
    placeOf.set(corners[half]!, left.length);
    left.push(half);
  }
  if (left.length > 2 && left.length <= MOST_SIDES) yield left;
}

/** Edges between vertices of holes, so that no fill runs along one that is there. */
class TakenEdges {
  readonly #mesh: TriangleMesh;
  readonly #edges: MeshEdges;
  #taken: Set<number> | undefined;

  constructor(mesh: TriangleMesh, edges: MeshEdges) {
    this.#mesh = mesh;
    this.#edges = edges;
  }

  /** False, and nothing added, where an edge inside the fill is taken. */
  addAll(fill: readonly number[], round: readonly number[]): boolean {
    const own = new Set(round.map((vertex, i) => this.#key(vertex, round[(i + 1) % round.length]!)));
    const inside = new Set<number>();
    for (let i = 0; i < fill.length; i += 1) {
      const key = this.#key(fill[i]!, fill[i % 3 === 2 ? i - 2 : i + 1]!);
      if (!own.has(key)) inside.add(key);
    }
    if (inside.size === 0) return true;
    this.#taken ??= this.#collect();
    for (const key of inside) if (this.#taken.has(key)) return false;
    for (const key of inside) this.#taken.add(key);
    return true;
  }

  #key(a: number, b: number): number {
    return Math.min(a, b) * (this.#mesh.points.length / 3) + Math.max(a, b);
  }

  #collect(): Set<number> {
    const { corners, points } = this.#mesh;
    const { partner } = this.#edges;
    const next = (half: number) => corners[half % 3 === 2 ? half - 2 : half + 1]!;
    const isRim = new Uint8Array(points.length / 3);
    for (let half = 0; half < partner.length; half += 1) {
      if (partner[half] === OPEN) isRim[corners[half]!] = isRim[next(half)] = 1;
    }
    const taken = new Set<number>();
    for (let half = 0; half < partner.length; half += 1) {
      if (isRim[corners[half]!] === 1 && isRim[next(half)] === 1) taken.add(this.#key(corners[half]!, next(half)));
    }
    return taken;
  }
}
