import type { Mm } from '../units.ts';
import { isInside, pathLoop } from './loop.ts';
import type { JoinedNetwork } from './materialWay.ts';
import type { Path, Point } from './outline.ts';
import { edgeStrand, movedStrand, roundOfAll, type Circle, type Strand } from './strand.ts';

/** Chords of pads lie within this of their arcs [mm] where it is asked whether a place is inside. */
const TOLERANCE: Mm = 1e-3;

/** Where a pad has gone: the place of its reference point [mm] and how far it has turned [rad]. */
export type PadPose = Point & { readonly turn: number };

/** The outlines of a pad where it lies as printed; structurally the body of a flexure network. */
export interface GapBody {
  readonly pad: string;
  readonly outlines: readonly Path[];
  /** Bodies and members in different planes pass each other; 0 when left out. */
  readonly plane?: number;
}

/** A pad in a state. */
export interface GapPad {
  readonly what: string;
  readonly plane: number;
  /** Nodes that it carries, as places in the list of nodes, and where they are as printed [mm]. */
  readonly nodes: readonly { readonly i: number; readonly at: Point }[];
  /** Its outlines in the state, and a circle round them all. */
  readonly edges: readonly Strand[];
  readonly round: Circle;
  /** Where on the pad as printed a place of the state lies. */
  readonly printed: (place: Point) => Point;
  /** Whether a place of the state lies inside it. */
  readonly holds: (place: Point) => boolean;
}

/**
 * Where the outlines of a body go when its pad moves.
 *
 * @param body - outlines as printed [mm]
 * @param network - nodes and pads as printed [mm]
 * @returns the pad, by its pose [mm] and [rad]; as printed when none is given
 */
export function padOf(
  { pad, outlines, plane = 0 }: GapBody,
  { nodes, pads }: JoinedNetwork,
): (pose?: PadPose) => GapPad {
  const owner = pads.find(({ id }) => id === pad);
  const held = nodes.flatMap(({ id, x, y }, i) => (owner?.nodes.includes(id) ? [{ i, at: { x, y } }] : []));
  const first = held.find(({ i }) => nodes[i]?.id === owner?.nodes[0]);
  const about = owner?.at ?? first?.at;
  if (!about) throw new RangeError(`no pad ${pad} with a place`);
  const loops = outlines.map((path) => pathLoop(path, TOLERANCE));
  const edges = outlines.map((path) => movedStrand(edgeStrand(path), { x: -about.x, y: -about.y }, 0));
  const round = roundOfAll(edges);
  return ({ x, y, turn } = { ...about, turn: 0 }) => {
    const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
    const printed = (place: Point): Point => ({
      x: about.x + cos * (place.x - x) + sin * (place.y - y),
      y: about.y + cos * (place.y - y) - sin * (place.x - x),
    });
    return {
      what: pad,
      plane,
      nodes: held,
      edges: edges.map((edge) => movedStrand(edge, { x, y }, turn)),
      round: {
        x: x + cos * round.x - sin * round.y,
        y: y + sin * round.x + cos * round.y,
        radius: round.radius,
      },
      printed,
      holds: (place) => isInside(loops, printed(place)),
    };
  };
}
