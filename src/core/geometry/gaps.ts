import type { Mm } from '../units.ts';
import type { MiddleLine } from './band.ts';
import { pathLoop, isInside, type Loop } from './loop.ts';
import { materialWays, type JoinedNetwork, type Ways } from './materialWay.ts';
import type { Path, Point } from './outline.ts';
import {
  alongAt,
  angleAt,
  bandStrand,
  edgeStrand,
  forNear,
  halfAt,
  lengthOf,
  movedStrand,
  nearest,
  newMeeting,
  type Meeting,
  type Strand,
} from './strand.ts';

/** Chords of pads lie within this of their arcs [mm] where it is asked whether a band is still inside. */
const TOLERANCE: Mm = 1e-3;
/** Places joined by less than this many thicknesses of material are one place, not two with a gap between them. */
const LOCAL = 4;
/** A gap counts where the way round through the material is this much longer than the way across: past any square corner. */
const DETOUR = 1.5;
/** Where material joins them, places face each other when the way across is this close to square to both [-], a cosine. */
const FACING = 0.2;
/** A band is growing out of its pad while its clearance rises by this much [mm] within so many thicknesses. */
const RISE: Mm = 0.01;
const RISE_WITHIN = 3;

/** One side of a gap: a member or pad, and the place on its surface [mm]. */
export interface GapSide {
  readonly what: string;
  readonly at: Point;
}

/** The least clear distance [mm], below 0 where they overlap, and where it is. */
export interface Gap {
  readonly gap: Mm;
  readonly a: GapSide;
  readonly b: GapSide;
}

/** Where a pad has gone: the place of its reference point [mm] and how far it has turned [rad]. */
type Pose = Point & { readonly turn: number };

/** The outlines of a pad where it lies as printed; structurally the body of a flexure network. */
interface GapBody {
  readonly pad: string;
  readonly outlines: readonly Path[];
  readonly plane?: number;
}

/** Least gap of one state, from the shapes of the members in their order and where the pads have gone; undefined without any. */
export type GapFinder = (shapes: readonly MiddleLine[], poses: Readonly<Record<string, Pose>>) => Gap | undefined;

/**
 * What finds the least gap between bands, and between bands and pads, of a network in any state.
 *
 * Surfaces of one plane are compared: bands with each other, each with itself, and each with all pads. Two places count
 * as apart when the way between them through the material is longer than four thicknesses and than 1½ times the way
 * across, which passes over square corners and runs of members, and when they face each other. A pad counts for a band
 * that grows out of it from where the clearance no longer rises by 0.01 mm in three thicknesses. Pads are not compared
 * with each other. Where middle lines cross, the overlap told is half of both thicknesses.
 *
 * Distances are taken square to the middle lines: exact for bands of even thickness; a taper of slope m is told too wide
 * by a share of about m²/8 of its thickness.
 *
 * @param network - nodes, members and pads as printed [mm]
 * @param bodies - outlines of the pads as printed [mm]
 * @param printed - middle lines as printed, in the order of the members [mm] and [rad]
 * @returns a function from shapes and poses to the least gap
 */
export function gapFinder(
  network: JoinedNetwork,
  bodies: readonly GapBody[],
  printed: readonly MiddleLine[],
): GapFinder {
  const lengths = printed.map((line) => bandStrand(line).along.at(-1) ?? 0);
  const ways = materialWays(network, lengths);
  const places = new Map(network.nodes.map((node, i) => [node.id, { ...node, i }]));
  const pads = bodies.map((body) => printedPad(body, network, places));
  const ends = network.members.map(({ from, to }) => [places.get(from)?.i ?? -1, places.get(to)?.i ?? -1] as const);
  return (shapes, poses) => {
    const bands = network.members.map((member, i): Band => {
      const shape = shapes[i];
      if (!shape) throw new RangeError(`no shape for the member ${member.id}`);
      return { what: member.id, plane: member.plane ?? 0, ends: ends[i] ?? [-1, -1], strand: bandStrand(shape) };
    });
    const least = new Least();
    betweenBands(bands, ways, least);
    for (const pad of pads) againstPad(bands, posed(pad, poses[pad.what]), ways, least);
    return least.gap === Infinity ? undefined : least.found;
  };
}

interface Band {
  readonly what: string;
  readonly plane: number;
  /** Its first and last node, as places in the list of nodes. */
  readonly ends: readonly [number, number];
  readonly strand: Strand;
}

/** The nearest pair so far. */
class Least {
  gap: Mm = Infinity;
  found: Gap | undefined;

