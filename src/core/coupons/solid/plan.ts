/**
 * Outlines of all slabs of a body as one plan: places on a grid of whole micrometres, edges that meet at their ends alone.
 * What is cut into the same edges everywhere cannot gape.
 */
import type { Loop } from '../../geometry/loop.ts';
import { meetings, placesOn } from './snap.ts';
import { GRID, pairKey, Spots, type Spot } from './spot.ts';

/** Rounding moves edges by half a micrometre, over few places at most: it comes to rest in two or three rounds. */
const MOST_ROUNDS = 20;

/** An edge between two places by their numbers, the lesser first, and how often each slab runs along it: back counts −1. */
export interface PlanEdge {
  readonly from: number;
  readonly to: number;
  readonly runs: Int16Array;
}

export interface Plan {
  readonly spots: readonly Spot[];
  readonly edges: readonly PlanEdge[];
}

/** Numbers of the places round a loop, none twice in a row. */
function roundOf(loop: Loop, spots: Spots): number[] {
  const round = loop.map(({ x, y }) => spots.numberOf({ x: x * GRID, y: y * GRID }));
  return round.filter((spot, i) => spot !== round.at(i - 1));
}

/**
 * The plan of regions that lie over one another.
 *
 * @param regions - loops of each slab [mm], which may cross and run along one another
 * @returns places [µm] and the edges between them; no edge crosses another or passes over a place
 */
export function planOf(regions: readonly (readonly Loop[])[]): Plan {
  const spots = new Spots();
  let rounds = regions.map((loops) => loops.map((loop) => roundOf(loop, spots)));
  for (let turn = 0; ; turn += 1) {
    if (turn === MOST_ROUNDS) throw new RangeError('outlines that do not come to rest on the grid');
    const split = splitAll(rounds, spots);
    if (split === undefined) break;
    rounds = split;
  }
  return { spots: spots.all, edges: edgesOf(rounds) };
}

/** Every edge with the places let in that it meets; undefined where there is none left. */
function splitAll(rounds: number[][][], spots: Spots): number[][][] | undefined {
  const pairs = new Map<number, readonly [number, number]>();
  for (const round of rounds.flat()) {
    for (const [i, to] of round.entries()) {
      const from = round.at(i - 1)!;
      pairs.set(pairKey(from, to), [Math.min(from, to), Math.max(from, to)]);
    }
  }
  const edges = [...pairs.values()];
  for (const meeting of meetings(edges, spots.all)) spots.numberOf(meeting);
  const between = placesOn(edges, spots.all);
  if (between.size === 0) return undefined;
  return rounds.map((loops) => loops.map((round) => letIn(round, between)));
}

function letIn(round: readonly number[], between: ReadonlyMap<number, readonly number[]>): number[] {
  const longer = round.flatMap((from, i) => {
    const to = round[(i + 1) % round.length]!;
    const inner = between.get(pairKey(from, to)) ?? [];
    return [from, ...(from < to ? inner : inner.toReversed())];
  });
  return longer.filter((spot, i) => spot !== longer.at(i - 1));
}

function edgesOf(rounds: readonly (readonly (readonly number[])[])[]): readonly PlanEdge[] {
  const edges = new Map<number, PlanEdge>();
  for (const [slab, loops] of rounds.entries()) {
    for (const round of loops) {
      for (const [i, to] of round.entries()) {
        const from = round.at(i - 1)!;
        const key = pairKey(from, to);
        const edge = edges.get(key) ?? {
          from: Math.min(from, to),
          to: Math.max(from, to),
          runs: new Int16Array(rounds.length),
        };
        edge.runs[slab]! += from < to ? 1 : -1;
        edges.set(key, edge);
      }
    }
  }
  return [...edges.values()].filter(({ runs }) => runs.some((times) => times !== 0));
}
