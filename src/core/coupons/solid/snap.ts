/** Where edges on a grid of whole numbers cross, and which places they pass over. */
import { pairKey, turnOf, type Spot } from './spot.ts';

type Pair = readonly [number, number];

/**
 * Places at which edges cross in the middle of both.
 *
 * @param edges - numbers of the ends of each [-]
 * @param spots - all places [µm]
 * @returns the crossings [µm], some of them perhaps twice
 */
export function meetings(edges: readonly Pair[], spots: readonly Spot[]): readonly Spot[] {
  const boxed = edges
    .map(([p, q]) => ({ a: spots[p]!, b: spots[q]! }))
    .map(({ a, b }) => ({ a, b, left: Math.min(a.x, b.x), right: Math.max(a.x, b.x) }))
    .toSorted((e, f) => e.left - f.left);
  const found: Spot[] = [];
  for (const [i, e] of boxed.entries()) {
    for (let j = i + 1; j < boxed.length && boxed[j]!.left <= e.right; j += 1) {
      const crossing = crossingOf(e.a, e.b, boxed[j]!.a, boxed[j]!.b);
      if (crossing) found.push(crossing);
    }
  }
  return found;
}

function crossingOf(a: Spot, b: Spot, c: Spot, d: Spot): Spot | undefined {
  const [sideC, sideD] = [turnOf(a, b, c), turnOf(a, b, d)];
  if (!((sideC > 0 && sideD < 0) || (sideC < 0 && sideD > 0))) return undefined;
  const [sideA, sideB] = [turnOf(c, d, a), turnOf(c, d, b)];
  if (!((sideA > 0 && sideB < 0) || (sideA < 0 && sideB > 0))) return undefined;
  const share = sideA / (sideA - sideB);
  return { x: a.x + share * (b.x - a.x), y: a.y + share * (b.y - a.y) };
}

/** Places in order, so that those along an edge are found without looking at all. */
export class Along {
  readonly #spots: readonly Spot[];
  readonly #order: readonly number[];

  constructor(spots: readonly Spot[]) {
    this.#spots = spots;
    this.#order = [...spots.keys()].toSorted((a, b) => spots[a]!.x - spots[b]!.x);
  }

  /** Those through whose square of the grid an edge goes, in the order in which it does, but for its own ends. */
  between(a: Spot, b: Spot, ends: Pair): readonly number[] {
    const right = Math.max(a.x, b.x) + 1;
    const on: { readonly spot: number; readonly along: number }[] = [];
    for (let i = this.#firstFrom(Math.min(a.x, b.x) - 1); i < this.#order.length; i += 1) {
      const spot = this.#order[i]!;
      const at = this.#spots[spot]!;
      if (at.x > right) break;
      if (ends.includes(spot) || !isNear(at, a, b)) continue;
      on.push({ spot, along: (at.x - a.x) * (b.x - a.x) + (at.y - a.y) * (b.y - a.y) });
    }
    return on.toSorted((e, f) => e.along - f.along).map(({ spot }) => spot);
  }

  #firstFrom(x: number): number {
    let [low, high] = [0, this.#order.length];
    while (low < high) {
      const middle = (low + high) >> 1;
      if (this.#spots[this.#order[middle]!]!.x < x) low = middle + 1;
      else high = middle;
    }
    return low;
  }
}

/**
 * The places that each edge passes over or so near that it counts as passing over them: within the square of the grid round
 * them. Led through all of these, edges that did not cross before do not do so after rounding.
 *
 * @param edges - numbers of the ends of each [-]
 * @param spots - all places [µm]
 * @returns by edge, as `pairKey` names it, the places between its ends in order [-]; edges without any are left out
 */
export function placesOn(edges: readonly Pair[], spots: readonly Spot[]): ReadonlyMap<number, readonly number[]> {
  const along = new Along(spots);
  const found = new Map<number, readonly number[]>();
  for (const [p, q] of edges) {
    const on = along.between(spots[p]!, spots[q]!, [p, q]);
    if (on.length > 0) found.set(pairKey(p, q), on);
  }
  return found;
}

/** Whether an edge goes through the square of the grid round a place. */
function isNear(at: Spot, a: Spot, b: Spot): boolean {
  if (at.y < Math.min(a.y, b.y) - 1 || at.y > Math.max(a.y, b.y) + 1) return false;
  let [from, to] = [0, 1];
  for (const [start, step, middle] of [
    [a.x, b.x - a.x, at.x],
    [a.y, b.y - a.y, at.y],
  ] as const) {
    if (step === 0) {
      if (Math.abs(start - middle) >= 0.5) return false;
      continue;
    }
    const [s, t] = [(middle - 0.5 - start) / step, (middle + 0.5 - start) / step];
    from = Math.max(from, Math.min(s, t));
    to = Math.min(to, Math.max(s, t));
  }
  // A corner of the square that is only touched does not count, or two neighbours would ask for one another for ever.
  return to - from > 1e-9;
}