  take(meeting: Meeting, a: { what: string; strand: Strand }, b: { what: string; strand: Strand }): void {
    const { gap, ax, ay, bx, by } = meeting;
    const apart = Math.hypot(bx - ax, by - ay);
    const [dx, dy] = apart > 0 ? [(bx - ax) / apart, (by - ay) / apart] : [0, 0];
    const outA = halfAt(a.strand, meeting.i, meeting.u);
    const outB = halfAt(b.strand, meeting.j, meeting.v);
    this.gap = gap;
    this.found = {
      gap,
      a: { what: a.what, at: { x: ax + outA * dx, y: ay + outA * dy } },
      b: { what: b.what, at: { x: bx - outB * dx, y: by - outB * dy } },
    };
  }
}

function betweenBands(bands: readonly Band[], ways: Ways, least: Least): void {
  const meeting = newMeeting();
  for (const [k, a] of bands.entries()) {
    for (const b of bands.slice(k)) {
      if (a.plane !== b.plane) continue;
      const look = (i: number, j: number) => {
        nearest(a.strand, i, b.strand, j, meeting);
        if (meeting.gap < least.gap && areApart(a, b, meeting, ways)) least.take(meeting, a, b);
      };
      // Pairs of one band that are surely local need no look: there are very many of them.
      forNear(a.strand, b.strand, least, look, LOCAL * 2 * Math.min(...a.strand.half));
    }
  }
}

/** Whether two places on bands have a gap between them, and not only material. */
function areApart(a: Band, b: Band, { i, u, j, v, ax, ay, bx, by }: Meeting, ways: Ways): boolean {
  const sa = alongAt(a.strand, i, u);
  const sb = alongAt(b.strand, j, v);
  const across = lengthOf(bx - ax, by - ay);
  const thickness = 2 * Math.max(halfAt(a.strand, i, u), halfAt(b.strand, j, v));
  const least = Math.max(LOCAL * thickness, DETOUR * across);
  // Asked first, since it settles the very many pairs of one band.
  if (a === b && Math.abs(sa - sb) < least) return false;
  const way = wayByNodes(a, sa, b, sb, ways);
  if (way < least) return false;
  if (way === Infinity && a !== b) return true;
  const direction = { x: (bx - ax) / across, y: (by - ay) / across };
  const back = { x: -direction.x, y: -direction.y };
  return across === 0 || (faces(a.strand, i, u, direction) && faces(b.strand, j, v, back));
}

/** Whether a way leaves a band square to it, or straight on over its end. */
function faces(strand: Strand, i: number, u: number, way: Point): boolean {
  const angle = angleAt(strand, i, u);
  const ahead = way.x * Math.cos(angle) + way.y * Math.sin(angle);
  if (Math.abs(ahead) <= FACING) return true;
  return ahead > 0 ? i === strand.count - 1 && u === 1 : i === 0 && u === 0;
}

function wayByNodes(a: Band, sa: Mm, b: Band, sb: Mm, ways: Ways): Mm {
  const [restA, restB] = [a.strand.along[a.strand.count]! - sa, b.strand.along[b.strand.count]! - sb];
  return Math.min(
    sa + ways(a.ends[0], b.ends[0]) + sb,
    sa + ways(a.ends[0], b.ends[1]) + restB,
    restA + ways(a.ends[1], b.ends[0]) + sb,
    restA + ways(a.ends[1], b.ends[1]) + restB,
  );
}

interface PrintedPad {
  readonly what: string;
  readonly plane: number;
  /** Places in the list of nodes of those that it carries. */
  readonly nodes: readonly number[];
  /** The same, and its outlines, seen from its reference point. */
  readonly nodesAt: readonly Point[];
  readonly loops: readonly Loop[];
  readonly edges: readonly Strand[];
  readonly at: Point;
}

function printedPad(
  { pad, outlines, plane = 0 }: GapBody,
  { pads }: JoinedNetwork,
  places: ReadonlyMap<string, Point & { readonly i: number }>,
): PrintedPad {
  const owner = pads.find(({ id }) => id === pad);
  const held = (owner?.nodes ?? []).flatMap((id) => places.get(id) ?? []);
  const at = owner?.at ?? held[0];
  if (!owner || !at) throw new RangeError(`no pad ${pad} with a place`);
  const seen = ({ x, y }: Point) => ({ x: x - at.x, y: y - at.y });
  return {
    what: pad,
    plane,
    nodes: held.map(({ i }) => i),
    nodesAt: held.map(seen),
    loops: outlines.map((path) => pathLoop(path, TOLERANCE).map(seen)),
    edges: outlines.map((path) => movedStrand(edgeStrand(path), { x: -at.x, y: -at.y }, 0)),
    at,
  };
}

