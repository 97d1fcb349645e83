import type { MiddleLine } from '../../src/core/geometry/band.ts';
import { disc } from '../../src/core/geometry/disc.ts';
import { gapFinder, type Gap } from '../../src/core/geometry/gaps.ts';
import type { Gaps } from '../../src/core/geometry/meetings.ts';
import type { Path, Point } from '../../src/core/geometry/outline.ts';
import { spiralBands, type Spiral } from './bands.ts';

/** A network whose members run from node to node, each node at the end of its band; `pads` names nodes by member and end. */
export interface Bench {
  readonly bands: readonly MiddleLine[];
  readonly planes?: readonly number[];
  readonly pads?: readonly {
    readonly id: string;
    readonly nodes: readonly string[];
    readonly outlines: readonly Path[];
  }[];
  readonly poses?: Readonly<Record<string, Point & { readonly turn: number }>>;
  /** Middle lines in the state looked at; as printed when left out. */
  readonly bent?: readonly MiddleLine[];
  /** Gaps below this are all told. */
  readonly within?: number;
}

export const endOf = (band: MiddleLine, end: 'from' | 'to'): Point => {
  const i = end === 'from' ? 0 : band.x.length - 1;
  return { x: band.x[i]!, y: band.y[i]! };
};

/** The least gap on a bench. */
export function gapOn(bench: Bench): Gap | undefined {
  return gapsOn(bench).least;
}

/** Gaps on a bench. Ends at one place share a node, which is named after the first band and end there. */
export function gapsOn({ bands, planes = [], pads = [], poses = {}, bent = bands, within = 0 }: Bench): Gaps {
  const nodes: (Point & { id: string })[] = [];
  const nodeOf = (i: number, end: 'from' | 'to') => {
    const at = endOf(bands[i]!, end);
    const found = nodes.find((node) => Math.hypot(node.x - at.x, node.y - at.y) < 1e-9 && (planes[i] ?? 0) === 0);
    if (found) return found.id;
    nodes.push({ id: `${end}${i}`, ...at });
    return `${end}${i}`;
  };
  const members = bands.map((_, i) => ({
    id: `band${i}`,
    from: nodeOf(i, 'from'),
    to: nodeOf(i, 'to'),
    plane: planes[i] ?? 0,
  }));
  const network = { nodes, members, pads: pads.map(({ id, nodes: held }) => ({ id, nodes: held })) };
  const bodies = pads.map(({ id, outlines }) => ({ pad: id, outlines }));
  return gapFinder(network, bodies, bands, within)(bent, poses);
}

/** Arms between a hub and a ring. */
export function spiralBench(spiral: Spiral, count?: number): Bench {
  const bands = spiralBands(spiral, count);
  const origin = { x: 0, y: 0 };
  return {
    bands,
    pads: [
      { id: 'hub', nodes: bands.map((_, i) => `from${i}`), outlines: [disc(origin, spiral.hub)] },
      {
        id: 'ring',
        nodes: bands.map((_, i) => `to${i}`),
        outlines: [disc(origin, spiral.ring + 2), disc(origin, spiral.ring, false)],
      },
    ],
  };
}
