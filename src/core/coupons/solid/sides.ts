/** Which slabs have material on either side of the edges of a plan. */
import type { Plan, PlanEdge } from './plan.ts';
import { turnOf, type Spot } from './spot.ts';

/** An edge of the plan and, slab by slab, whether there is material at its left and at its right. */
export interface SidedEdge {
  readonly from: number;
  readonly to: number;
  readonly left: readonly boolean[];
  readonly right: readonly boolean[];
}

/**
 * The sides of all edges, by how often outlines wind round a place just beside the middle of each.
 *
 * @param plan - places and edges that meet at their ends alone [µm]
 * @returns the edges with what lies beside them [-]
 */
export function sidesOf({ spots, edges }: Plan): readonly SidedEdge[] {
  const upright = lookedAlong(edges, spots);
  // Edges that run more along x than along y are looked at with the plan turned by a quarter.
  const turned = lookedAlong(
    edges,
    spots.map(({ x, y }) => ({ x: y, y: -x })),
  );
  return edges.map((edge, i) => {
    const [a, b] = [spots[edge.from]!, spots[edge.to]!];
    return sidesFrom(Math.abs(b.y - a.y) >= Math.abs(b.x - a.x) ? upright : turned, i);
  });
}

/** An edge with its lower end first, and how often each slab runs up along it. */
interface Rising {
  readonly edge: PlanEdge;
  readonly low: Spot;
  readonly high: Spot;
  readonly sign: number;
}

function lookedAlong(edges: readonly PlanEdge[], spots: readonly Spot[]): readonly Rising[] {
  return edges.map((edge) => {
    const [a, b] = [spots[edge.from]!, spots[edge.to]!];
    return a.y <= b.y ? { edge, low: a, high: b, sign: 1 } : { edge, low: b, high: a, sign: -1 };
  });
}

/** Counts what a way from the middle of the edge to the right crosses, in halves of the grid so that all is exact. */
function sidesFrom(all: readonly Rising[], of: number): SidedEdge {
  const { edge, low, high, sign } = all[of]!;
  const [x, y] = [(low.x + high.x) / 2, (low.y + high.y) / 2];
  const winds = new Int32Array(edge.runs.length);
  for (const [i, other] of all.entries()) {
    if (i === of || other.low.y > y === other.high.y > y || (other.low.x < x && other.high.x < x)) continue;
    if (!(turnOf(other.low, other.high, { x, y }) > 0)) continue;
    for (let slab = 0; slab < winds.length; slab += 1) winds[slab]! += other.sign * other.edge.runs[slab]!;
  }
  const onRight = [...winds].map((times) => times !== 0);
  const onLeft = [...winds].map((times, slab) => times + sign * edge.runs[slab]! !== 0);
  const { from, to } = edge;
  return sign > 0 ? { from, to, left: onLeft, right: onRight } : { from, to, left: onRight, right: onLeft };
}