interface PosedPad extends PrintedPad {
  /** Takes a place in the state to where it was seen from the reference point as printed. */
  readonly back: (place: Point) => Point;
}

/** A pad where it is in a state; as printed where nothing is said. */
function posed(pad: PrintedPad, { x, y, turn }: Pose = { ...pad.at, turn: 0 }): PosedPad {
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  const back = (place: Point) => ({
    x: cos * (place.x - x) + sin * (place.y - y),
    y: cos * (place.y - y) - sin * (place.x - x),
  });
  return { ...pad, edges: pad.edges.map((edge) => movedStrand(edge, { x, y }, turn)), back };
}

function againstPad(bands: readonly Band[], pad: PosedPad, ways: Ways, least: Least): void {
  const meeting = newMeeting();
  for (const band of bands) {
    if (band.plane !== pad.plane) continue;
    const [first, last] = grownOut(band, pad, least.gap);
    for (const strand of pad.edges) {
      forNear(band.strand, strand, least, (i, j) => {
        if (i < first || i >= last) return;
        nearest(band.strand, i, strand, j, meeting);
        if (meeting.gap < least.gap && isAway(band, pad, meeting, ways)) {
          least.take(meeting, band, { what: pad.what, strand });
        }
      });
    }
  }
}

/** Whether a place on a band and one on the edge of a pad have a gap between them, and not only material. */
function isAway(band: Band, pad: PosedPad, { i, u, ax, ay, bx, by }: Meeting, ways: Ways): boolean {
  const along = alongAt(band.strand, i, u);
  const rest = band.strand.along[band.strand.count]! - along;
  const seen = pad.back({ x: bx, y: by });
  let way = Infinity;
  for (const [k, node] of pad.nodes.entries()) {
    const { x, y } = pad.nodesAt[k]!;
    const onPad = lengthOf(seen.x - x, seen.y - y);
    way = Math.min(way, onPad + along + ways(band.ends[0], node), onPad + rest + ways(band.ends[1], node));
  }
  return way >= LOCAL * 2 * halfAt(band.strand, i, u) && way >= DETOUR * lengthOf(bx - ax, by - ay);
}

/** The segments of a band that are not growing out of a pad, from one up to before another; all when it holds no end. */
function grownOut(band: Band, pad: PosedPad, limit: Mm): readonly [number, number] {
  const { strand, ends } = band;
  const isHeld = ends.map((node) => pad.nodes.includes(node));
  if (!isHeld.includes(true)) return [0, strand.count];
  const clearances = clearancesOf(strand, pad, limit);
  const isIn = (i: number) => isInside(pad.loops, pad.back({ x: strand.x[i]!, y: strand.y[i]! }));
  const order = Array.from({ length: strand.count }, (_, i) => i);
  const first = isHeld[0] ? grown(order, strand, clearances, (i) => isIn(i + 1)) : 0;
  const fromEnd = isHeld[1] ? grown(order.toReversed(), strand, clearances, isIn) : 0;
  return [first, strand.count - fromEnd];
}

/** Clear distance of every segment from a pad [mm], Infinity where it is above a limit. */
function clearancesOf(strand: Strand, pad: PosedPad, limit: Mm): Float64Array {
  const clearances = new Float64Array(strand.count).fill(Infinity);
  const meeting = newMeeting();
  for (const edge of pad.edges) {
    forNear(strand, edge, { gap: limit }, (i, j) => {
      nearest(strand, i, edge, j, meeting);
      clearances[i] = Math.min(clearances[i]!, meeting.gap);
    });
  }
  return clearances;
}

/** How many segments from a root on are within the pad or still growing out of it. */
function grown(
  order: readonly number[],
  { along, half }: Strand,
  clearances: Float64Array,
  isIn: (segment: number) => boolean,
): number {
  const start = order.findIndex((i) => !isIn(i));
  if (start === -1) return order.length;
  let [most, raised] = [-Infinity, start];
  for (const [k, i] of order.entries()) {
    const clearance = clearances[i]!;
    if (k < start) continue;
    if (clearance > most + RISE) [most, raised] = [clearance, k];
    else if (clearance < most - RISE) return raised;
    else if (Math.abs(along[i]! - along[order[raised]!]!) > RISE_WITHIN * 2 * half[i]!) return raised;
  }
  return order.length;
}
