/** The solid that slabs make: walls, and flats where one slab reaches out over the next. */
import earcut from 'earcut';
import { without } from '../../geometry/clipping.ts';
import { isInside, loopArea, type Loop } from '../../geometry/loop.ts';
import type { TriangleMesh } from '../../geometry/mesh/triangleMesh.ts';
import type { Mm } from '../../units.ts';
import { Growing } from './growing.ts';
import type { Slab } from './slabs.ts';

class Surface {
  readonly #points = new Growing();
  readonly #corners = new Growing();

  #vertex(x: number, y: number, z: number): number {
    this.#points.add(x);
    this.#points.add(y);
    this.#points.add(z);
    return this.#points.count / 3 - 1;
  }

  #triangle(a: number, b: number, c: number): void {
    this.#corners.add(a);
    this.#corners.add(b);
    this.#corners.add(c);
  }

  /** Material at the left of the loop, so that the wall faces right. */
  wall(loop: Loop, bottom: Mm, top: Mm): void {
    const first = this.#points.count / 3;
    for (const { x, y } of loop) {
      this.#vertex(x, y, bottom);
      this.#vertex(x, y, top);
    }
    for (const i of loop.keys()) {
      const a = first + 2 * i;
      const b = first + 2 * ((i + 1) % loop.length);
      this.#triangle(a, b, b + 1);
      this.#triangle(a, b + 1, a + 1);
    }
  }

  /** A level face, seen from above or from below. */
  flat(outlines: readonly Loop[], z: Mm, isUp: boolean): void {
    for (const { outer, holes } of faces(outlines)) {
      const loops = [outer, ...holes];
      const starts: number[] = [];
      const flat = loops.flatMap((loop, i) => {
        if (i > 0) starts.push(loops.slice(0, i).reduce((sum, each) => sum + each.length, 0));
        return loop.flatMap(({ x, y }) => [x, y]);
      });
      const first = this.#points.count / 3;
      for (let i = 0; i < flat.length; i += 2) this.#vertex(flat[i]!, flat[i + 1]!, z);
      const corners = earcut(flat, starts);
      for (let c = 0; c < corners.length; c += 3) {
        const [p, q, r] = [first + corners[c]!, first + corners[c + 1]!, first + corners[c + 2]!];
        // Earcut keeps the sense of no outline: each triangle is turned by its own area.
        const isLeft = this.#area(p, q, r) > 0;
        if (isLeft === isUp) this.#triangle(p, q, r);
        else this.#triangle(p, r, q);
      }
    }
  }

  #area(p: number, q: number, r: number): number {
    const at = this.#points.values;
    const [x, y] = [at[3 * p]!, at[3 * p + 1]!];
    return (at[3 * q]! - x) * (at[3 * r + 1]! - y) - (at[3 * r]! - x) * (at[3 * q + 1]! - y);
  }

  mesh(): TriangleMesh {
    return { points: this.#points.copy(), corners: Uint32Array.from(this.#corners.copy()) };
  }
}

/** Outer outlines with the holes in each. */
function faces(outlines: readonly Loop[]): readonly { readonly outer: Loop; readonly holes: readonly Loop[] }[] {
  const outers = outlines
    .filter((loop) => loopArea(loop) > 0)
    .map((outer) => ({ outer, area: loopArea(outer), holes: [] as Loop[] }))
    .toSorted((a, b) => a.area - b.area);
  for (const hole of outlines) {
    if (loopArea(hole) >= 0) continue;
    outers.find(({ outer, area }) => area > -loopArea(hole) && isInside([outer], hole[0]!))?.holes.push(hole);
  }
  return outers;
}

/**
 * The surface of slabs that stand on one another. Closed but for corners of flats that lie in the middle of an edge of a wall.
 *
 * @param slabs - from the bottom up, none reaching into another [mm]
 * @returns triangles counter-clockwise from outside [mm]
 */
export function slabMesh(slabs: readonly Slab[]): TriangleMesh {
  const surface = new Surface();
  for (const [i, slab] of slabs.entries()) {
    const { outlines, bottom, top } = slab;
    for (const loop of outlines) surface.wall(loop, bottom, top);
    const [under, over] = [slabs[i - 1], slabs[i + 1]];
    const rests = under !== undefined && bottom - under.top < 1e-3;
    surface.flat(rests ? without(outlines, under.outlines) : outlines, bottom, false);
    const carries = over !== undefined && over.bottom - top < 1e-3;
    surface.flat(carries ? without(outlines, over.outlines) : outlines, top, true);
  }
  return surface.mesh();
}
