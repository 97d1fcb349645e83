/** The surface of a body of slabs. */
import type { TriangleMesh } from '../geometry/mesh/triangleMesh.ts';
import type { Slab } from './piece.ts';
import { filled, type Step } from './solid/faces.ts';
import { planOf } from './solid/plan.ts';
import { sidesOf, type SidedEdge } from './solid/sides.ts';
import { GRID, type Spot } from './solid/spot.ts';

/** Corners of the solid, each there once: a place of the plan at one of the levels between slabs. */
class Surface {
  readonly #spots: readonly Spot[];
  readonly #heights: readonly number[];
  readonly #numbers = new Map<number, number>();
  readonly #points: number[] = [];
  readonly #corners: number[] = [];

  constructor(spots: readonly Spot[], heights: readonly number[]) {
    this.#spots = spots;
    this.#heights = heights;
  }

  #vertex(spot: number, level: number): number {
    const key = spot * this.#heights.length + level;
    const known = this.#numbers.get(key);
    if (known !== undefined) return known;
    const number = this.#points.length / 3;
    const { x, y } = this.#spots[spot]!;
    this.#points.push(x / GRID, y / GRID, this.#heights[level]! / GRID);
    this.#numbers.set(key, number);
    return number;
  }

  /** Between a level and the next; material at the left of the step. */
  wall([from, to]: Step, level: number): void {
    const [a, b] = [this.#vertex(from, level), this.#vertex(to, level)];
    const [c, d] = [this.#vertex(to, level + 1), this.#vertex(from, level + 1)];
    this.#corners.push(a, b, c, a, c, d);
  }

  flat(steps: readonly Step[], level: number, isTop: boolean): void {
    for (const [a, b, c] of filled(steps, this.#spots)) {
      const [second, third] = isTop ? [b, c] : [c, b];
      this.#corners.push(this.#vertex(a, level), this.#vertex(second, level), this.#vertex(third, level));
    }
  }

  mesh(): TriangleMesh {
    return { points: Float64Array.from(this.#points), corners: Uint32Array.from(this.#corners) };
  }
}

const isIn = (side: readonly boolean[], slab: number): boolean => side[slab] === true;

/** Steps with what a rule wants at their left and not at their right. */
function borderOf(edges: readonly SidedEdge[], wants: (side: readonly boolean[]) => boolean): readonly Step[] {
  return edges.flatMap(({ from, to, left, right }): readonly Step[] => {
    const [isLeft, isRight] = [wants(left), wants(right)];
    if (isLeft === isRight) return [];
    return [isLeft ? [from, to] : [to, from]];
  });
}

/**
 * The surface of a body: closed and facing outwards. All slabs are cut into one plan on a grid of 1 µm, so that each edge of a wall
 * is an edge of the wall or face beside it; half a micrometre is far below what a printer can place.
 *
 * @param body - slabs from the plate up, each on the one before, with loops that may overlap [mm]
 * @returns triangles, counter-clockwise seen from outside [mm]
 */
export function solidOf(body: readonly Slab[]): TriangleMesh {
  const heights = [body[0]?.from ?? 0, ...body.map(({ to }) => to)].map((height) => Math.round(height * GRID));
  for (const [i, { from }] of body.entries()) {
    const bottom = heights[i] ?? 0;
    if (Math.round(from * GRID) !== bottom || !((heights[i + 1] ?? 0) > bottom))
      throw new RangeError(`slab ${i} does not stand on the one before it`);
  }
  const plan = planOf(body.map(({ region }) => region));
  const edges = sidesOf(plan);
  const surface = new Surface(plan.spots, heights);
  for (const level of heights.keys()) {
    for (const step of borderOf(edges, (side) => isIn(side, level))) surface.wall(step, level);
    const top = borderOf(edges, (side) => isIn(side, level - 1) && !isIn(side, level));
    const bottom = borderOf(edges, (side) => isIn(side, level) && !isIn(side, level - 1));
    surface.flat(top, level, true);
    surface.flat(bottom, level, false);
  }
  return surface.mesh();
}
