/** A part that can be asked how thick it is: its surface with the tree that finds what a ray meets. */
import { RayTree } from '../../geometry/mesh/rayTree.ts';
import type { Point3, TriangleMesh } from '../../geometry/mesh/triangleMesh.ts';
import { along3, cross3, dot3, length3, times3 } from '../../geometry/mesh/vector3.ts';
import type { Mm } from '../../units.ts';

/** What a ray from inside meets: how far, and which way the surface faces there. */
export interface WallHit {
  readonly at: Mm;
  readonly normal: Point3;
}

export class Solid {
  readonly mesh: TriangleMesh;
  /** Length of the diagonal of its box. */
  readonly size: Mm;
  readonly #tree: RayTree;
  readonly #least: Mm;

  /** @param mesh - a closed surface of at least one triangle [mm] */
  constructor(mesh: TriangleMesh, size: Mm) {
    this.mesh = mesh;
    this.size = size;
    this.#tree = new RayTree(mesh);
    // What lies nearer than this to where a ray starts is the surface that it starts from.
    this.#least = 1e-6 * size;
  }

  /** Twice the area of a triangle times its outward normal. */
  areaNormal(triangle: number): Point3 {
    const { points: p, corners } = this.mesh;
    const a = 3 * corners[3 * triangle]!;
    const b = 3 * corners[3 * triangle + 1]!;
    const c = 3 * corners[3 * triangle + 2]!;
    const u = { x: p[b]! - p[a]!, y: p[b + 1]! - p[a + 1]!, z: p[b + 2]! - p[a + 2]! };
    const v = { x: p[c]! - p[a]!, y: p[c + 1]! - p[a + 1]!, z: p[c + 2]! - p[a + 2]! };
    return cross3(u, v);
  }

  /** The wall that a ray of length 1 meets first; undefined where it leaves through a hole or meets one from outside. */
  wall(origin: Point3, direction: Point3, before = Infinity): WallHit | undefined {
    const hit = this.#tree.first(origin, direction, this.#least, before);
    if (!hit) return undefined;
    const normal = this.areaNormal(hit.triangle);
    const length = length3(normal);
    if (!(length > 0) || dot3(normal, direction) < -1e-3 * length) return undefined;
    return { at: hit.at, normal: times3(normal, 1 / length) };
  }

  /** From wall to wall through a point, along a direction of length 1; undefined outside. */
  through(point: Point3, direction: Point3): { readonly ahead: WallHit; readonly behind: WallHit } | undefined {
    const ahead = this.wall(point, direction);
    const behind = ahead && this.wall(point, times3(direction, -1));
    return behind ? { ahead, behind } : undefined;
  }

  /** Thickness through a point along a direction of length 1 [mm]; undefined outside. */
  thickness(point: Point3, direction: Point3): Mm | undefined {
    const both = this.through(point, direction);
    return both && both.ahead.at + both.behind.at;
  }

  /** Whether nothing lies between two points. */
  isClear(a: Point3, b: Point3): boolean {
    return this.#tree.first(a, along3(b, a, -1), 1e-9, 1) === undefined;
  }
}
