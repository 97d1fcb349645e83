import type { Mm } from '../units.ts';
import type { Point } from './outline.ts';
import { distance } from './vector.ts';

/** What is joined to what: structurally the network that the solver is asked. */
export interface JoinedNetwork {
  readonly nodes: readonly (Point & { readonly id: string })[];
  readonly members: readonly {
    readonly id: string;
    readonly from: string;
    readonly to: string;
    /** Members and bodies in different planes pass each other; 0 when left out. */
    readonly plane?: number;
  }[];
  readonly pads: readonly { readonly id: string; readonly nodes: readonly string[]; readonly at?: Point }[];
}

/** The shortest way through material between any two nodes [mm], by their places in the list of nodes. */
export type Ways = (from: number, to: number) => Mm;

/**
 * Shortest ways from node to node, along members and straight through pads.
 *
 * @param network - nodes, members and pads [mm]
 * @param lengths - of the members, in their order [mm]
 * @returns the way between two nodes by their places in the list, Infinity where nothing joins them [mm]
 */
export function materialWays({ nodes, members, pads }: JoinedNetwork, lengths: readonly Mm[]): Ways {
  const count = nodes.length;
  const places = new Map(nodes.map(({ id }, i) => [id, i]));
  const ways = new Float64Array(count * count).fill(Infinity);
  const join = (a: number | undefined, b: number | undefined, length: Mm) => {
    if (a === undefined || b === undefined) throw new RangeError('a member or pad ends on a node that is not there');
    ways[a * count + b] = Math.min(ways[a * count + b]!, length);
    ways[b * count + a] = Math.min(ways[b * count + a]!, length);
  };
  for (let i = 0; i < count; i += 1) ways[i * count + i] = 0;
  for (const [i, { from, to }] of members.entries()) join(places.get(from), places.get(to), lengths[i] ?? Infinity);
  for (const pad of pads) {
    const held = pad.nodes.map((id) => places.get(id));
    for (const a of held)
      for (const b of held) join(a, b, distance(nodes[a ?? -1] ?? origin, nodes[b ?? -1] ?? origin));
  }
  shorten(ways, count);
  return (from, to) => ways[from * count + to]!;
}

const origin: Point = { x: 0, y: 0 };

/** Tries every way by every node in turn: short, and networks have tens of nodes. */
function shorten(ways: Float64Array, count: number): void {
  for (let by = 0; by < count; by += 1) {
    for (let from = 0; from < count; from += 1) {
      const first = ways[from * count + by]!;
      if (first === Infinity) continue;
      for (let to = 0; to < count; to += 1) {
        const way = first + ways[by * count + to]!;
        if (way < ways[from * count + to]!) ways[from * count + to] = way;
      }
    }
  }
}
